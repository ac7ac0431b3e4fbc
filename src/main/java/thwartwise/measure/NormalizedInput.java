package thwartwise.measure;

import java.util.Locale;

/**
 * Typed text with the few characters that the readers know: straight quotes, plain blanks, lower
 * case.
 */
final class NormalizedInput {
  /** Longer than any honest measurement; longer text is not examined. */
  private static final int LONGEST = 60;

  private NormalizedInput() {}

  static boolean isTooLong(String typed) {
    return typed.length() > LONGEST;
  }

  static String of(String typed) {
    StringBuilder plain = new StringBuilder(typed.length());
    for (int i = 0; i < typed.length(); i++) {
      plain.append(plain(typed.charAt(i)));
    }
    return fractions(plain.toString().replace("''", "\"")).strip().toLowerCase(Locale.ROOT);
  }

  private static char plain(char typed) {
    return switch (typed) {
      case '\u00a0', '\u2007', '\u2009', '\u202f', '\t' -> ' ';
      case '\u2018', '\u2019', '\u2032', '`', '\u00b4' -> '\'';
      case '\u201c', '\u201d', '\u2033' -> '"';
      case '\u2212', '\u2013' -> '-';
      default -> typed;
    };
  }

  private static String fractions(String typed) {
    return typed
        .replace('\u2044', '/')
        .replace("½", " 1/2")
        .replace("¼", " 1/4")
        .replace("¾", " 3/4")
        .replace("⅛", " 1/8")
        .replace("⅜", " 3/8")
        .replace("⅝", " 5/8")
        .replace("⅞", " 7/8");
  }
}
