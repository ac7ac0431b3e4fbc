package thwartwise.report;

import thwartwise.page.Page;
import thwartwise.picture.Pictures;
import thwartwise.record.InspectionRecord;

/**
 * Everything between the head and the foot of the page, in the order people ask, sheet by sheet.
 */
final class PageSheets {
  private PageSheets() {}

  /**
   * @param pictures of the boat; none for a form that cannot show any
   */
  static void write(Page page, InspectionRecord inspection, Pictures pictures) {
    Sources sources = new Sources();
    GlanceSheet.write(page, inspection, pictures);
    PicturesSheet.write(page, pictures, ReaderUnits.of(inspection.boat()));
    ChangesSheet.write(page, inspection);
    ChecksSheet.write(page, inspection, sources);
    ChecklistsSection.write(page, inspection.boat());
    BasisSheet.write(page, inspection, sources);
  }
}
