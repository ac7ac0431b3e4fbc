package thwartwise.loadcase;

import java.util.Optional;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Kit;
import thwartwise.boat.MeasurementKind;
import thwartwise.boat.MeasuringWay;
import thwartwise.boat.MethodEvidence;
import thwartwise.boat.Space;
import thwartwise.hull.HullMeasurements;
import thwartwise.rules.RuleSet;

/**
 * The allowance for errors of measurement, applied before an outcome is formed: the fast screen of
 * the search. It comes from the method of each measurement or, for an unstated one, from the rules.
 * A stated method subtracts what it leaves in 95 of 100 readings, never more than an unstated one;
 * a guess subtracts more.
 *
 * @param massFactor factor on the mass of people and of anything added
 * @param listedFactor factor on hull and listed kit
 * @param volumeFactor factor on every counted volume
 * @param freeboardLoss subtracted from every height above the water, m
 */
public record Allowance(
    double massFactor, double listedFactor, double volumeFactor, double freeboardLoss) {
  public static final Allowance NONE = new Allowance(1, 1, 0);

  /** The number of standard deviations below which 95 of 100 normally distributed errors are. */
  private static final double ONE_SIDED = 1.6449;

  /** An allowance with the same factor on every mass. */
  public Allowance(double massFactor, double volumeFactor, double freeboardLoss) {
    this(massFactor, massFactor, volumeFactor, freeboardLoss);
  }

  /**
   * The allowance of a boat; larger with few stations or a long gap between two of them, because
   * much of the shape is then interpolated.
   */
  public static Allowance of(RuleSet rules, BoatModel model) {
    Allowance unsaid = unsaid(rules, model);
    return model.boat().methods().isEmpty()
        ? unsaid
        : new SaidMethods(rules, model).instead(unsaid);
  }

  /** The same for a boat without stated methods. */
  public static Allowance unsaid(RuleSet rules, BoatModel model) {
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

  /** The factor on everything aboard: people and what is added, and with them hull and kit. */
  double massFactor(Boat boat, double others) {
    if (listedFactor == massFactor) {
      return massFactor;
    }
    double listed = boat.hull().mass() + boat.kitMass();
    return (listedFactor * listed + massFactor * others) / (listed + others);
  }

  /** A multiple of it; no more is subtracted from a volume than there is. */
  public Allowance times(double times) {
    return new Allowance(
        1 + times * (massFactor - 1),
        1 + times * (listedFactor - 1),
        Math.max(0, 1 - times * (1 - volumeFactor)),
        times * freeboardLoss);
  }

  /** The allowances of stated methods, in place of those of unstated ones. */
  private record SaidMethods(RuleSet rules, BoatModel model) {

    Allowance instead(Allowance unsaid) {
      return new Allowance(
          1 + relative(MeasurementKind.PEOPLE_WEIGHTS, "", unsaid.massFactor - 1),
          1 + ofListed(unsaid.massFactor - 1),
          1 - ofVolumes(1 - unsaid.volumeFactor),
          ofEdges(unsaid.freeboardLoss));
    }

    private double ofListed(double unsaid) {
      Boat boat = model.boat();
      double off = boat.hull().mass() * relative(MeasurementKind.HULL_WEIGHT, "", unsaid);
      for (Kit kit : boat.kit()) {
        off += kit.mass() * relative(MeasurementKind.KIT_WEIGHTS, kit.name(), unsaid);
      }
      return off / (boat.hull().mass() + boat.kitMass());
    }

    /** The poorest of all methods that count, because one factor stands for all of them. */
    private double ofVolumes(double unsaid) {
      return model.spaces().stream()
          .filter(space -> space.counting().share() > 0)
          .map(Space::name)
          .mapToDouble(name -> relative(MeasurementKind.CHAMBER_LITRES, name, unsaid))
          .max()
          .orElse(unsaid);
    }

    /** What is between few stations is a guess, however well the edges were measured. */
    private double ofEdges(double unsaid) {
      double measured = rules.value("allowance-freeboard");
      return way(MeasurementKind.EDGE_HEIGHTS, "")
          .map(way -> off(way, measured) + Math.max(0, unsaid - measured))
          .orElse(unsaid);
    }

    private double relative(MeasurementKind kind, String item, double unsaid) {
      return way(kind, item).map(way -> off(way, unsaid)).orElse(unsaid);
    }

    private Optional<MeasuringWay> way(MeasurementKind kind, String item) {
      return new MethodEvidence(model.boat()).way(kind, item);
    }

    private double off(MeasuringWay way, double unsaid) {
      double value = rules.value(way.limit());
      return way.isGuessed() ? value * unsaid : Math.min(unsaid, ONE_SIDED * value);
    }
  }
}
