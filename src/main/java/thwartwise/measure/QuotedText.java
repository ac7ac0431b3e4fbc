package thwartwise.measure;

/**
 * Something typed, made fit to stand in a message: at most forty characters, and nothing in it that
 * a terminal would obey.
 */
public final class QuotedText {
  private static final int LONGEST = 40;

  private QuotedText() {}

  /** In double quotes, shortened, harmless. */
  public static String of(String typed) {
    StringBuilder shown = new StringBuilder("\"");
    int left = LONGEST;
    int at = 0;
    while (at < typed.length() && left > 0) {
      int character = typed.codePointAt(at);
      shown.appendCodePoint(isHarmless(character) ? character : '?');
      at += Character.charCount(character);
      left--;
    }
    return shown.append(at < typed.length() ? "…\"" : "\"").toString();
  }

  /** False for controls, escape codes, direction overrides, line breaks and broken surrogates. */
  public static boolean isHarmless(int character) {
    return switch (Character.getType(character)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.PRIVATE_USE,
          Character.UNASSIGNED,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          false;
      default -> true;
    };
  }
}
