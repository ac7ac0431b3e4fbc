package thwartwise.report;

import thwartwise.checks.CheckQuestion;
import thwartwise.checks.Measure;

/** The measurement that a question of plausibility is about, in words. */
final class MeasuredWords {
  private MeasuredWords() {}

  static String of(CheckQuestion question) {
    return form(question.measure()).formatted(question.things().toArray());
  }

  /** The words with a gap for each name. */
  private static String form(Measure measure) {
    return switch (measure) {
      case BLOCK_COEFFICIENT -> "how much of its block the hull fills under water";
      case PANEL_TWIST -> "how hard a panel is twisted";
      case OUTLINE_CROSSING -> "length over which the faired outline crosses itself";
      case BREADTH_OVER_LENGTH -> "breadth of the hull as a share of its length";
      case DEPTH_OVER_BREADTH -> "depth of the hull amidships as a share of its breadth";
      case HULL_MASS -> "weight of the bare hull against that of its skin";
      case SWAMPED_DENSITY -> "swamped density of what the hull is made of";
      case LOWEST_POINT -> "height of the lowest point of the bottom";
      case STATION_WAIST -> "station \"%s\", waist of the outline";
      case STATION_FAIRNESS -> "station \"%s\" against its neighbours";
      case SEAT_HEIGHT -> "seat \"%s\", height";
      case SEAT_ABOVE_FLOOR -> "seat \"%s\", height above the floor";
      case SEAT_ABOVE_CHAMBER -> "seat \"%s\", height above the chamber of that name";
      case CHAMBER_TOP -> "chamber \"%s\", height of its top";
      case POURED_VOLUME -> "chamber \"%s\", litres poured into it";
      case LEAK_TEST_AGE -> "chamber \"%s\", days from its leak test until today";
      case KIT_MASS -> "kit \"%s\", mass";
      case KIT_HEIGHT -> "kit \"%s\", height of its middle";
      case KIT_OUTSIDE -> "kit \"%s\", how far outside the hull";
      case CLEAT_OUTSIDE -> "cleat \"%s\", how far outside the hull";
      case PLACE_REACH -> "place \"%s\", how far out from the middle line";
      case PLACE_LENGTH -> "place \"%s\", length of seat its people take";
      case PLACE_FROM_END ->
          "place \"%s\", from the nearer end of the hull to the middle of whoever sits there";
      case PLACE_ALONG -> "place \"%s\", how far forward, as a share of the length";
      case PLACE_FROM_CHAMBER -> "place \"%s\", how far before or abaft the chamber of that name";
      case PLACES_APART -> "place \"%s\", between it and place \"%s\" along the boat";
      case PLACE_SIDE -> "place \"%s\", how far out its middle lies to the side it is named for";
      case LOW_OPENING_WIDTH -> "opening \"%s\", so low in the hull, its width";
      default -> "%s";
    };
  }
}
