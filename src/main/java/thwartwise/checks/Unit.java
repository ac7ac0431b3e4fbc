package thwartwise.checks;

/**
 * The unit in which a finding is shown; the value inside is always SI (metre, kilogram, radian).
 */
public enum Unit {
  METRE("m"),
  DEGREE("deg"),
  KILOGRAM("kg");

  private final String symbol;

  Unit(String symbol) {
    this.symbol = symbol;
  }

  public String symbol() {
    return symbol;
  }

  /** From SI to the shown unit. */
  public double shown(double si) {
    return this == DEGREE ? Math.toDegrees(si) : si;
  }
}
