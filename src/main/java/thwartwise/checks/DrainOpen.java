package thwartwise.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import thwartwise.afloat.Bay;
import thwartwise.afloat.Equilibria;
import thwartwise.afloat.Inflow;
import thwartwise.afloat.LooseWater;
import thwartwise.boat.Opening;
import thwartwise.loadcase.LoadCaseStep;
import thwartwise.loadcase.LoadCaseStep.Act;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.rules.Limit;
import thwartwise.rules.RuleSet;

/** With the bung left ashore, how fast does each drain let water in, and for how long? */
public record DrainOpen(RuleSet rules) implements Check {
  /** Shown where no water comes in, s. */
  private static final double A_DAY = 24 * 3600;

  @Override
  public Role role() {
    return Role.INFORMATION;
  }

  @Override
  public List<CheckReading> readings(LoadedBoat boat) {
    List<Opening> drains =
        boat.model().boat().openings().stream()
            .filter(o -> o.closedBy().isPresent() && o.into().isEmpty())
            .toList();
    if (drains.isEmpty()) {
      return List.of();
    }
    LooseWater water = boat.looseWater();
    Equilibria rest = boat.atRest();
    double trouble =
        boat.waterLimits(Bay.WHOLE, rules.value("loose-water") / 1000)
            .trouble()
            .orElse(Double.POSITIVE_INFINITY);
    List<CheckReading> readings = new ArrayList<>();
    drains.forEach(d -> readings.add(reading(boat, rest, water, d, trouble)));
    return readings;
  }

  private CheckReading reading(
      LoadedBoat boat, Equilibria rest, LooseWater water, Opening drain, double trouble) {
    if (!rest.allUpright()) {
      return reading(boat, drain, OptionalDouble.empty(), Note.of(rest));
    }
    if (rest.reached().stream().allMatch(p -> p.above(drain.middle()) >= 0)) {
      return reading(
          boat, drain, OptionalDouble.of(A_DAY), Note.of(Note.Fact.DRAIN_ABOVE_THE_WATER));
    }
    double area = area(drain) * rules.value("drain-coefficient");
    double noticed = Math.min(rules.value("loose-water") / 1000, trouble);
    Inflow inflow = Inflow.of(water, drain.middle(), area, noticed);
    boolean stops = inflow.levelAt().isPresent();
    double seconds = stops ? A_DAY : inflow.seconds();
    return reading(
        boat,
        drain,
        OptionalDouble.of(seconds),
        new Note.DrainInflow(inflow.first(), inflow.levelAt(), noticed, noticed < trouble));
  }

  private CheckReading reading(LoadedBoat boat, Opening drain, OptionalDouble seconds, Note note) {
    Limit limit = rules.limit("drain-minutes");
    return new CheckReading(
        CheckQuestion.of(
            CheckId.DRAIN_OPEN, Measure.TIME, drain.name(), drain.closedBy().orElseThrow()),
        Margin.atLeast(60 * limit.value(), seconds, Unit.MINUTE),
        true,
        limit.cited(),
        boat.loadCase().with(List.of(LoadCaseStep.of(Act.OPEN))),
        note);
  }

  private static double area(Opening drain) {
    double across = drain.diameter().orElse(drain.width());
    return Math.PI * across * across / 4;
  }
}
