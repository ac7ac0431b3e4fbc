package thwartwise.report;

import thwartwise.crew.Recommendation.CrewLimit;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;

/** How heavy each of so many people may be. */
final class SeatingWords {
  private SeatingWords() {}

  static String upTo(CrewLimit limit, UnitFormat units) {
    return "up to " + units.mass(limit.eachUpTo(), Side.DOWN) + (limit.people() > 1 ? " each" : "");
  }
}
