package thwartwise.rules;

import java.util.Locale;
import thwartwise.boat.Waters;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.rules.Limit.Basis;

/**
 * The limits of a rule set, adjusted to the waters. A limit can only be tightened: waters calmer
 * than the set assumes change nothing.
 */
public final class WaterAdjustedLimits {
  private WaterAdjustedLimits() {}

  public static RuleSet tightened(RuleSet rules, Waters waters, UnitFormat units) {
    RuleSet under = waved(rules, waters, units);
    if (waters.wind().isPresent()) {
      double wind = waters.wind().get();
      under = named(under, "wind", wind, "wind of " + speed(wind, "%.1f m/s", units));
    }
    if (waters.current().isPresent()) {
      double current = waters.current().get();
      under = named(under, "current", current, speed(current, "%.2f m/s", units));
    }
    return isCold(rules, waters) ? cold(under) : under;
  }

  /**
   * The assumed wave, m: the highest of the stated wave, the wash of passing boats and the usual
   * wave of sheltered water.
   */
  static double wave(RuleSet rules, Waters waters) {
    double wash = waters.wash().orElse(false) ? rules.value("wash-wave") : 0;
    double stated = Math.max(waters.waves().orElse(0.0), wash);
    return Math.max(rules.value("wave"), stated);
  }

  static boolean isCold(RuleSet rules, Waters waters) {
    return waters.temperature().filter(t -> !(t >= rules.value("cold-water"))).isPresent();
  }

  private static RuleSet waved(RuleSet rules, Waters waters, UnitFormat units) {
    double wave = wave(rules, waters);
    String waves =
        "waves of "
            + units.either(
                String.format(Locale.ROOT, "%.2f m", wave), () -> units.height(wave, Side.UP));
    Limit rail = judged(wave, "m", waves + ": a crest as high as the lowest edge comes aboard");
    Limit heeled =
        judged(
            rules.value("wave-share-heeled") * wave,
            "m",
            String.format(
                Locale.ROOT,
                "%s, times %.1f: %s",
                waves,
                rules.value("wave-share-heeled"),
                rules.limit("wave-share-heeled").source()));
    return rules
        .tightened("wave", rail)
        .tightened("freeboard-at-rest", rail)
        .tightened("freeboard-at-rest-canoe", rail)
        .tightened("freeboard-heeled", heeled);
  }

  private static RuleSet cold(RuleSet rules) {
    return rules
        .tightened("swamped-lift-per-person", rules.limit("cold-lift-per-person"))
        .tightened("bailing-minutes", rules.limit("cold-bailing-minutes"));
  }

  private static RuleSet named(RuleSet rules, String limit, double value, String words) {
    return rules.tightened(limit, judged(value, "m/s", words + ", as stated"));
  }

  private static String speed(double value, String metric, UnitFormat units) {
    return units.either(
        String.format(Locale.ROOT, metric, value), () -> units.speed(value, Side.UP));
  }

  private static Limit judged(double value, String unit, String source) {
    return new Limit(value, unit, Basis.JUDGEMENT, source);
  }
}
