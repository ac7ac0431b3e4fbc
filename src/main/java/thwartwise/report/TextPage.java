package thwartwise.report;

import java.util.Optional;
import thwartwise.record.Correction;
import thwartwise.record.InspectionRecord;

/**
 * The page a person prints: plain text, at most 80 columns, in the order people ask. May it be
 * launched, how much and how many, where do they sit, what does nobody do; then why; then what it
 * all rests on.
 */
public final class TextPage {
  private TextPage() {}

  /** The page of an inspection that is not kept. */
  public static String of(InspectionRecord inspection) {
    Page page = new Page();
    HeadSection.write(page, inspection);
    Story.write(page, inspection);
    FootSection.write(page, inspection);
    return page.toString();
  }

  /** The page that lies beside the record of that number. */
  public static String of(InspectionRecord inspection, String number) {
    return of(inspection, number, Optional.empty());
  }

  /** The same of a record that corrects an older one. */
  public static String of(
      InspectionRecord inspection, String number, Optional<Correction> corrects) {
    Page page = new Page();
    HeadSection.write(page, inspection);
    Story.write(page, inspection);
    RecordsPage.correction(page, corrects);
    FootSection.write(page, inspection, number);
    return page.toString();
  }
}
