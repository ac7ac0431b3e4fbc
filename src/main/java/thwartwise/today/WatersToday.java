package thwartwise.today;

import java.util.List;
import java.util.Locale;
import thwartwise.boat.Waters;
import thwartwise.inspection.Report;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.rules.WaterStatement;
import thwartwise.today.TodayVerdict.Point;

/** What concerns the waters as they are today, beside those the figures hold for. */
final class WatersToday {
  private WatersToday() {}

  static List<Point> points(Report report, Waters waters, UnitFormat units) {
    return List.of(asTold(report), forecast(), cold(waters, units));
  }

  private static Point asTold(Report report) {
    String water =
        report.waters().stream()
            .filter(w -> w.kind() == WaterStatement.Kind.HOLDS_FOR)
            .map(WaterStatement::words)
            .findFirst()
            .orElse("sheltered, without waves");
    return new Point(
        "Is the water today no rougher than the figures hold for: "
            + water
            + "; and no weir within reach?",
        "go where it is calmer, or state these waters in the boat file and inspect again");
  }

  private static Point forecast() {
    return new Point(
        "Was the forecast looked at, and the stop rule said aloud: white caps on many crests"
            + " (force 4), thunder or fog, and everyone goes ashore at once?",
        "look at the forecast for the whole time out and agree on what ends it");
  }

  /** Below 15 degrees is cold water: lifeboat and paddling bodies (READ). */
  private static Point cold(Waters waters, UnitFormat units) {
    String said =
        waters
            .temperature()
            .map(t -> " (the file says " + degrees(t, Side.DOWN, "degrees", units) + ")")
            .orElse("");
    return new Point(
        "Is everyone dressed for being in the water"
            + said
            + ", and if it is below "
            + degrees(15, Side.UP, "degrees Celsius", units)
            + ", does nobody go alone?",
        "take the temperature; dress for the water and not for the air, or stay ashore");
  }

  private static String degrees(double celsius, Side side, String metric, UnitFormat units) {
    return units.either(
        String.format(Locale.ROOT, "%.0f ", Math.floor(celsius)) + metric,
        () -> units.temperature(celsius, side));
  }
}
