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

  /**
   * Words with a visible mark for every letter our typeface lacks, so that none vanishes without a
   * word.
   */
  public record SupportedLetters(String words, boolean marked) {
    static final String MARK = "\u25a1";

    /** What is said where a mark stands. */
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
