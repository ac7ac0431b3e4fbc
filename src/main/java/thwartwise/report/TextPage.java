package thwartwise.report;

import thwartwise.record.InspectionRecord;

/**
 * The page a person prints: plain text, at most 80 columns, in the order people ask. May it be
 * launched, how much and how many, where do they sit, what does nobody do; then why; then what it
 * all rests on.
 */
public final class TextPage {
  private TextPage() {}

  public static String of(InspectionRecord inspection) {
    Page page = new Page();
    HeadSection.write(page, inspection);
    VerdictSection.write(page, inspection.report());
    WatersSection.write(page, inspection.report().waters());
    CrewSection.write(page, inspection);
    ForbiddenSection.write(page, inspection.report());
    AdviceSection.write(page, inspection.report().advice());
    FindingsSection.write(page, inspection.report().findings());
    ChambersSection.write(page, inspection.report().chambers());
    FloatingSection.write(page, inspection.report());
    FormulasSection.write(page, inspection.report().capacityFigures());
    MeasuredSection.write(page, inspection.boat());
    AssumedSection.write(page, inspection);
    CautionsSection.write(page);
    FootSection.write(page, inspection);
    return page.toString();
  }
}
