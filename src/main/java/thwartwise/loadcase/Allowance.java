package thwartwise.loadcase;

import thwartwise.boat.BoatModel;
import thwartwise.hull.HullMeasurements;
import thwartwise.rules.RuleSet;

/**
 * The allowance for errors of measurement, applied before an outcome is formed.
 *
 * @param massFactor factor on every mass
 * @param volumeFactor factor on every counted volume
 * @param freeboardLoss subtracted from every height above the water, m
 */
public record Allowance(double massFactor, double volumeFactor, double freeboardLoss) {
  public static final Allowance NONE = new Allowance(1, 1, 0);

  /**
   * The allowance of a boat; larger with few stations or a long gap between two of them, since much
   * of the shape is then interpolated.
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

  /** Whether the stations are so few or so far apart that the larger allowance applies. */
  public static boolean isGuessed(RuleSet rules, BoatModel model) {
    return guessed(rules, model) > 0;
  }

  /**
   * The share of the larger allowance, 0 to 1: all of it with few stations, which leave a third of
   * the length or more between two; with more stations it grows continuously with the longest gap,
   * so that a millimetre never causes a step.
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

  /** The allowance with enough stations. */
  public static Allowance withEnoughStations(RuleSet rules) {
    return new Allowance(
        1 + rules.value("allowance-mass"),
        1 - rules.value("allowance-volume"),
        rules.value("allowance-freeboard"));
  }

  /** So many of it; no more is taken off a volume than there is. */
  public Allowance times(double times) {
    return new Allowance(
        1 + times * (massFactor - 1),
        Math.max(0, 1 - times * (1 - volumeFactor)),
        times * freeboardLoss);
  }
}
