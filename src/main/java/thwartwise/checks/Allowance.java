package thwartwise.checks;

import thwartwise.boat.Craft;
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

  /**
   * What is taken off a boat: more where few stations were measured, since much of its shape is
   * then guessed.
   */
  public static Allowance of(RuleSet rules, Craft craft) {
    Allowance measured = withEnoughStations(rules);
    if (!isGuessed(rules, craft)) {
      return measured;
    }
    return new Allowance(
        measured.massFactor,
        Math.min(measured.volumeFactor, 1 - rules.value("allowance-volume-few-stations")),
        Math.max(measured.freeboardLoss, rules.value("allowance-freeboard-few-stations")));
  }

  /** Whether so few stations were measured that more is taken off. */
  public static boolean isGuessed(RuleSet rules, Craft craft) {
    return craft.boat().hull().stations().size() <= rules.value("few-stations");
  }

  /** What is taken off where enough stations were measured. */
  public static Allowance withEnoughStations(RuleSet rules) {
    return new Allowance(
        1 + rules.value("allowance-mass"),
        1 - rules.value("allowance-volume"),
        rules.value("allowance-freeboard"));
  }
}
