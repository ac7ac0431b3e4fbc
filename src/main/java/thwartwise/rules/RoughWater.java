package thwartwise.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import thwartwise.boat.Beaufort;
import thwartwise.boat.Waters;

/** Why nothing is recommended on these waters, in words. A figure that is no number is too much. */
final class RoughWater {
  private RoughWater() {}

  static List<String> reasons(RuleSet rules, Waters waters) {
    List<String> reasons = new ArrayList<>();
    if (waters.breaking().orElse(false)) {
      reasons.add("the waves break, and breaking waves are outside what is worked out here");
    }
    double wave = WaterAdjustedLimits.wave(rules, waters);
    if (!(wave <= rules.value("wave-most"))) {
      reasons.add(over(rules, "waves of %.2f m are higher than %.2f m", wave, "wave-most"));
    }
    waters
        .wind()
        .filter(wind -> !(wind <= rules.value("wind-most")))
        .ifPresent(wind -> reasons.add(windy(rules, wind)));
    waters
        .current()
        .filter(current -> !(current <= rules.value("current-most")))
        .ifPresent(
            current ->
                reasons.add(
                    over(
                        rules,
                        "a current of %.2f m/s is stronger than %.2f m/s",
                        current,
                        "current-most")));
    if (waters.weir().orElse(false)) {
      reasons.add("there is a weir, sluice or fall the boat could be carried to");
    }
    waters
        .offshore()
        .filter(metres -> !(metres <= offshoreMost(rules, waters)))
        .ifPresent(metres -> reasons.add(far(rules, waters, metres)));
    return reasons;
  }

  /** The farthest from the shore that is still spoken of, m. */
  static double offshoreMost(RuleSet rules, Waters waters) {
    double most = rules.value("offshore-most");
    return WaterAdjustedLimits.isCold(rules, waters)
        ? Math.min(most, rules.value("offshore-most-cold"))
        : most;
  }

  private static String windy(RuleSet rules, double wind) {
    return String.format(
        Locale.ROOT,
        "a wind of %.1f m/s is force %d: more than force %d (%s)",
        wind,
        Beaufort.of(wind).force(),
        Beaufort.of(rules.value("wind-most")).force(),
        rules.limit("wind-most").cited());
  }

  private static String far(RuleSet rules, Waters waters, double metres) {
    String limit =
        WaterAdjustedLimits.isCold(rules, waters) && rules.value("offshore-most-cold") < metres
            ? "offshore-most-cold"
            : "offshore-most";
    return over(rules, "%.0f m from the shore is farther than %.0f m", metres, limit);
  }

  private static String over(RuleSet rules, String words, double value, String limit) {
    return String.format(Locale.ROOT, words, value, rules.value(limit))
        + " ("
        + rules.limit(limit).cited()
        + ")";
  }
}
