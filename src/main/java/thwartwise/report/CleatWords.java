package thwartwise.report;

import thwartwise.boat.Cleat;
import thwartwise.measure.UnitFormat;

/** Where a cleat is, as somebody with a tape would say it. */
final class CleatWords {
  private CleatWords() {}

  static String of(Cleat cleat, UnitFormat units) {
    return String.format(
        "%s (%s, %s, %s up)",
        cleat.name(),
        along(cleat.at().x(), units),
        across(cleat.at().y(), units),
        units.tape(cleat.at().z()));
  }

  private static String along(double x, UnitFormat units) {
    return x < 0
        ? units.tape(-x) + " behind the aft end"
        : units.tape(x) + " forward of the aft end";
  }

  private static String across(double y, UnitFormat units) {
    return y == 0
        ? "on the middle line"
        : units.tape(Math.abs(y)) + (y > 0 ? " to port" : " to starboard");
  }
}
