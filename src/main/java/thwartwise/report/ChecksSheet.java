package thwartwise.report;

import thwartwise.checks.LoadCaseWords;
import thwartwise.inspection.Report;
import thwartwise.measure.UnitFormat;
import thwartwise.page.Page;
import thwartwise.record.InspectionRecord;

/** Every figure: what was asked, what holds it up, how it floats, what published rules give. */
final class ChecksSheet {
  private ChecksSheet() {}

  static void write(Page page, InspectionRecord inspection, Sources sources) {
    Report report = inspection.report();
    UnitFormat units = ReaderUnits.of(inspection.boat());
    page.part("Every check");
    page.paragraph(
        LoadCaseWords.of(report.asLoaded().loadCase(), units),
        LoadCaseWords.of(report.atLimit().loadCase(), units));
    CheckTable.write(page, report.findings(), sources, units);
    ChambersSection.write(page, report.chambers(), units);
    FloatingSection.write(page, report, units);
    FormulasSection.write(page, report.capacityFigures(), sources, units);
  }
}
