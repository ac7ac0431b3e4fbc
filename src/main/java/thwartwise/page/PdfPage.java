package thwartwise.page;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.OffsetDateTime;
import java.util.function.Function;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;

/** A page as PDF, with a word about letters that could not be set. */
public final class PdfPage {
  private PdfPage() {}

  /**
   * @param markup of the page, as a whole file
   */
  public static byte[] of(Page page, Function<Page, String> markup, OffsetDateTime written) {
    SupportedLetters letters = SupportedLetters.of(markup.apply(page));
    String whole =
        letters.marked()
            ? SupportedLetters.of(markup.apply(page.paragraph(SupportedLetters.SAID))).words()
            : letters.words();
    try {
      return Pdf.of(whole, written);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** How many sheets it takes on paper. */
  public static int sheets(byte[] pdf) {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return document.getNumberOfPages();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
