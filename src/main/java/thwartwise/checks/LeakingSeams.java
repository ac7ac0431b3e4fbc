package thwartwise.checks;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import thwartwise.afloat.Bay;
import thwartwise.boat.Outfit;
import thwartwise.boat.Outfit.SeamLeak;
import thwartwise.loadcase.LoadCaseStep.Act;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.rules.Limit;
import thwartwise.rules.RuleSet;

/**
 * Water comes in through the seams at the measured rate: how long until the boat is in trouble,
 * under way with nobody bailing, and left at the mooring?
 */
public record LeakingSeams(RuleSet rules) implements Check {
  @Override
  public Role role() {
    return Role.INFORMATION;
  }

  @Override
  public List<CheckReading> readings(LoadedBoat boat) {
    Outfit outfit = boat.model().boat().outfit();
    if (!(outfit.leakRate() > 0)) {
      return List.of();
    }
    LoadedBoat moored = boat.empty(Act.LEFT_AT_THE_MOORING);
    double noticed = rules.value("loose-water") / 1000;
    double night = 60 * rules.value("leak-mooring-minutes") * outfit.leakRate();
    return List.of(
        reading(
            boat,
            CheckId.LEAK_UNDER_WAY,
            "leak-minutes",
            Math.min(noticed, trouble(boat, noticed))),
        reading(
            moored, CheckId.LEAK_AT_THE_MOORING, "leak-mooring-minutes", trouble(moored, night)));
  }

  /** The volume, m³, at which an edge goes under water or the boat no longer comes back. */
  private static double trouble(LoadedBoat boat, double enough) {
    return boat.waterLimits(Bay.WHOLE, enough)
        .trouble()
        .orElseGet(() -> boat.looseWater().capacity(Bay.WHOLE));
  }

  private CheckReading reading(LoadedBoat boat, CheckId check, String name, double volume) {
    Outfit outfit = boat.model().boat().outfit();
    SeamLeak worst =
        outfit.leaks().stream().max(Comparator.comparingDouble(SeamLeak::rate)).orElseThrow();
    Limit limit = rules.limit(name);
    return new CheckReading(
        CheckQuestion.of(check, Measure.TIME),
        Margin.atLeast(
            60 * limit.value(), OptionalDouble.of(volume / outfit.leakRate()), Unit.MINUTE),
        true,
        limit.cited(),
        boat.loadCase(),
        new Note.SeamsLeak(
            outfit.leakRate(), volume, worst.seam(), worst.rate() / outfit.leakRate()));
  }
}
