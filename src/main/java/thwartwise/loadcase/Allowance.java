package thwartwise.loadcase;

import thwartwise.boat.BoatModel;
import thwartwise.hull.HullMeasurements;
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
   * What is taken off a boat: more where few stations were measured, or a long stretch lies between
   * two of them, since much of its shape is then guessed.
   */
  public static Allowance of(RuleSet rules, BoatModel model) {
    Allowance measured = withEnoughStations(rules);
    double guessed = guessed(rules, model);
    double volume =
        Math.min(measured.volumeFactor, 1 - rules.value("allowance-volume-few-stations"));
    double freeboard =
        Math.max(measured.freeboardLoss, rules.value("allowance-freeboard-few-stations"));
    return new Allowance(
        measured.massFactor,
        measured.volumeFactor + guessed * (volume - measured.volumeFactor),
        measured.freeboardLoss + guessed * (freeboard - measured.freeboardLoss));
  }

  /** Whether so few stations were measured, or so far apart, that more is taken off. */
  public static boolean isGuessed(RuleSet rules, BoatModel model) {
    return guessed(rules, model) > 0;
  }

  /**
   * How much of what is taken off more: all of it with few stations, which leave a third of the
   * length and more between two; with more of them it grows with the longest stretch up to that, so
   * that no millimetre makes a step.
   */
  private static double guessed(RuleSet rules, BoatModel model) {
    HullMeasurements hull = model.boat().hull();
    if (hull.stations().size() <= rules.value("few-stations")) {
      return 1;
    }
    double measured = rules.value("stretch-measured");
    double share = (hull.longestStretch() - measured) / (rules.value("stretch-guessed") - measured);
    return Math.max(0, Math.min(1, share));
  }

  /** What is taken off where enough stations were measured. */
  public static Allowance withEnoughStations(RuleSet rules) {
    return new Allowance(
        1 + rules.value("allowance-mass"),
        1 - rules.value("allowance-volume"),
        rules.value("allowance-freeboard"));
  }
}
