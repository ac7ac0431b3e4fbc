package thwartwise.report;

import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.proof.ProofComparison.LikelySlip;
import thwartwise.proof.ReadingLabel;
import thwartwise.proof.ReadingLabel.FloatedState;
import thwartwise.proof.ReadingLabel.RailPoint;

/** What was read of a boat afloat, and what may be wrong with it. */
final class ProofWords {
  private ProofWords() {}

  static String state(FloatedState state) {
    return switch (state) {
      case EMPTY -> "nobody aboard";
      case SEATED -> "people seated";
      case WEIGHT_TO_PORT -> "weight to port";
      case WEIGHT_TO_STARBOARD -> "weight to starboard";
    };
  }

  static String point(RailPoint point) {
    return switch (point) {
      case BOW -> "bow";
      case STERN -> "stern";
      case PORT -> "port";
      case STARBOARD -> "starboard";
    };
  }

  /**
   * Which measurement, and by how much it would be off.
   *
   * @param label of the reading, where it is one
   */
  static String slip(LikelySlip slip, ReadingLabel label, UnitFormat units) {
    boolean more = slip.by() > 0;
    String item = slip.item();
    String kilograms = "about " + units.mass(Math.abs(slip.by()), Side.UP);
    String length = "about " + units.step(Math.abs(slip.by()));
    return switch (slip.kind()) {
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
          InputWords.name(slip.kind()) + ":" + off(more);
      case FREEBOARD_READ ->
          "the rail read at the "
              + point(label.point())
              + " with "
              + state(label.state())
              + ": read "
              + length
              + (more ? " too high" : " too low");
    };
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
