package thwartwise.report;

import thwartwise.inspection.RestFigures;
import thwartwise.measure.Rounding;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;

/** The floating position of a boat at rest, in one clause. */
final class FloatingPositionWords {
  /** Angles below this are not visible, degrees. */
  private static final double LEVEL = 0.05;

  private FloatingPositionWords() {}

  static String of(RestFigures rest, UnitFormat units) {
    return "lowest edge "
        + units.height(rest.freeboard(), Side.DOWN)
        + " above the water ("
        + rest.lowest()
        + "), "
        + lean(rest.trim(), "level fore and aft", "bow down", "stern down")
        + ", "
        + lean(rest.heel(), "upright", "over to starboard", "over to port");
  }

  private static String lean(double angle, String none, String positive, String negative) {
    double degrees = Math.toDegrees(angle);
    return Math.abs(degrees) < LEVEL
        ? none
        : Rounding.up(Math.abs(degrees), 1)
            + UnitFormat.TIED
            + "degrees "
            + (degrees > 0 ? positive : negative);
  }
}
