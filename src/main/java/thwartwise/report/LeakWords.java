package thwartwise.report;

import java.util.Locale;
import thwartwise.boat.BuoyancyReason.TakesWater;
import thwartwise.measure.Rounding;
import thwartwise.measure.UnitFormat;

/** How long a slowly leaking chamber keeps its lift. */
final class LeakWords {
  private static final double DAY = 24 * 60;

  private LeakWords() {}

  static String of(TakesWater leak, UnitFormat units) {
    return "takes "
        + units.leaked(leak.litresIn() / 1000)
        + " in "
        + minutes(Rounding.down(leak.minutes(), 0))
        + ": swamped, "
        + halfGone(leak.halfGoneMinutes())
        + "; "
        + left(leak);
  }

  private static String minutes(String whole) {
    return whole + UnitFormat.TIED + "min";
  }

  private static String halfGone(double minutes) {
    return minutes > DAY
        ? "half its lift is still there after a day"
        : "half its lift is gone after " + ElectricalFigures.duration(60 * minutes);
  }

  private static String left(TakesWater leak) {
    String after = " after " + minutes(Rounding.up(leak.heldUpMinutes(), 0));
    double percent = Rounding.wholeDown(100 * leak.left());
    return percent < 1
        ? "next to nothing is left" + after
        : String.format(Locale.ROOT, "%.0f %% of its air is left%s", percent, after);
  }
}
