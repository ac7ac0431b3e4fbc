package thwartwise.rules;

import java.util.Locale;
import thwartwise.boat.Waters;

/**
 * The limits of a rule set as the waters demand them. A limit is only ever tightened: waters that
 * are calmer than the set takes for granted change nothing.
 */
public final class WaterAdjustedLimits {
  private WaterAdjustedLimits() {}

  public static RuleSet tightened(RuleSet rules, Waters waters) {
    RuleSet under = waved(rules, waters);
    if (waters.wind().isPresent()) {
      under = named(under, "wind", waters.wind().get(), "m/s", "wind of %.1f m/s, as stated");
    }
    if (waters.current().isPresent()) {
      under = named(under, "current", waters.current().get(), "m/s", "%.2f m/s, as stated");
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

  private static RuleSet waved(RuleSet rules, Waters waters) {
    double wave = wave(rules, waters);
    Limit rail =
        judged(
            wave,
            "m",
            String.format(
                Locale.ROOT,
                "waves of %.2f m: a crest as high as the lowest edge comes aboard",
                wave));
    Limit heeled =
        judged(
            rules.value("wave-share-heeled") * wave,
            "m",
            String.format(
                Locale.ROOT,
                "waves of %.2f m, times %.1f: %s",
                wave,
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

  private static RuleSet named(
      RuleSet rules, String limit, double value, String unit, String words) {
    return rules.tightened(limit, judged(value, unit, String.format(Locale.ROOT, words, value)));
  }

  private static Limit judged(double value, String unit, String source) {
    return new Limit(value, unit, Basis.JUDGEMENT, source);
  }
}
