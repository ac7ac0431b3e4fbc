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
  private static final String ABOVE =
      "it lies above the water, so nothing runs in while the boat lies still";

  /** Shown where nothing runs in, s. */
  private static final double A_DAY = 24 * 3600;

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
    boolean above = trouble > 0 && !(inflow.first() > 0);
    return new Reading(
        drain.name() + " without its " + drain.closedBy().orElseThrow(),
        OptionalDouble.of(above ? A_DAY : inflow.seconds()),
        true,
        60 * limit.value(),
        true,
        Unit.MINUTE,
        limit.cited(),
        trial.condition() + "; open",
        above ? ABOVE : note(inflow, trouble));
  }

  private static double area(Opening drain) {
    double across = drain.diameter().orElse(drain.width());
    return Math.PI * across * across / 4;
  }

  private static String note(Inflow inflow, double trouble) {
    String rate =
        String.format(
            Locale.ROOT, "%.0f litres a minute at first; then ", Math.ceil(60000 * inflow.first()));
    double level = 1000 * inflow.levelAt().orElse(0);
    return inflow.levelAt().isPresent()
        ? rate + String.format(Locale.ROOT, "%.0f litres are in and it is swamped", level)
        : rate
            + String.format(
                Locale.ROOT,
                "%.0f litres are in and it floods or no longer comes back",
                Math.floor(1000 * trouble));
  }
}
