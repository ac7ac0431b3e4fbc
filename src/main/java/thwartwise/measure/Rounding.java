package thwartwise.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Figures rounded to the side that flatters nobody: what the boat has rounds down, what it needs
 * rounds up, what is allowed rounds down. Digits and point are the same in every country.
 */
public final class Rounding {
  // Far below anything measured; it keeps a whole degree whole after conversion to radians and
  // back.
  private static final int NOISE_DECIMALS = 9;
  private static final String UNKNOWN = "an unknown number of";

  private Rounding() {}

  public static String down(double value, int decimals) {
    return rounded(value, decimals, RoundingMode.FLOOR);
  }

  public static String up(double value, int decimals) {
    return rounded(value, decimals, RoundingMode.CEILING);
  }

  /** A measured figure, as it was measured. */
  public static String plain(double value) {
    if (!Double.isFinite(value)) {
      return UNKNOWN;
    }
    BigDecimal exact = withoutNoise(value);
    return exact.signum() == 0 ? "0" : exact.stripTrailingZeros().toPlainString();
  }

  /** A length as it could be typed. */
  public static String metres(double si) {
    return plain(si) + " m";
  }

  /** Whole kilograms as they are shown, as a number. */
  public static double wholeDown(double value) {
    return Double.parseDouble(down(value, 0));
  }

  /** To the nearest, half a step up, without zeros at the end. */
  public static String nearest(double value, int decimals) {
    if (!Double.isFinite(value)) {
      return UNKNOWN;
    }
    BigDecimal near = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    return near.signum() == 0 ? "0" : near.stripTrailingZeros().toPlainString();
  }

  private static String rounded(double value, int decimals, RoundingMode side) {
    return Double.isFinite(value)
        ? withoutNoise(value).setScale(decimals, side).toPlainString()
        : UNKNOWN;
  }

  private static BigDecimal withoutNoise(double value) {
    return new BigDecimal(value).setScale(NOISE_DECIMALS, RoundingMode.HALF_EVEN);
  }
}
