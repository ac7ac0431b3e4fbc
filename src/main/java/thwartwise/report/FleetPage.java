package thwartwise.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import thwartwise.inspection.Recommendation;
import thwartwise.record.FleetRow;
import thwartwise.record.InspectionRecord;

/** The boats of a group in one table. */
public final class FleetPage {
  private FleetPage() {}

  public static String of(List<FleetRow> rows, LocalDate today) {
    Page page = new Page().title("Boats on " + today);
    Columns table = new Columns(page, 16, 10, 17, 10, 7, 15);
    table.heads("Boat", "Inspected", "Verdict", "Crew", "Load", "Overdue");
    for (FleetRow row : rows) {
      write(table, row);
      page.gap();
    }
    page.paragraph(
        "Crew and load are what the last record recommends, people dressed and with life jackets"
            + " on",
        "A recommendation, not a capacity plate");
    return page.toString();
  }

  private static void write(Columns table, FleetRow row) {
    if (row instanceof FleetRow.OfFile file) {
      table.wide(file.name(), "Cannot be used: " + file.message());
      return;
    }
    FleetRow.OfBoat boat = (FleetRow.OfBoat) row;
    table.row(
        boat.name(),
        inspected(boat),
        boat.last().map(FleetPage::verdict).orElse("none"),
        boat.last().map(FleetPage::crew).orElse("not known"),
        boat.last().map(FleetPage::load).orElse("not known"),
        boat.overdue().isEmpty() ? "nothing" : Sentence.joined(boat.overdue()));
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
        : Shown.adults(crew.people()) + ", " + Shown.with(Shown.down(crew.crew(), 0), "kg");
  }

  private static String load(InspectionRecord record) {
    Recommendation crew = record.report().recommendation();
    return held(record) ? "nothing" : Shown.with(Shown.down(crew.load(), 0), "kg");
  }
}
