package thwartwise.report;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import thwartwise.crew.Recommendation;
import thwartwise.measure.PrintableText;
import thwartwise.measure.Rounding;
import thwartwise.record.FleetRow;
import thwartwise.record.InspectionRecord;

/**
 * The table of a group's boats for a spreadsheet: RFC 4180, lines ended by carriage return and line
 * feed. A cell that a spreadsheet would take for a formula begins with an apostrophe, because the
 * name of a boat may be malicious.
 */
public final class FleetCsv {
  private static final String HEADS =
      line("boat", "inspected", "verdict", "people", "crew kg", "load kg", "overdue", "unusable");
  // Some spreadsheets take the wide forms for the narrow ones.
  private static final String FORMULA = "=+-@\uFF1D\uFF0B\uFF0D\uFF20";

  private FleetCsv() {}

  public static String of(List<FleetRow> rows) {
    return rows.stream().map(FleetCsv::row).collect(Collectors.joining("", HEADS, ""));
  }

  private static String row(FleetRow row) {
    if (row instanceof FleetRow.OfFile file) {
      return line(file.name(), "", "", "", "", "", "", file.message());
    }
    FleetRow.OfBoat boat = (FleetRow.OfBoat) row;
    String due = String.join("; ", OverdueWords.of(boat.overdue()));
    if (boat.last().isEmpty()) {
      return line(boat.name(), "", "", "", "", "", due, "");
    }
    InspectionRecord record = boat.last().get();
    Recommendation crew = record.report().recommendation();
    boolean held = FleetPage.held(record);
    return line(
        boat.name(),
        FleetPage.inspected(boat),
        FleetPage.verdict(record),
        held ? "0" : Integer.toString(crew.people()),
        held ? "0" : Rounding.down(crew.crew(), 0),
        held ? "0" : Rounding.down(crew.load(), 0),
        due,
        "");
  }

  private static String line(String... cells) {
    return Arrays.stream(cells).map(FleetCsv::cell).collect(Collectors.joining(",", "", "\r\n"));
  }

  static String cell(String words) {
    // The table is also printed in a terminal, which would obey an escape character.
    String printable = PrintableText.of(words);
    String harmless = startsLikeAFormula(printable) ? "'" + printable : printable;
    boolean quoted = harmless.chars().anyMatch(c -> ",\"".indexOf(c) >= 0);
    return quoted ? '"' + harmless.replace("\"", "\"\"") + '"' : harmless;
  }

  /** Whether it starts like a formula; leading blanks do not protect everywhere. */
  private static boolean startsLikeAFormula(String words) {
    String start = words.stripLeading();
    return !start.isEmpty() && FORMULA.indexOf(start.charAt(0)) >= 0;
  }
}
