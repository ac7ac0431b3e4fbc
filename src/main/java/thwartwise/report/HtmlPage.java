package thwartwise.report;

import java.util.Optional;
import thwartwise.page.HtmlDocument;
import thwartwise.page.Page;
import thwartwise.page.Pdf;
import thwartwise.page.PdfPage;
import thwartwise.page.Typeface;
import thwartwise.record.InspectionRecord;
import thwartwise.record.InspectionRecord.Correction;

/** The page of a record as one self-contained HTML file, and as PDF made from it. */
public final class HtmlPage {
  private HtmlPage() {}

  public static String of(InspectionRecord inspection, String number) {
    return of(inspection, number, Optional.empty());
  }

  /** The page of a record that corrects an older one. */
  public static String of(
      InspectionRecord inspection, String number, Optional<Correction> corrects) {
    return of(page(inspection, number, corrects), inspection, number);
  }

  static String of(Page page, InspectionRecord inspection, String number) {
    return document(page, inspection, number, "");
  }

  public static byte[] pdf(InspectionRecord inspection, String number) {
    return pdf(inspection, number, Optional.empty());
  }

  public static byte[] pdf(
      InspectionRecord inspection, String number, Optional<Correction> corrects) {
    return pdf(page(inspection, number, corrects), inspection, number);
  }

  static byte[] pdf(Page whole, InspectionRecord inspection, String number) {
    return PdfPage.of(
        whole, page -> document(page, inspection, number, Pdf.STYLE), inspection.date());
  }

  /** What both forms show; its pictures take a while. */
  static Page page(InspectionRecord inspection, String number, Optional<Correction> corrects) {
    Page page = new Page();
    PageFrame.write(page, inspection);
    page.contents();
    PageSheets.write(page, inspection, PicturesSheet.of(inspection));
    RecordsPage.correction(page, corrects);
    PageFrame.foot(page, inspection, number);
    return page;
  }

  private static String document(
      Page page, InspectionRecord inspection, String number, String more) {
    String title = inspection.boat().name() + ", " + number;
    return HtmlDocument.of(page, title, "page", running(number) + more);
  }

  /** The foot of every sheet, so that a lost sheet can be matched to its record. */
  private static String running(String number) {
    String look = "font-size: 9pt; font-family: \"" + Typeface.NAME + "\", sans-serif; }";
    return "@page { @bottom-left { content: \"Record "
        + number.replaceAll("[^0-9A-Za-z-]", "?")
        + "\"; "
        + look
        + " @bottom-right { content: counter(page) \" of \" counter(pages); "
        + look
        + " }\n";
  }
}
