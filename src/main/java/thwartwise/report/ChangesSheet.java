package thwartwise.report;

import thwartwise.inspection.Report;
import thwartwise.measure.UnitFormat;
import thwartwise.page.Page;
import thwartwise.record.InspectionRecord;

/** What could be changed and what that takes, what nobody does and why, how else people may sit. */
final class ChangesSheet {
  private ChangesSheet() {}

  static void write(Page page, InspectionRecord inspection) {
    Report report = inspection.report();
    UnitFormat units = ReaderUnits.of(inspection.boat());
    page.part("What to change, and what nobody does");
    KneeDeepTrial.write(page, inspection);
    AdviceSection.write(page, report, units);
    ForbiddenSection.write(page, report, units);
    if (Verdict.of(report) != Verdict.HELD) {
      Page others = SeatTable.others(inspection.boat().places(), report.recommendation(), units);
      if (!others.blocks().isEmpty()) {
        page.folded("How else lighter people may sit", others);
      }
    }
  }
}
