package thwartwise.report;

import java.util.List;
import thwartwise.page.HtmlDocument;
import thwartwise.page.Page;
import thwartwise.page.Pdf;
import thwartwise.page.PdfPage;
import thwartwise.record.InspectionRecord;

/** The card for the lid of the locker: as text, as HTML, and as PDF on one half sheet. */
public final class CardPage {
  /** Sizes of type to try until the card fits half a sheet, in points. */
  private static final List<String> SIZES = List.of("11.5", "10.5", "9.5", "8.5", "7.5");

  private CardPage() {}

  public static String text(InspectionRecord inspection, String number) {
    return Card.of(inspection, number).toString();
  }

  public static String html(InspectionRecord inspection, String number) {
    return document(Card.of(inspection, number), inspection, "");
  }

  /**
   * The card in the largest type in which it fits; if it never does, in the smallest on more
   * sheets.
   */
  public static byte[] pdf(InspectionRecord inspection, String number) {
    byte[] pdf = {};
    for (String size : SIZES) {
      pdf = pdf(inspection, number, size);
      if (PdfPage.sheets(pdf) == 1) {
        return pdf;
      }
    }
    return pdf;
  }

  private static byte[] pdf(InspectionRecord inspection, String number, String size) {
    String style = Pdf.STYLE + "html { font-size: " + size + "pt; }\n";
    return PdfPage.of(
        Card.of(inspection, number), page -> document(page, inspection, style), inspection.date());
  }

  private static String document(Page card, InspectionRecord inspection, String more) {
    return HtmlDocument.of(card, inspection.boat().name() + ", card", "card", more);
  }
}
