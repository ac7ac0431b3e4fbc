package thwartwise.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** The typeface of our PDFs. It comes with the program and is embedded in each file. */
public enum Typeface {
  REGULAR(400, "DejaVuSansCondensed.ttf"),
  BOLD(700, "DejaVuSansCondensed-Bold.ttf");

  /** The name of the family in our HTML. */
  public static final String NAME = "Thwartwise Page";

  private final int weight;
  private final String file;

  Typeface(int weight, String file) {
    this.weight = weight;
    this.file = file;
  }

  int weight() {
    return weight;
  }

  InputStream open() {
    return Typeface.class.getResourceAsStream("/thwartwise/fonts/" + file);
  }

  /** The parsed font; parsed once. */
  TrueTypeFont font() {
    return (this == REGULAR ? Parsed.REGULAR : Parsed.BOLD);
  }

  /** Whether there is a glyph for the letter in every weight. */
  static boolean has(int letter) {
    return has(Parsed.REGULAR_LETTERS, letter) && has(Parsed.BOLD_LETTERS, letter);
  }

  private static boolean has(CmapLookup letters, int letter) {
    return letters.getGlyphId(letter) != 0;
  }

  private TrueTypeFont parsed() {
    try (InputStream in = open()) {
      return new TTFParser().parse(new RandomAccessReadBuffer(in));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static CmapLookup letters(TrueTypeFont font) {
    try {
      return font.getUnicodeCmapLookup();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Loaded lazily, for the first PDF. */
  private static final class Parsed {
    private static final TrueTypeFont REGULAR = Typeface.REGULAR.parsed();
    private static final TrueTypeFont BOLD = Typeface.BOLD.parsed();
    private static final CmapLookup REGULAR_LETTERS = letters(REGULAR);
    private static final CmapLookup BOLD_LETTERS = letters(BOLD);
  }
}
