package thwartwise.checks;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * The unit in which a finding is shown; the value inside is always SI (metre, kilogram, radian,
 * cubic metre, newton, second).
 */
public enum Unit {
  METRE("m", 2, 1),
  DEGREE("deg", 1, 180 / Math.PI),
  KILOGRAM("kg", 0, 1),
  LITRE("l", 1, 1000),
  NEWTON("N", 0, 1),
  NEWTON_METRE("Nm", 0, 1),
  MINUTE("min", 0, 1 / 60.0),
  MILLIMETRE("mm", 0, 1000);

  // A limit such as 0.15 is not exact in binary; without this it would round to 0.14.
  private static final double BINARY = 1e-9;

  private final String symbol;
  private final int decimals;
  private final double perSi;

  Unit(String symbol, int decimals, double perSi) {
    this.symbol = symbol;
    this.decimals = decimals;
    this.perSi = perSi;
  }

  public String symbol() {
    return symbol;
  }

  public int decimals() {
    return decimals;
  }

  /** From SI to the shown unit. */
  public double shown(double si) {
    return si * perSi;
  }

  /** From the shown unit to SI. */
  public double si(double shown) {
    return shown / perSi;
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
