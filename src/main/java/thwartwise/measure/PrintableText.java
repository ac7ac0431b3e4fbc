package thwartwise.measure;

import java.util.OptionalInt;

/**
 * What may be shown of words somebody typed. A name can carry line ends, terminal escapes or marks
 * that turn the writing direction; printed as they are they could hide or forge a line of the page.
 */
public final class PrintableText {
  private static final int LONGEST_QUOTE = 60;
  private static final int ZERO_WIDTH_NON_JOINER = 0x200C;
  private static final int ZERO_WIDTH_JOINER = 0x200D;

  private PrintableText() {}

  /** The same words with every character that cannot be printed shown as a question mark. */
  public static String of(String typed) {
    StringBuilder shown = new StringBuilder();
    typed.codePoints().map(c -> prints(c) ? c : '?').forEach(shown::appendCodePoint);
    return shown.toString();
  }

  /** The words in quotes, cut short when they are long. */
  public static String quoted(String typed) {
    String shown = of(typed);
    if (shown.codePointCount(0, shown.length()) <= LONGEST_QUOTE) {
      return '"' + shown + '"';
    }
    return '"' + shown.substring(0, shown.offsetByCodePoints(0, LONGEST_QUOTE)) + "…\"";
  }

  /** The first character that cannot be printed. */
  public static OptionalInt firstUnprintable(String typed) {
    return typed.codePoints().filter(c -> !prints(c)).findFirst();
  }

  private static boolean prints(int c) {
    return switch (Character.getType(c)) {
      case Character.CONTROL,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR,
          Character.SURROGATE,
          Character.UNASSIGNED ->
          false;
      // The joiners are part of ordinary spelling and of pictures; the rest of their kind are not.
      case Character.FORMAT -> c == ZERO_WIDTH_JOINER || c == ZERO_WIDTH_NON_JOINER;
      default -> true;
    };
  }
}
