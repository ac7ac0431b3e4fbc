package thwartwise.sheet;

import java.time.OffsetDateTime;
import thwartwise.page.HtmlDocument;
import thwartwise.page.Page;
import thwartwise.page.Pdf;
import thwartwise.page.PdfPage;

/** A sheet to fill in with a pencil, in the forms in which it is printed. */
public interface PrintedSheet {
  /** The title of its HTML page. */
  String heading();

  Page page();

  default String html(Paper paper) {
    return html(page(), paper, "");
  }

  private String html(Page page, Paper paper, String more) {
    return HtmlDocument.of(page, heading(), "sheet", more + paper.style());
  }

  default byte[] pdf(Paper paper, OffsetDateTime written) {
    return PdfPage.of(page(), page -> html(page, paper, Pdf.STYLE), written);
  }

  /** The paper size. */
  enum Paper {
    A4("A4 portrait", ""),
    LETTER("letter portrait", " letter");

    private final String size;
    private final String ending;

    Paper(String size, String ending) {
      this.size = size;
      this.ending = ending;
    }

    String style() {
      return "@page { size: " + size + "; margin: 11mm; }\n";
    }

    /** The ending of the file's name. */
    public String ending() {
      return ending;
    }
  }
}
