package thwartwise.report;

import thwartwise.page.Page;
import thwartwise.record.InspectionRecord;

/**
 * What it all rests on: what was measured, taken for granted and not looked at, and the sources.
 */
final class BasisSheet {
  private BasisSheet() {}

  static void write(Page page, InspectionRecord inspection, Sources sources) {
    page.part("What it rests on");
    page.folded(
        "What was measured",
        MeasuredSection.of(inspection.boat(), ReaderUnits.of(inspection.boat())));
    AssumptionsSection.write(page, inspection);
    sources.write(page);
    CautionsSection.write(page, ReaderUnits.of(inspection.boat()));
  }
}
