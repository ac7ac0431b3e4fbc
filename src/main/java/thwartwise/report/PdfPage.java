package thwartwise.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.OffsetDateTime;
import java.util.function.Function;

/** A page as PDF, with a word about letters that could not be set. */
final class PdfPage {
  private PdfPage() {}

  /**
   * @param markup of the page, as a whole file
   */
  static byte[] of(Page page, Function<Page, String> markup, OffsetDateTime written) {
    KnownLetters letters = KnownLetters.of(markup.apply(page));
    String whole =
        letters.marked()
            ? KnownLetters.of(markup.apply(page.paragraph(KnownLetters.SAID))).words()
            : letters.words();
    try {
      return Pdf.of(whole, written);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
