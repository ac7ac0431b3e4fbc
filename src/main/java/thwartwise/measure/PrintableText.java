package thwartwise.measure;

import java.util.OptionalInt;

/**
 * Typed text in a form that is safe to print. A name can contain line ends, terminal escapes or
 * marks that turn the writing direction; printed as they are, they could hide or forge a line of
 * the page.
 */
public final class PrintableText {
  private static final int LONGEST_QUOTE = 60;
  private static final int LONGEST_EXCERPT = 40;
  private static final int ZERO_WIDTH_NON_JOINER = 0x200C;
  private static final int ZERO_WIDTH_JOINER = 0x200D;

  private PrintableText() {}

  /** The same text with every unprintable character shown as a question mark. */
  public static String of(String typed) {
    StringBuilder shown = new StringBuilder();
    typed.codePoints().map(c -> prints(c) ? c : '?').forEach(shown::appendCodePoint);
    return shown.toString();
  }

  /** The text in quotes, cut short when it is long. */
  public static String quoted(String typed) {
    return inQuotes(of(typed), LONGEST_QUOTE);
  }

  /**
   * The beginning of what was typed at a prompt, in quotes: at most forty characters, and none that
   * a terminal would obey.
   */
  public static String excerpt(String typed) {
    StringBuilder shown = new StringBuilder();
    // One more than is shown, so that a cut is noticed.
    typed
        .codePoints()
        .limit(LONGEST_EXCERPT + 1)
        .map(c -> isHarmless(c) ? c : '?')
        .forEach(shown::appendCodePoint);
    return inQuotes(shown.toString(), LONGEST_EXCERPT);
  }

  private static String inQuotes(String shown, int longest) {
    return shown.codePointCount(0, shown.length()) <= longest
        ? '"' + shown + '"'
        : '"' + shown.substring(0, shown.offsetByCodePoints(0, longest)) + "…\"";
  }

  /** False for controls, escape codes, direction overrides, line breaks and broken surrogates. */
  public static boolean isHarmless(int c) {
    int type = Character.getType(c);
    return prints(c) && type != Character.FORMAT && type != Character.PRIVATE_USE;
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
      // Joiners are part of ordinary spelling and of pictographs; other characters of their kind
      // are not.
      case Character.FORMAT -> c == ZERO_WIDTH_JOINER || c == ZERO_WIDTH_NON_JOINER;
      default -> true;
    };
  }
}
