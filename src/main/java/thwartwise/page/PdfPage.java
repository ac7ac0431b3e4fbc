package thwartwise.page;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.OffsetDateTime;
import java.util.function.Function;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;

/** A page as PDF, with a notice if letters could not be set. */
public final class PdfPage {
  private PdfPage() {}

  /**
   * @param markup the page, as a whole HTML file
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

  /** The number of sheets of paper. */
  public static int sheets(byte[] pdf) {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return document.getNumberOfPages();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Text with a visible mark for every letter that our typeface lacks, so that none disappears
   * without a notice.
   */
  public record SupportedLetters(String words, boolean marked) {
    static final String MARK = "\u25a1";

    /** The notice for a page with such a mark. */
    static final String SAID =
        "A "
            + MARK
            + " stands for a letter that the type of this file lacks; the text and HTML pages of the"
            + " same record show it";

    public static SupportedLetters of(String typed) {
      StringBuilder words = new StringBuilder();
      boolean marked = false;
      for (int letter : typed.codePoints().toArray()) {
        boolean known = Typeface.has(letter) || Character.isWhitespace(letter);
        marked |= !known;
        words.append(known ? Character.toString(letter) : MARK);
      }
      return new SupportedLetters(words.toString(), marked);
    }
  }
}
