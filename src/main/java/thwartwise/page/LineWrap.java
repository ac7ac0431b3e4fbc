package thwartwise.page;

import java.util.ArrayList;
import java.util.List;
import thwartwise.measure.PrintableText;
import thwartwise.measure.UnitFormat;

/**
 * Breaks text into lines of a given width. Every word of a text page passes through it, so
 * unprintable characters are neutralised here.
 */
public final class LineWrap {
  private final String hanging;
  private final int width;
  private final List<String> lines = new ArrayList<>();
  private StringBuilder line;

  /** The width of the line so far. */
  private int filled;

  private boolean empty = true;

  private LineWrap(String first, String hanging, int width) {
    this.hanging = hanging;
    this.width = width;
    this.line = new StringBuilder(first);
    this.filled = columns(first);
  }

  /**
   * @param first the beginning of the first line
   * @param hanging the beginning of every further line
   * @param width in columns
   */
  public static List<String> lines(String text, String first, String hanging, int width) {
    LineWrap wrap = new LineWrap(first, hanging, width);
    // A tab or line end between words counts as a blank.
    for (String word : text.strip().split("\\s+")) {
      wrap.add(PrintableText.of(word.replace(UnitFormat.TIED, " ")));
    }
    wrap.lines.add(wrap.line.toString());
    return wrap.lines;
  }

  private void add(String word) {
    if (!empty && filled + 1 + columns(word) > width) {
      next();
    }
    if (!empty) {
      line.append(' ');
      filled++;
    }
    word.codePoints().forEach(this::addLetter);
    empty = false;
  }

  /** Adds a letter; a word longer than a line is broken between two letters. */
  private void addLetter(int letter) {
    int columns = columns(letter);
    if (filled + columns > width) {
      next();
    }
    line.appendCodePoint(letter);
    filled += columns;
  }

  private void next() {
    lines.add(line.toString().stripTrailing());
    line = new StringBuilder(hanging);
    filled = columns(hanging);
    empty = true;
  }

  /** The width on a terminal; wide letters take two columns. */
  public static int columns(CharSequence text) {
    return text.codePoints().map(LineWrap::columns).sum();
  }

  private static int columns(int letter) {
    // East Asian scripts and pictographs are two columns wide.
    boolean wide =
        letter >= 0x1100 && letter <= 0x115F
            || letter >= 0x2E80 && letter <= 0xD7A3
            || letter >= 0xF900 && letter <= 0xFAFF
            || letter >= 0xFE30 && letter <= 0xFE6F
            || letter >= 0xFF00 && letter <= 0xFF60
            || letter >= 0x1F300;
    return wide ? 2 : 1;
  }
}
