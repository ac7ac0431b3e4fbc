package thwartwise.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import thwartwise.afloat.Bay;
import thwartwise.afloat.Inflow;
import thwartwise.afloat.LooseWater;
import thwartwise.afloat.WaterLimits;
import thwartwise.boat.Opening;
import thwartwise.rules.Limit;
import thwartwise.rules.RuleSet;

/** The bung is on the kitchen table: how fast does each drain let water in, and for how long? */
public record DrainOpen(RuleSet rules) implements Check {
  @Override
  public Role role() {
    return Role.INFORMATION;
  }

  @Override
  public List<Reading> readings(Trial trial) {
    List<Opening> drains =
        trial.craft().boat().openings().stream()
            .filter(o -> o.closedBy().isPresent() && o.into().isEmpty())
            .toList();
    if (drains.isEmpty()) {
      return List.of();
    }
    LooseWater water = trial.looseWater();
    double trouble =
        WaterLimits.of(water, Bay.WHOLE, trial.edges())
            .trouble()
            .orElse(water.capacity(Bay.WHOLE) * 0.999);
    List<Reading> readings = new ArrayList<>();
    drains.forEach(d -> readings.add(reading(trial, water, d, trouble)));
    return readings;
  }

  private Reading reading(Trial trial, LooseWater water, Opening drain, double trouble) {
    Limit limit = rules.limit("drain-minutes");
    double area = area(drain) * rules.value("drain-coefficient");
    Inflow inflow = Inflow.of(water, drain.middle(), area, trouble);
    return new Reading(
        drain.name() + " without its " + drain.closedBy().orElseThrow(),
        OptionalDouble.of(inflow.seconds().orElse(LONGEST)),
        true,
        60 * limit.value(),
        true,
        Unit.MINUTE,
        limit.cited(),
        trial.condition() + "; open",
        note(inflow, trouble));
  }

  /** Shown when it never comes to trouble: a day, s. */
  private static final double LONGEST = 24 * 3600;

  private static double area(Opening drain) {
    return drain
        .diameter()
        .map(d -> Math.PI * d * d / 4)
        .orElseGet(() -> Math.PI * drain.width() * drain.width() / 4);
  }

  private static String note(Inflow inflow, double trouble) {
    if (!(inflow.first() > 0)) {
      return "it lies above the water, so nothing runs in while the boat lies still";
    }
    String rate =
        String.format(
            Locale.ROOT, "%.0f litres a minute at first", Math.ceil(60000 * inflow.first()));
    return inflow.levelAt().isPresent()
        ? rate
            + String.format(
                Locale.ROOT,
                "; it stops with %.0f litres in, level with the sea",
                Math.ceil(1000 * inflow.levelAt().getAsDouble()))
        : rate
            + String.format(
                Locale.ROOT,
                "; until %.0f litres are in and it floods or no longer comes back",
                Math.floor(1000 * trouble));
  }
}
