package thwartwise.checks;

import java.util.OptionalDouble;
import thwartwise.afloat.Equilibria;
import thwartwise.afloat.Pose.PoseOrientation;
import thwartwise.afloat.RightingCurve;
import thwartwise.boat.Side;
import thwartwise.electrics.CircuitSums;
import thwartwise.loadcase.LowestEdge;

/**
 * What the reader must know next to a figure, or why there is none. SI: m, kg, m³, radians, N·m.
 * Records store the names of these types and of their components, so they are never renamed.
 */
public sealed interface Note {
  Note NONE = new None();

  /** Nothing but the figure. */
  record None() implements Note {}

  /** Words: what somebody wrote at a look, and what an older record has. */
  record Stated(String words) implements Note {}

  /** A fact without a figure. */
  record Plain(Fact fact) implements Note {}

  /** There is no pose. */
  record NoRest(Equilibria.Ending ending) implements Note {}

  /** It comes to rest, but not upright. */
  record LiesOver(PoseOrientation orientation) implements Note {}

  /**
   * Which edge is lowest.
   *
   * @param streamM by how much the current raises the water there; 0 without a current
   */
  record LowestAt(String edge, double streamM) implements Note {}

  /** Water comes in before any line pulls. */
  record WetWithoutPull(Note edge) implements Note {}

  /** The level pull that brings water in; it may be more than the strongest pull tried. */
  record LevelPull(boolean nothingHarder) implements Note {}

  /** The swamped boat with a hatch left open. */
  record SwampedSo(Note how) implements Note {}

  /** Kneeling next to seated; a seated figure without a value is no steady rest. */
  record NextToSeated(Note kneeling, Margin seated) implements Note {}

  /**
   * The end of a righting curve and its greatest moment.
   *
   * @param greatestNm empty where no moment brings the boat back
   */
  record CurveEnd(
      Side side,
      double endHeel,
      RightingCurve.End end,
      OptionalDouble greatestNm,
      double greatestHeel)
      implements Note {}

  /** Water comes in before a sudden move ends. */
  record FloodsFirst(String edge, double heel, double lackingNm) implements Note {}

  /** The two largest chambers. */
  record TwoChambers(String first, String second) implements Note {}

  /** One person turns the boat back. */
  record TurnedBack(double personKg, boolean withLine, boolean staysUp) implements Note {}

  record NotUpsideDown(boolean staysUp) implements Note {}

  /** Where the first edge goes under. */
  record FirstUnder(String edge) implements Note {}

  /**
   * The flow through a drain.
   *
   * @param levelAtM3 the volume at which it stops, level with the sea
   * @param moreComes whether the boat still floats with that volume and water still comes in
   */
  record DrainInflow(
      double firstM3PerSecond, OptionalDouble levelAtM3, double noticedM3, boolean moreComes)
      implements Note {}

  /**
   * The flow through seams.
   *
   * @param volumeM3 the volume inside at the end of the time given
   * @param worstShare the share of the worst seam
   */
  record SeamsLeak(double rateM3PerSecond, double volumeM3, String worst, double worstShare)
      implements Note {}

  /** How far aft of the rower the rowlocks are, and the best distance. */
  record RowlocksAft(double aftM, double bestM) implements Note {}

  /**
   * The depth of the water, and the length of line as a multiple of depth plus height of the bow.
   */
  record AnchorScope(double depthM, double times) implements Note {}

  /** The rain that a boat holds before it is in trouble. */
  record RainTaken(double volumeM3, double areaM2) implements Note {}

  /** How it is bailed. */
  record Bailed(double volumeM3, double bailerM3, boolean named, double strokes, double fill)
      implements Note {}

  /** The figure after the allowance, where the limit is met only as measured. */
  record AfterAllowance(Margin margin, Note note) implements Note {}

  /** What is odd about a measurement. */
  record OfMeasurement(MeasurementNote note) implements Note {}

  /** A doubtful measurement that was confirmed with a reason. */
  record Confirmed(String reason) implements Note {}

  /** The gravest fault of wire and fuse of a circuit. */
  record UnguardedCircuit(CircuitSums.Fault fault) implements Note {}

  default boolean isNone() {
    return this instanceof None;
  }

  /** None where there are no words. */
  static Note stated(String words) {
    return words.isEmpty() ? NONE : new Stated(words);
  }

  static Note of(Fact fact) {
    return new Plain(fact);
  }

  /** The pose of a boat that has come to rest, or why it has none. */
  static Note of(Equilibria rest) {
    if (!rest.exist()) {
      return new NoRest(rest.ending());
    }
    if (!rest.allStable()) {
      return of(Fact.NO_STEADY_REST);
    }
    PoseOrientation orientation = rest.worst().orElseThrow().orientation();
    return orientation == PoseOrientation.UPRIGHT ? NONE : new LiesOver(orientation);
  }

  static Note of(LowestEdge lowest) {
    return lowest.height().isPresent()
        ? new LowestAt(lowest.at(), lowest.stream())
        : of(lowest.rest());
  }

  /** A fact without a figure. */
  enum Fact {
    NO_STEADY_REST,
    NO_SUCH_STATE,
    ABOVE_THE_WATER_IS_NEGATIVE,
    NOBODY_GETS_BACK_IN,
    EDGE_UNDER,
    HANDS_ON_IT,
    COSTLIEST_LOSS,
    NO_TRIM,
    SWINGS_SO_FAR,
    SUDDENLY_FARTHER,
    FLOODS_BEFORE_SWINGING_BACK,
    NO_SWING_FOLLOWED,
    NOT_WHEN_FULL,
    ROLLS_OVER,
    LIES_OVER,
    COMES_BACK_WHILE_DRY,
    DRAIN_ABOVE_THE_WATER,
    NO_WAY_BACK,
    DOES_NOT_FLOAT,
    SMALLER_VOLUME_COUNTS,
    MOTOR_TOO_STRONG,
    NOTHING_TO_ROW_WITH,
    ROWLOCKS_OUT_OF_REACH,
    TILLER_TOO_SHORT
  }
}
