package thwartwise.page;

import thwartwise.measure.UnitFormat;

/** Figures on the page: on one line with their unit, and numbers of people in words. */
public final class FigureText {
  private FigureText() {}

  /** A figure and its unit, kept on one line. */
  public static String with(String figure, String unit) {
    return figure + UnitFormat.TIED + unit;
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
