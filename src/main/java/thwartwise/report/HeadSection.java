package thwartwise.report;

import thwartwise.boat.Kept;
import thwartwise.plausibility.DoubtId;
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
    page.points(inspection.boat().kept().stream().map(HeadSection::kept).toList());
  }

  private static String kept(Kept kept) {
    String what = DoubtId.parse(kept.about()).map(DoubtId::words).orElse(kept.about());
    return "Looks wrong and was kept as measured: " + what + ". Reason given: " + kept.reason();
  }

  private static String named(String by) {
    return by.isBlank() ? "somebody not named" : by;
  }
}
