package thwartwise.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import thwartwise.crew.Recommendation;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.page.FigureText;
import thwartwise.page.HtmlDocument;
import thwartwise.page.Page;
import thwartwise.page.Sentence;
import thwartwise.page.Table;
import thwartwise.record.FleetRow;
import thwartwise.record.InspectionRecord;

/** The boats of a group in one table. */
public final class FleetPage {
  private static final List<Table.Column> COLUMNS =
      List.of(
          new Table.Column("Boat", 16),
          new Table.Column("Inspected", 10),
          new Table.Column("Verdict", 17),
          new Table.Column("Crew", 10),
          new Table.Column("Load", 7),
          new Table.Column("Overdue", 15));

  private FleetPage() {}

  public static String of(List<FleetRow> rows, LocalDate today) {
    return page(rows, today).toString();
  }

  /** The same as a whole HTML file. */
  public static String html(List<FleetRow> rows, LocalDate today) {
    return HtmlDocument.of(page(rows, today), "Boats on " + today, "page", "");
  }

  private static Page page(List<FleetRow> rows, LocalDate today) {
    return new Page()
        .title("Boats on " + today)
        .table(Table.of(COLUMNS, rows.stream().map(FleetPage::cells).toList()))
        .paragraph(
            "Crew and load are what the last record recommends, people dressed and with life"
                + " jackets on; its page says for which waters and on what conditions",
            Disclaimer.NO_PLATE,
            Disclaimer.LAST_WORD);
  }

  private static List<String> cells(FleetRow row) {
    if (row instanceof FleetRow.OfFile file) {
      return List.of(file.name(), "Cannot be used: " + file.message());
    }
    FleetRow.OfBoat boat = (FleetRow.OfBoat) row;
    return List.of(
        boat.name(),
        inspected(boat),
        boat.last().map(FleetPage::verdict).orElse("none"),
        boat.last().map(FleetPage::crew).orElse("not known"),
        boat.last().map(FleetPage::load).orElse("not known"),
        boat.overdue().isEmpty() ? "nothing" : Sentence.joined(OverdueWords.of(boat.overdue())));
  }

  static String inspected(FleetRow.OfBoat boat) {
    Optional<LocalDate> day = boat.last().map(record -> record.date().toLocalDate());
    return day.map(LocalDate::toString).orElse("never");
  }

  static String verdict(InspectionRecord record) {
    return Verdict.of(record.report()).words();
  }

  static boolean held(InspectionRecord record) {
    return Verdict.of(record.report()) == Verdict.HELD;
  }

  private static String crew(InspectionRecord record) {
    Recommendation crew = record.report().recommendation();
    return held(record)
        ? "nobody"
        : FigureText.adults(crew.people()) + ", " + units(record).mass(crew.crew(), Side.DOWN);
  }

  private static String load(InspectionRecord record) {
    Recommendation crew = record.report().recommendation();
    return held(record) ? "nothing" : units(record).mass(crew.load(), Side.DOWN);
  }

  /** The units of each boat. */
  private static UnitFormat units(InspectionRecord record) {
    return ReaderUnits.of(record.boat());
  }
}
