package thwartwise.measure;

/**
 * SI values as a reader of one system of units says them, each rounded to a named side: what the
 * boat has rounds down, what it needs rounds up. Figure and unit are kept on one line.
 *
 * <p>Pound 0.45359237 kg, foot 0.3048 m, US gallon 231 cubic inches, horsepower 550 foot pounds a
 * second (exact by definition, NIST SP 811 appendix B, FROM MEMORY).
 */
public record UnitFormat(UnitSystem system) {
  private static final String TIED = "\u00a0";
  private static final double POUND = 0.45359237;
  private static final double INCH = 0.0254;
  private static final double GALLON = 231 * INCH * INCH * INCH;
  private static final double LITRE = 0.001;
  private static final double GRAVITY = 9.80665;
  private static final double POUND_FOOT = POUND * GRAVITY * 12 * INCH;
  private static final double HORSEPOWER = 550 * POUND_FOOT;
  private static final double MILE_AN_HOUR = 5280 * 12 * INCH / 3600;
  private static final int INCHES_IN_A_FOOT = 12;

  /** The side a figure rounds to. */
  public enum Side {
    DOWN,
    UP;

    String rounded(double value, int decimals) {
      return this == DOWN ? Rounding.down(value, decimals) : Rounding.up(value, decimals);
    }
  }

  /** Whole kilograms or pounds. */
  public String mass(double kilograms, Side side) {
    return system.isMetric()
        ? side.rounded(kilograms, 0) + TIED + "kg"
        : side.rounded(kilograms / POUND, 0) + TIED + "lb";
  }

  /** A height over the water and the like: whole centimetres or inches. */
  public String height(double metres, Side side) {
    return system.isMetric()
        ? side.rounded(metres, 2) + TIED + "m"
        : inches(side.rounded(metres / INCH, 0));
  }

  /** "1 ft 4 in", below a foot "4 in". */
  private static String inches(String whole) {
    if (!whole.matches("-?\\d+")) {
      return whole + TIED + "in";
    }
    int all = Math.abs(Integer.parseInt(whole));
    String sign = whole.startsWith("-") && all > 0 ? "-" : "";
    int feet = all / INCHES_IN_A_FOOT;
    String rest = all % INCHES_IN_A_FOOT + TIED + "in";
    return sign + (feet == 0 ? rest : feet + TIED + "ft" + TIED + rest);
  }

  /** Whole litres or US gallons. */
  public String volume(double cubicMetres, Side side) {
    return system.isMetric()
        ? side.rounded(cubicMetres / LITRE, 0) + TIED + "litres"
        : side.rounded(cubicMetres / GALLON, 0) + TIED + "US gallons";
  }

  /** Whole newton metres or pound feet. */
  public String moment(double newtonMetres, Side side) {
    return system.isMetric()
        ? side.rounded(newtonMetres, 0) + TIED + "Nm"
        : side.rounded(newtonMetres / POUND_FOOT, 0) + TIED + "lb ft";
  }

  /** Whole watts, or tenths of a horsepower. */
  public String power(double watts, Side side) {
    return system.isMetric()
        ? side.rounded(watts, 0) + TIED + "W"
        : side.rounded(watts / HORSEPOWER, 1) + TIED + "hp";
  }

  /** Whole newtons or pounds of force. */
  public String force(double newtons, Side side) {
    return system.isMetric()
        ? side.rounded(newtons, 0) + TIED + "N"
        : side.rounded(newtons / (POUND * GRAVITY), 0) + TIED + "lb of pull";
  }

  /** Tenths of metres a second, or whole miles an hour. */
  public String speed(double metresASecond, Side side) {
    return system.isMetric()
        ? side.rounded(metresASecond, 1) + TIED + "m/s"
        : side.rounded(metresASecond / MILE_AN_HOUR, 0) + TIED + "mph";
  }

  /** Whole degrees of that scale of temperature. */
  public String temperature(double celsius, Side side) {
    return system.isMetric()
        ? side.rounded(celsius, 0) + TIED + "°C"
        : side.rounded(celsius * 9 / 5 + 32, 0) + TIED + "°F";
  }
}
