package thwartwise.checks;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * The unit in which a finding is shown; the value inside is always SI (metre, kilogram, radian,
 * cubic metre, radian per metre), a share as a fraction of one.
 */
public enum Unit {
  METRE("m", 2),
  DEGREE("deg", 1),
  KILOGRAM("kg", 0),
  LITRE("l", 1),
  PERCENT("%", 0),
  DEGREE_PER_METRE("deg/m", 1);

  // A limit such as 0.15 is not exact in binary; without this it would round to 0.14.
  private static final double BINARY = 1e-9;

  private final String symbol;
  private final int decimals;

  Unit(String symbol, int decimals) {
    this.symbol = symbol;
    this.decimals = decimals;
  }

  public String symbol() {
    return symbol;
  }

  /** From SI to the shown unit. */
  public double shown(double si) {
    return switch (this) {
      case DEGREE, DEGREE_PER_METRE -> Math.toDegrees(si);
      case LITRE -> 1000 * si;
      case PERCENT -> 100 * si;
      case METRE, KILOGRAM -> si;
    };
  }

  /** A figure in the shown unit, rounded down: what the boat has, what is allowed. */
  public String down(double shown) {
    return rounded(shown + BINARY, RoundingMode.FLOOR);
  }

  /** A figure in the shown unit, rounded up: what is needed, what must not grow. */
  public String up(double shown) {
    return rounded(shown - BINARY, RoundingMode.CEILING);
  }

  private String rounded(double shown, RoundingMode mode) {
    return BigDecimal.valueOf(shown).setScale(decimals, mode).toPlainString();
  }
}
