package thwartwise.report;

import thwartwise.boat.Cleat;
import thwartwise.page.FigureText;

/** Where a cleat is, as somebody with a tape would say it. */
final class CleatWords {
  private CleatWords() {}

  static String of(Cleat cleat) {
    return String.format(
        "%s (%s, %s, %s up)",
        cleat.name(), along(cleat.at().x()), across(cleat.at().y()), metres(cleat.at().z()));
  }

  private static String along(double x) {
    return x < 0 ? metres(-x) + " behind the aft end" : metres(x) + " forward of the aft end";
  }

  private static String across(double y) {
    return y == 0
        ? "on the middle line"
        : metres(Math.abs(y)) + (y > 0 ? " to port" : " to starboard");
  }

  private static String metres(double distance) {
    return FigureText.with(FigureText.plain(distance), "m");
  }
}
