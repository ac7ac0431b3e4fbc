package thwartwise.checks;

/**
 * The unit in which a finding is shown; the value inside is always SI (metre, kilogram, radian,
 * cubic metre).
 */
public enum Unit {
  METRE("m"),
  DEGREE("deg"),
  KILOGRAM("kg"),
  LITRE("l");

  private final String symbol;

  Unit(String symbol) {
    this.symbol = symbol;
  }

  public String symbol() {
    return symbol;
  }

  /** From SI to the shown unit. */
  public double shown(double si) {
    return switch (this) {
      case DEGREE -> Math.toDegrees(si);
      case LITRE -> 1000 * si;
      case METRE, KILOGRAM -> si;
    };
  }
}
