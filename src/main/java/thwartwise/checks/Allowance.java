package thwartwise.checks;

import thwartwise.rules.RuleSet;

/**
 * What is taken off every measurement before an outcome is formed, until each carries its own
 * spread.
 *
 * @param massFactor what every mass is multiplied by
 * @param volumeFactor what every counted volume is multiplied by
 * @param freeboardLoss taken off every height above the water, m
 */
public record Allowance(double massFactor, double volumeFactor, double freeboardLoss) {
  public static final Allowance NONE = new Allowance(1, 1, 0);

  public static Allowance of(RuleSet rules) {
    return new Allowance(
        1 + rules.value("allowance-mass"),
        1 - rules.value("allowance-volume"),
        rules.value("allowance-freeboard"));
  }
}
