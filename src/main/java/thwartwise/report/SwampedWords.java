package thwartwise.report;

import thwartwise.afloat.PoseOrientation;
import thwartwise.inspection.SwampedFigures;

/** What to do when the boat is full of water, after how it was worked out to lie then. */
final class SwampedWords {
  private static final String STAY =
      "Everybody stays with the boat and holds on; nobody swims for the shore. Call for help at"
          + " once";

  private SwampedWords() {}

  static String[] of(SwampedFigures swamped, boolean heldOnTo) {
    return new String[] {
      STAY,
      swamped.floats() && heldOnTo
          ? "Full of water it is held on to from the water: nobody gets in, keep it between you"
          : lies(swamped)
    };
  }

  /** Of a boat that was seen to float level, whatever was worked out. */
  static String[] asSeen() {
    return new String[] {
      STAY,
      "Sit down low in it, as in the trial, keep still and bail; if it sinks, hold on to"
          + " whatever floats"
    };
  }

  private static String lies(SwampedFigures swamped) {
    if (!swamped.floats()) {
      return "Full of water it sinks and holds nobody up: hold on to whatever floats";
    }
    if (swamped.pose().isEmpty()) {
      return "How it lies full of water was not found: hold on to it from outside";
    }
    return swamped.pose().get().orientation() == PoseOrientation.UPRIGHT
        ? "Full of water it was worked out to float upright: sit down low in it, in the middle,"
            + " keep still and bail"
        : "Full of water it rolls over or stands on end: get clear and hold on from outside";
  }
}
