package thwartwise.page;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.OffsetDateTime;
import java.util.BitSet;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
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
        letters.marked() ? SupportedLetters.of(markup.apply(noted(page))).words() : letters.words();
    try {
      return Pdf.of(whole, written);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The page with the notice, which its other forms do without. */
  private static Page noted(Page page) {
    Page noted = new Page();
    page.blocks().forEach(noted::with);
    return noted.paragraph(SupportedLetters.SAID);
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
      Set<Integer> lacking =
          letters(typed).stream()
              .filter(letter -> !Typeface.has(letter) && !Character.isWhitespace(letter))
              .boxed()
              .collect(Collectors.toSet());
      return lacking.isEmpty()
          ? new SupportedLetters(typed, false)
          : new SupportedLetters(marked(typed, lacking), true);
    }

    /** The different letters; a long page has no more of them than a short one. */
    private static BitSet letters(String typed) {
      BitSet letters = new BitSet();
      for (int at = 0; at < typed.length(); at += Character.charCount(typed.codePointAt(at))) {
        letters.set(typed.codePointAt(at));
      }
      return letters;
    }

    private static String marked(String typed, Set<Integer> lacking) {
      StringBuilder words = new StringBuilder();
      typed
          .codePoints()
          .forEach(
              letter -> words.append(lacking.contains(letter) ? MARK : Character.toString(letter)));
      return words.toString();
    }
  }
}
