package thwartwise.report;

import thwartwise.measure.UnitFormat;

/** Places in a boat, as somebody with a tape would say them. */
final class BoatPositionWords {
  private BoatPositionWords() {}

  static String boat(double x, UnitFormat units) {
    return x < 0
        ? units.mark(-x) + " behind the aft end"
        : units.mark(x) + " forward of the aft end";
  }
}
