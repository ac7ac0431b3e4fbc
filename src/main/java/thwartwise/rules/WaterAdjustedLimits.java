package thwartwise.rules;

import java.util.Locale;
import thwartwise.boat.Waters;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.rules.Limit.Basis;

/**
 * The limits of a rule set as the waters demand them. A limit is only ever tightened: waters that
 * are calmer than the set takes for granted change nothing.
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
   * The wave that is reckoned with, m: the one stated, that of passing boats, or what sheltered
   * water shows, whichever is highest.
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
