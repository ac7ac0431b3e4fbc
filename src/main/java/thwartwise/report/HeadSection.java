package thwartwise.report;

import thwartwise.page.Page;
import thwartwise.record.InspectionRecord;

/** Which boat, when, by whom. */
final class HeadSection {
  private HeadSection() {}

  static void write(Page page, InspectionRecord inspection) {
    String measuredBy =
        inspection
            .boat()
            .measuredBy()
            .map(by -> "Measured by " + by)
            .orElse("Who measured it was not noted");
    page.title(inspection.boat().name());
    page.paragraph(
        "Inspected on " + Moment.of(inspection.date()) + " by " + named(inspection.by()),
        measuredBy);
    page.points(ConfirmedMeasurementWords.of(inspection.boat()));
  }

  private static String named(String by) {
    return by.isBlank() ? "somebody not named" : by;
  }
}
