package thwartwise.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.BiFunction;
import thwartwise.boat.Beaufort;
import thwartwise.boat.Waters;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;

/** Why nothing is recommended on these waters, in words. A figure that is no number is too much. */
final class RoughWater {
  private RoughWater() {}

  static List<String> reasons(RuleSet rules, Waters waters, UnitFormat units) {
    List<String> reasons = new ArrayList<>();
    if (waters.breaking().orElse(false)) {
      reasons.add("the waves break, and breaking waves are outside what is worked out here");
    }
    double wave = WaterAdjustedLimits.wave(rules, waters);
    if (!(wave <= rules.value("wave-most"))) {
      reasons.add(
          over(
              rules,
              "waves of %s are higher than %s",
              wave,
              "wave-most",
              told("%.2f m", units, units::height)));
    }
    waters
        .wind()
        .filter(wind -> !(wind <= rules.value("wind-most")))
        .ifPresent(wind -> reasons.add(windy(rules, wind, units)));
    waters
        .current()
        .filter(current -> !(current <= rules.value("current-most")))
        .ifPresent(
            current ->
                reasons.add(
                    over(
                        rules,
                        "a current of %s is stronger than %s",
                        current,
                        "current-most",
                        told("%.2f m/s", units, units::speed))));
    if (waters.weir().orElse(false)) {
      reasons.add("there is a weir, sluice or fall the boat could be carried to");
    }
    waters
        .offshore()
        .filter(metres -> !(metres <= offshoreMost(rules, waters)))
        .ifPresent(metres -> reasons.add(far(rules, waters, metres, units)));
    return reasons;
  }

  /** The farthest from the shore that is still spoken of, m. */
  static double offshoreMost(RuleSet rules, Waters waters) {
    double most = rules.value("offshore-most");
    return WaterAdjustedLimits.isCold(rules, waters)
        ? Math.min(most, rules.value("offshore-most-cold"))
        : most;
  }

  private static String windy(RuleSet rules, double wind, UnitFormat units) {
    return String.format(
        Locale.ROOT,
        "a wind of %s is force %d: more than force %d (%s)",
        told("%.1f m/s", units, units::speed).apply(wind, Side.UP),
        Beaufort.of(wind).force(),
        Beaufort.of(rules.value("wind-most")).force(),
        rules.limit("wind-most").cited());
  }

  private static String far(RuleSet rules, Waters waters, double metres, UnitFormat units) {
    String limit =
        WaterAdjustedLimits.isCold(rules, waters) && rules.value("offshore-most-cold") < metres
            ? "offshore-most-cold"
            : "offshore-most";
    return over(
        rules,
        "%s from the shore is farther than %s",
        metres,
        limit,
        told("%.0f m", units, units::distance));
  }

  private static BiFunction<Double, Side, String> told(
      String metric, UnitFormat units, BiFunction<Double, Side, String> own) {
    return (value, side) ->
        units.either(String.format(Locale.ROOT, metric, value), () -> own.apply(value, side));
  }

  private static String over(
      RuleSet rules,
      String words,
      double value,
      String limit,
      BiFunction<Double, Side, String> told) {
    return String.format(
            words, told.apply(value, Side.UP), told.apply(rules.value(limit), Side.DOWN))
        + " ("
        + rules.limit(limit).cited()
        + ")";
  }
}
