package thwartwise.measure;

import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Typed text with the few characters that the readers know: straight quotes, plain blanks, lower
 * case.
 */
final class NormalizedInput {
  /** Longer than any honest measurement; longer text is not examined. */
  private static final int LONGEST = 60;

  private static final Pattern SPACES = Pattern.compile("[\\u00a0\\u2007\\u2009\\u202f\\t]");
  private static final Pattern FEET = Pattern.compile("[\\u2018\\u2019\\u2032`\\u00b4]");
  private static final Pattern INCHES = Pattern.compile("[\\u201c\\u201d\\u2033]|''");
  private static final Pattern MINUS = Pattern.compile("[\\u2212\\u2013]");

  private NormalizedInput() {}

  static boolean isTooLong(String typed) {
    return typed.length() > LONGEST;
  }

  static String of(String typed) {
    String spaced = SPACES.matcher(typed).replaceAll(" ");
    String feet = FEET.matcher(spaced).replaceAll("'");
    String inches = INCHES.matcher(feet).replaceAll("\"");
    String signed = MINUS.matcher(inches).replaceAll("-");
    return fractions(signed).strip().toLowerCase(Locale.ROOT);
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
