package thwartwise.rules;

import java.util.ArrayList;
import java.util.List;
import thwartwise.boat.Waters;

/**
 * The properties of the waters that the program does not cover. A figure that is not a number
 * counts as too large.
 */
final class RoughWater {
  private RoughWater() {}

  static List<ExcludedUse> of(RuleSet rules, Waters waters) {
    List<ExcludedUse> all = new ArrayList<>();
    if (waters.breaking().orElse(false)) {
      all.add(new ExcludedUse.BreakingWaves());
    }
    double wave = WaterAdjustedLimits.wave(rules, waters);
    Limit high = rules.limit("wave-most");
    if (!(wave <= high.value())) {
      all.add(new ExcludedUse.HighWaves(wave, high.value(), high.cited()));
    }
    Limit windy = rules.limit("wind-most");
    waters
        .wind()
        .filter(wind -> !(wind <= windy.value()))
        .ifPresent(wind -> all.add(new ExcludedUse.StrongWind(wind, windy.value(), windy.cited())));
    Limit fast = rules.limit("current-most");
    waters
        .current()
        .filter(current -> !(current <= fast.value()))
        .ifPresent(
            current -> all.add(new ExcludedUse.StrongCurrent(current, fast.value(), fast.cited())));
    if (waters.weir().orElse(false)) {
      all.add(new ExcludedUse.Weir());
    }
    waters
        .offshore()
        .filter(metres -> !(metres <= offshoreMost(rules, waters)))
        .ifPresent(metres -> all.add(far(rules, waters, metres)));
    return all;
  }

  /** The greatest distance from the shore that is covered, m. */
  static double offshoreMost(RuleSet rules, Waters waters) {
    double most = rules.value("offshore-most");
    return WaterAdjustedLimits.isCold(rules, waters)
        ? Math.min(most, rules.value("offshore-most-cold"))
        : most;
  }

  private static ExcludedUse far(RuleSet rules, Waters waters, double metres) {
    Limit cold = rules.limit("offshore-most-cold");
    Limit limit =
        WaterAdjustedLimits.isCold(rules, waters) && cold.value() < metres
            ? cold
            : rules.limit("offshore-most");
    return new ExcludedUse.FarOffshore(metres, limit.value(), limit.cited());
  }
}
