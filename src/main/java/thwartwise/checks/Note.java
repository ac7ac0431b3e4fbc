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
 * Records keep the names of these types and of their parts for good.
 */
public sealed interface Note {
  Note NONE = new None();

  /** The figure says it all. */
  record None() implements Note {}

  /** In words: what is said of a doubtful measurement, and what an older record has. */
  record Stated(String words) implements Note {}

  /** What holds without a figure. */
  record Plain(Fact fact) implements Note {}

  /** There is no pose. */
  record NoRest(Equilibria.Ending ending) implements Note {}

  /** It comes to rest, and not upright. */
  record LiesOver(PoseOrientation orientation) implements Note {}

  /**
   * Which edge is lowest.
   *
   * @param streamM how much higher the stream stands at that end; 0 without one
   */
  record LowestAt(String edge, double streamM) implements Note {}

  /** Water comes in before any line pulls. */
  record WetWithoutPull(Note edge) implements Note {}

  /** The level pull before water comes in; perhaps more than was looked at. */
  record LevelPull(boolean nothingHarder) implements Note {}

  /** The swamped boat with a hatch left open. */
  record SwampedSo(Note how) implements Note {}

  /** Kneeling next to seated; a seated figure without a value is no steady rest. */
  record NextToSeated(Note kneeling, Margin seated) implements Note {}

  /**
   * How a righting curve ends, and the most that brings the boat back.
   *
   * @param greatestNm none where nothing on the way brings it back
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
   * What a drain lets in.
   *
   * @param levelAtM3 where it stops, level with the sea
   * @param moreComes whether the boat still floats once so much is in
   */
  record DrainInflow(
      double firstM3PerSecond, OptionalDouble levelAtM3, double noticedM3, boolean moreComes)
      implements Note {}

  /**
   * What comes in through seams.
   *
   * @param volumeM3 that are in at the end of the time told
   * @param worstShare what the worst seam lets in of all
   */
  record SeamsLeak(double rateM3PerSecond, double volumeM3, String worst, double worstShare)
      implements Note {}

  /** Where rowlocks stand, and where they are rowed best. */
  record RowlocksAft(double aftM, double bestM) implements Note {}

  /** How deep it is, and how many times the depth and the bow's height the line is to be. */
  record AnchorScope(double depthM, double times) implements Note {}

  /** The rain a boat takes. */
  record RainTaken(double volumeM3, double areaM2) implements Note {}

  /** How it is bailed. */
  record Bailed(double volumeM3, double bailerM3, boolean named, double strokes, double fill)
      implements Note {}

  /** Met as measured and not after the allowance: what it comes to then. */
  record AfterAllowance(Margin margin, Note note) implements Note {}

  /** A doubtful measurement that was kept with a reason. */
  record Confirmed(String reason) implements Note {}

  /** What is gravest about the wire and fuse of a circuit. */
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

  /** How a boat lies once it has come to rest, or why it does not. */
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

  /** What holds without a figure. */
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
