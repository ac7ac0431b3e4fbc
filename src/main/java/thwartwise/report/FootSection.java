package thwartwise.report;

import thwartwise.page.Page;
import thwartwise.record.InspectionRecord;

/** What this page is, and what it was made with. */
final class FootSection {
  private FootSection() {}

  /** The number of the record it lies beside, until when it holds, and who answers for it. */
  static void write(Page page, InspectionRecord inspection, String number) {
    write(page, inspection);
    page.paragraph("Record " + number, ValidityPeriod.words(inspection));
    page.writtenOn("Inspected by (name, date)");
    page.writtenOn("Owner (name, date)");
  }

  static void write(Page page, InspectionRecord inspection) {
    page.heading("This page");
    page.paragraph(
        "Limits: " + inspection.report().ruleSet(),
        "Beside a source, READ means that the figure was seen there, FROM MEMORY that it was"
            + " recalled, judgement that it is our own",
        "Worked out by thwartwise "
            + inspection.programVersion()
            + " on "
            + Moment.of(inspection.date()));
  }
}
