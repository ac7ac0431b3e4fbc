package thwartwise.report;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import thwartwise.boat.HullCorrection;
import thwartwise.boat.KeptProof;
import thwartwise.boat.ProofOutcome.SuspectedMeasurement;
import thwartwise.boat.ReadingLabel;
import thwartwise.boat.ReadingLabel.FloatedState;
import thwartwise.boat.ReadingLabel.ReadingPoint;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.spread.InputKind;

/** The readings of a boat afloat, and what may be wrong with it. */
final class ProofWords {
  private ProofWords() {}

  static String held(KeptProof proof, UnitFormat units) {
    return held(proof.day().toString(), proof.readings().by(), proof.outcome().suspect(), units);
  }

  /** Why the launch is held. */
  static String held(
      String date, String by, Optional<SuspectedMeasurement> suspect, UnitFormat units) {
    return "read afloat on "
        + date
        + " by "
        + by
        + ", the boat did not float as it was measured, so nothing is recommended until it is"
        + " measured again and agrees, or a later proof that reads as much does"
        + suspect.map(s -> "; most likely wrong is " + slip(s, units)).orElse("");
  }

  /** The result in one sentence, with both numbers. */
  static String of(KeptProof proof, UnitFormat units) {
    return "Proof afloat of "
        + TimestampText.day(proof.day())
        + " by "
        + proof.readings().by()
        + ": "
        + (proof.outcome().agrees()
            ? "it floats as it was measured" + bothNumbers(proof, units)
            : "it does not float as it was measured"
                + proof
                    .outcome()
                    .suspect()
                    .map(s -> "; most likely wrong is " + slip(s, units))
                    .orElse(""))
        + (proof.current() ? "" : "; since then it was measured otherwise");
  }

  /** What counts of the hull after proofs that agree. */
  static String counting(HullCorrection correction, UnitFormat units) {
    String mass = units.mass(correction.inForce().hull().mass(), Side.UP);
    return correction.isConfirmed()
        ? "Two proofs of different days agree, so the bare hull counts as "
            + mass
            + ": the heavier of the two, and its weight as high as the higher"
        : "The bare hull counts as "
            + mass
            + " and its weight as high as measured or as afloat, whichever is more; only a second"
            + " proof that agrees, on another day, can let more aboard";
  }

  private static String bothNumbers(KeptProof proof, UnitFormat units) {
    return proof
        .outcome()
        .corrected()
        .map(
            corrected ->
                "; bare hull measured "
                    + units.scales(proof.outcome().measured().mass())
                    + ", afloat "
                    + units.mass(corrected.hull().mass(), Side.UP))
        .orElse("");
  }

  static String state(FloatedState state) {
    return switch (state) {
      case EMPTY -> "nobody aboard";
      case SEATED -> "people seated";
      case WEIGHT_TO_PORT -> "weight to port";
      case WEIGHT_TO_STARBOARD -> "weight to starboard";
    };
  }

  static String point(ReadingPoint point) {
    return switch (point) {
      case BOW -> "bow";
      case STERN -> "stern";
      case PORT -> "port";
      case STARBOARD -> "starboard";
      case HEEL -> "heel";
    };
  }

  /** The measurement that may be wrong, and by how much. */
  static String slip(SuspectedMeasurement slip, UnitFormat units) {
    return kind(slip).map(kind -> slip(kind, slip, units)).orElse(slip.kind());
  }

  /** The result; empty for one of a later program. */
  private static Optional<InputKind> kind(SuspectedMeasurement slip) {
    return Arrays.stream(InputKind.values())
        .filter(kind -> kind.name().equals(slip.kind()))
        .findFirst();
  }

  private static String slip(InputKind kind, SuspectedMeasurement slip, UnitFormat units) {
    boolean more = slip.by() > 0;
    String item = slip.item();
    String kilograms = "about " + units.mass(Math.abs(slip.by()), Side.UP);
    String length = "about " + units.step(Math.abs(slip.by()));
    return switch (kind) {
      case HULL_MASS -> "the hull's weight: " + heavier(more, kilograms);
      case KIT_MASS -> "the weight of the " + item + ": " + heavier(more, kilograms);
      case PERSON_MASS -> "the weight of " + item + ": " + heavier(more, kilograms);
      case MOVED_WEIGHT -> "the weight that was moved: " + heavier(more, kilograms);
      case HULL_CENTRE_ALONG ->
          "where the bare hull balances: " + length + (more ? " farther forward" : " farther aft");
      case HULL_CENTRE_HEIGHT -> "how high the hull's weight lies: " + higher(more, length);
      case PERSON_ALONG ->
          "where " + item + " sat: " + length + (more ? " farther forward" : " farther aft");
      case PERSON_ACROSS ->
          "where " + item + " sat: " + length + " farther to " + (more ? "port" : "starboard");
      case HALF_BREADTHS ->
          "the half-breadths of station \""
              + item
              + "\": "
              + length
              + (more ? " more than stated" : " less than stated; was a breadth typed for half?");
      case BOTTOM_HEIGHTS -> "the bottom at station \"" + item + "\": " + higher(more, length);
      case EDGE_HEIGHTS -> "the height of the edges over the bottom: " + higher(more, length);
      case SEAT_HEIGHT -> "the height of the " + item + ": " + higher(more, length);
      case SHELL_THICKNESS, SWAMPED_DENSITY, SCALES, TAPE, CHAMBER_VOLUME ->
          InputWords.name(kind) + ":" + off(more);
      case FREEBOARD_READ ->
          "the rail read at the "
              + slip.reading().map(ProofWords::reading).orElse("")
              + ": read "
              + length
              + (more ? " too high" : " too low");
      case HEEL_READ, HEEL_ZERO ->
          "the heel read with "
              + slip.reading().map(label -> state(label.state())).orElse("")
              + ": "
              + String.format(
                  Locale.ROOT, "about %.0f", Math.ceil(Math.toDegrees(Math.abs(slip.by()))))
              + " degrees off";
    };
  }

  private static String reading(ReadingLabel label) {
    return point(label.point()) + " with " + state(label.state());
  }

  private static String heavier(boolean more, String kilograms) {
    return kilograms + off(more);
  }

  private static String off(boolean more) {
    return more ? " more than stated" : " less than stated";
  }

  private static String higher(boolean more, String length) {
    return length + (more ? " higher than stated" : " lower than stated");
  }
}
