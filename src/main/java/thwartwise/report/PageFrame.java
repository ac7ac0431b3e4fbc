package thwartwise.report;

import java.util.List;
import thwartwise.boat.Boat;
import thwartwise.boat.ConfirmedMeasurement;
import thwartwise.boat.MeasuringMethod;
import thwartwise.boat.MethodEvidence;
import thwartwise.page.Page;
import thwartwise.page.Sentence;
import thwartwise.plausibility.PlausibilityFinding.PlausibilityId;
import thwartwise.record.InspectionRecord;

/** The head and foot of a page: which boat, when, by whom. */
final class PageFrame {
  private PageFrame() {}

  static void write(Page page, InspectionRecord inspection) {
    String measuredBy =
        inspection
            .boat()
            .measuredBy()
            .map(by -> "Measured by " + by)
            .orElse("Who measured it was not noted");
    page.title(inspection.boat().name());
    page.paragraph(
        "Inspected on " + TimestampText.of(inspection.date()) + " by " + named(inspection.by()),
        measuredBy,
        said(inspection.boat()),
        unmeasured(inspection.boat()));
    page.points(confirmedMeasurements(inspection.boat()));
  }

  /** A paragraph, or nothing for blank text. */
  private static String said(Boat boat) {
    List<MeasuringMethod> counting = new MethodEvidence(boat).counting();
    return counting.isEmpty()
        ? ""
        : "How, as far as it was said: " + Sentence.list(MethodWords.of(counting));
  }

  /** What was said of what nobody measured counts for nothing, and must not look as if it did. */
  private static String unmeasured(Boat boat) {
    List<MeasuringMethod> nothing = new MethodEvidence(boat).unmeasured();
    return nothing.isEmpty()
        ? ""
        : "Said, but the boat file has no such measurement, so it counts for nothing: "
            + Sentence.list(MethodWords.of(nothing));
  }

  private static String named(String by) {
    return by.isBlank() ? "somebody not named" : by;
  }

  // The purpose of this page, and the version that made it.

  /** The number of the record next to which it lies, its validity, and who answers for it. */
  static void foot(Page page, InspectionRecord inspection, String number) {
    foot(page, inspection);
    page.paragraph("Record " + number, ValidityPeriod.words(inspection));
    page.writtenOn("Inspected by (name, date)");
    page.writtenOn("Owner (name, date)");
  }

  static void foot(Page page, InspectionRecord inspection) {
    page.heading("This page");
    page.paragraph(
        "Limits: " + inspection.report().ruleSet(),
        "Next to a source, READ means that the figure was read there and FROM MEMORY that it was"
            + " recalled; judgement means that the figure is our own",
        "Worked out by thwartwise "
            + inspection.programVersion()
            + " on "
            + TimestampText.of(inspection.date()));
  }

  /** Measurements that look wrong and were confirmed with a reason, one sentence each. */
  static List<String> confirmedMeasurements(Boat boat) {
    return boat.confirmedMeasurements().stream().map(PageFrame::confirmedMeasurements).toList();
  }

  private static String confirmedMeasurements(ConfirmedMeasurement kept) {
    String what =
        PlausibilityId.parse(kept.about()).map(PlausibilityWords::of).orElse(kept.about());
    return "Looks wrong, but was kept as measured: " + what + ". Reason given: " + kept.reason();
  }
}
