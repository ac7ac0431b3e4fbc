package thwartwise.files.report;

import thwartwise.inspection.Report;
import thwartwise.json.JsonText;
import thwartwise.json.Layout;
import thwartwise.json.Location;
import thwartwise.measure.UnitFormat;

/**
 * The report, {@code thwartwise/report/2}: questions and load cases as data, with their words next
 * to them. Version 1 has the words alone and is read for ever. Kilograms, metres, litres and
 * degrees; a figure that does not exist is null, never zero.
 */
public final class ReportJson {
  private ReportJson() {}

  /** The report with its words in metric units. */
  public static String write(Report report) {
    return Layout.of(ReportCodec.write(report));
  }

  /** The report with its words in the units of a boat, as the boat's records have them. */
  public static String write(Report report, UnitFormat words) {
    return Layout.of(ReportCodec.write(report, words));
  }

  /**
   * Reads a report.
   *
   * @param where what messages call the text
   */
  public static Report parse(String json, String where) {
    Location spot = Location.whole(where);
    return ReportCodec.read(JsonText.parse(json, spot), spot);
  }
}
