package thwartwise.page;

import thwartwise.measure.Rounding;

/**
 * Figures on the page, rounded to the side that flatters nobody: what the boat has rounds down,
 * what it needs rounds up, what is allowed rounds down. Digits and point are the same in every
 * country.
 */
public final class FigureText {
  /** A blank at which no line is broken, so that a figure keeps its unit beside it. */
  public static final char TIED = '\u00a0';

  private FigureText() {}

  public static String down(double value, int decimals) {
    return Rounding.down(value, decimals);
  }

  public static String up(double value, int decimals) {
    return Rounding.up(value, decimals);
  }

  /** A measured figure, as it was measured. */
  public static String plain(double value) {
    return Rounding.plain(value);
  }

  /** A figure and its unit, kept on one line. */
  public static String with(String figure, String unit) {
    return figure + TIED + unit;
  }

  public static String people(int count) {
    return switch (count) {
      case 0 -> "nobody";
      case 1 -> "one person";
      default -> count(count) + " people";
    };
  }

  /** A number of people, in words up to eight. */
  public static String count(int count) {
    String[] words = {"none", "one", "two", "three", "four", "five", "six", "seven", "eight"};
    return count >= 0 && count < words.length ? words[count] : "" + count;
  }

  public static String adults(int count) {
    String[] words = {"no adult", "one adult", "two adults", "three adults", "four adults"};
    return count >= 0 && count < words.length ? words[count] : count + " adults";
  }
}
