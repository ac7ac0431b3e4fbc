package thwartwise.files.report;

import thwartwise.inspection.Report;
import thwartwise.json.JsonText;
import thwartwise.json.Layout;
import thwartwise.json.Location;

/**
 * The report, {@code thwartwise/report/2}: what was asked and of which load case as data, with its
 * words next to it. Version 1, which has the words alone, is read for ever. Kilograms, metres,
 * litres and degrees; a figure that does not exist is null, never zero.
 */
public final class ReportJson {
  private ReportJson() {}

  public static String write(Report report) {
    return Layout.of(ReportTree.of(report));
  }

  /**
   * Reads a report.
   *
   * @param where what messages call the text
   */
  public static Report parse(String json, String where) {
    Location spot = Location.whole(where);
    return ReportFields.read(JsonText.parse(json, spot), spot);
  }
}
