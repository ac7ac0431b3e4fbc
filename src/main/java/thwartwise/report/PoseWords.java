package thwartwise.report;

import thwartwise.inspection.PoseFigures;
import thwartwise.page.FigureText;

/** How the boat lies: the word, the heel and the trim. Both angles round away from level. */
final class PoseWords {
  private static final double LEVEL_DEGREES = 0.05;

  private PoseWords() {}

  static String of(PoseFigures pose) {
    String lies =
        pose.orientation().word()
            + ", "
            + angle(
                pose.heel(),
                "heeled ",
                FigureText.TIED + "degrees to starboard",
                FigureText.TIED + "degrees to port")
            + " and "
            + angle(
                pose.trim(),
                "trimmed ",
                FigureText.TIED + "degrees down by the bow",
                FigureText.TIED + "degrees down by the stern");
    return pose.stable() ? lies : lies + ", and does not stay so when nudged";
  }

  private static String angle(double radians, String before, String positive, String negative) {
    double degrees = Math.toDegrees(radians);
    if (Math.abs(degrees) < LEVEL_DEGREES) {
      return "not " + before.strip();
    }
    return before + FigureText.up(Math.abs(degrees), 1) + (degrees > 0 ? positive : negative);
  }
}
