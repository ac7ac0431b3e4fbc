package thwartwise.report;

import thwartwise.page.Page;
import thwartwise.record.InspectionRecord;

/** Everything between the head and the foot of the page, in the order people ask. */
final class Story {
  private Story() {}

  static void write(Page page, InspectionRecord inspection) {
    VerdictSection.write(page, inspection.report());
    WatersSection.write(page, inspection.report().waters());
    CrewSection.write(page, inspection);
    ForbiddenSection.write(page, inspection.report());
    AdviceSection.write(page, inspection.report());
    FindingsSection.write(page, inspection.report().findings());
    ChambersSection.write(page, inspection.report().chambers());
    FloatingSection.write(page, inspection.report());
    FormulasSection.write(page, inspection.report().capacityFigures());
    ChecklistsSection.write(page, inspection.boat());
    MeasuredSection.write(page, inspection.boat());
    AssumedSection.write(page, inspection);
    CautionsSection.write(page);
  }
}
