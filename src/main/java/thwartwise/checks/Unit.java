package thwartwise.checks;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * The unit in which a finding is shown; the value inside is always SI (metre, kilogram, radian,
 * cubic metre, newton, watt, second, radian per metre, kilogram per cubic metre); a share is a
 * fraction of 1.
 */
public enum Unit {
  METRE("m", "m", 2, 1),
  DEGREE("deg", "degrees", 1, 180 / Math.PI),
  KILOGRAM("kg", "kg", 0, 1),
  LITRE("l", "litres", 1, 1000),
  NEWTON("N", "N", 0, 1),
  WATT("W", "W", 0, 1),
  NEWTON_METRE("Nm", "Nm", 0, 1),
  MINUTE("min", "minutes", 0, 1 / 60.0),
  DAY("d", "days", 0, 1 / 86_400.0),
  MILLIMETRE("mm", "mm", 0, 1000),
  PERCENT("%", "%", 0, 100),
  SEAT("seats", "seats", 0, 1),
  DEGREE_PER_METRE("deg/m", "degrees a metre", 1, 180 / Math.PI),
  KILOGRAM_PER_CUBIC_METRE("kg/m3", "kg per cubic metre", 0, 1);

  // A limit such as 0.15 is not exact in binary and would round down to 0.14.
  private static final double BINARY = 1e-9;

  private final String symbol;
  private final String word;
  private final int decimals;
  private final double perSi;

  Unit(String symbol, String word, int decimals, double perSi) {
    this.symbol = symbol;
    this.word = word;
    this.decimals = decimals;
    this.perSi = perSi;
  }

  public String symbol() {
    return symbol;
  }

  /** The word after a figure in a sentence. */
  public String word() {
    return word;
  }

  /** The word after the figure 1. */
  public String oneWord() {
    return switch (this) {
      case DEGREE -> "degree";
      case LITRE -> "litre";
      case MINUTE -> "minute";
      case DAY -> "day";
      case SEAT -> "seat";
      default -> word;
    };
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
