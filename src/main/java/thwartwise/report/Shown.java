package thwartwise.report;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Figures on the page, rounded to the side that flatters nobody: what the boat has rounds down,
 * what it needs rounds up, what is allowed rounds down. Digits and point are the same in every
 * country.
 */
final class Shown {
  /** A blank at which no line is broken, so that a figure keeps its unit beside it. */
  static final char TIED = '\u00a0';

  // Far below anything measured; keeps a degree that went to radians and back a whole degree.
  private static final int NOISE_DECIMALS = 9;
  private static final String UNKNOWN = "an unknown number of";

  private Shown() {}

  static String down(double value, int decimals) {
    return rounded(value, decimals, RoundingMode.FLOOR);
  }

  static String up(double value, int decimals) {
    return rounded(value, decimals, RoundingMode.CEILING);
  }

  /** A measured figure, as it was measured. */
  static String plain(double value) {
    if (!Double.isFinite(value)) {
      return UNKNOWN;
    }
    BigDecimal exact = new BigDecimal(value).setScale(NOISE_DECIMALS, RoundingMode.HALF_EVEN);
    return exact.signum() == 0 ? "0" : exact.stripTrailingZeros().toPlainString();
  }

  private static String rounded(double value, int decimals, RoundingMode side) {
    if (!Double.isFinite(value)) {
      return UNKNOWN;
    }
    return new BigDecimal(value)
        .setScale(NOISE_DECIMALS, RoundingMode.HALF_EVEN)
        .setScale(decimals, side)
        .toPlainString();
  }

  /** A figure and its unit, kept on one line. */
  static String with(String figure, String unit) {
    return figure + TIED + unit;
  }

  static String people(int count) {
    String[] words = {
      "nobody",
      "one person",
      "two people",
      "three people",
      "four people",
      "five people",
      "six people",
      "seven people",
      "eight people"
    };
    return count >= 0 && count < words.length ? words[count] : count + " people";
  }

  static String adults(int count) {
    String[] words = {"no adult", "one adult", "two adults", "three adults", "four adults"};
    return count >= 0 && count < words.length ? words[count] : count + " adults";
  }
}
