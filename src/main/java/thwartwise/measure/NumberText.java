package thwartwise.measure;

import java.math.BigDecimal;

/** Numbers as a person types them, for messages; never in the style of the local language. */
public final class NumberText {
  private static final double LONGEST_PLAIN = 1e9;
  private static final double SHORTEST_PLAIN = 1e-6;

  private NumberText() {}

  public static String number(double value) {
    double size = Math.abs(value);
    if (size == 0) {
      return "0";
    }
    if (!(size < LONGEST_PLAIN && size >= SHORTEST_PLAIN)) {
      return Double.toString(value);
    }
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }

  /** Moves the decimal point in the digits, so that 86.1 litres remain 86.1 litres. */
  public static double scaled(double value, int tens) {
    return BigDecimal.valueOf(value).scaleByPowerOfTen(tens).doubleValue();
  }
}
