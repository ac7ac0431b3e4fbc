package thwartwise.measure;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.function.Supplier;

/**
 * SI values in the units of a reader, each rounded to a named side: what the boat has rounds down,
 * what it needs rounds up. Figure and unit are kept on one line.
 *
 * <p>Pound 0.45359237 kg, foot 0.3048 m, US gallon 231 cubic inches, horsepower 550 foot pounds a
 * second (exact by definition, NIST SP 811 appendix B, FROM MEMORY).
 */
public record UnitFormat(UnitSystem system, int finer) {
  public static final UnitFormat METRIC = new UnitFormat(UnitSystem.METRIC);

  /** A blank at which no line is broken, so that a figure keeps its unit next to it. */
  public static final String TIED = "\u00a0";

  /** kg */
  public static final double POUND = 0.45359237;

  private static final double INCH = 0.0254;
  private static final double GALLON = 231 * INCH * INCH * INCH;
  private static final int OUNCES_IN_A_GALLON = 128;
  private static final double FOOT = 12 * INCH;
  private static final double LITRE = 0.001;
  private static final double GRAVITY = 9.80665;
  private static final double POUND_FOOT = POUND * GRAVITY * 12 * INCH;

  /** W */
  public static final double HORSEPOWER = 550 * POUND_FOOT;

  private static final double MILE_AN_HOUR = 5280 * 12 * INCH / 3600;
  private static final int INCHES_IN_A_FOOT = 12;

  /** The side to which a figure is rounded. */
  public enum Side {
    DOWN,
    UP;

    String rounded(double value, int decimals) {
      return this == DOWN ? Rounding.down(value, decimals) : Rounding.up(value, decimals);
    }
  }

  public UnitFormat(UnitSystem system) {
    this(system, 0);
  }

  /**
   * A copy with one more decimal, for two different figures that would look alike. Only a figure
   * that is rounded to a side gets one more.
   */
  public UnitFormat oneStepFiner() {
    return new UnitFormat(system, finer + 1);
  }

  private String rounded(double value, int decimals, Side side) {
    return side.rounded(value, decimals + finer);
  }

  /** A mass: whole kilograms or pounds. */
  public String mass(double kilograms, Side side) {
    return system.isMetric()
        ? rounded(kilograms, 0, side) + TIED + "kg"
        : rounded(kilograms / POUND, 0, side) + TIED + "lb";
  }

  /** The same mass in the other system. */
  public UnitFormat other() {
    return new UnitFormat(system.isMetric() ? UnitSystem.FEET_INCHES_POUNDS : UnitSystem.METRIC);
  }

  /** A mass in whole kilograms and pounds, the reader's own first, for other readers. */
  public String masses(double kilograms, Side side) {
    return mass(kilograms, side) + ", " + other().mass(kilograms, side);
  }

  /** A height above the water and the like: whole centimetres or inches. */
  public String height(double metres, Side side) {
    return system.isMetric()
        ? rounded(metres, 2, side) + TIED + "m"
        : inches(rounded(metres / INCH, 0, side));
  }

  /** "1 ft 4 in", below a foot "4 in"; decimals stay with the inches. */
  private static String inches(String rounded) {
    if (!rounded.matches("-?\\d+(?:\\.\\d+)?")) {
      return rounded + TIED + "in";
    }
    BigDecimal all = new BigDecimal(rounded).abs();
    String sign = rounded.startsWith("-") && all.signum() > 0 ? "-" : "";
    BigDecimal[] feetAndInches = all.divideAndRemainder(BigDecimal.valueOf(INCHES_IN_A_FOOT));
    String whole = feetAndInches[0].toBigInteger() + TIED + "ft";
    String part = feetAndInches[1].toPlainString() + TIED + "in";
    if (feetAndInches[0].signum() == 0) {
      return sign + part;
    }
    return sign + (feetAndInches[1].signum() == 0 ? whole : whole + TIED + part);
  }

  /** A volume: whole litres or US gallons. */
  public String volume(double cubicMetres, Side side) {
    return system.isMetric()
        ? rounded(cubicMetres / LITRE, 0, side) + TIED + "litres"
        : rounded(cubicMetres / GALLON, 0, side) + TIED + "US gallons";
  }

  /** A volume within a sentence, which may break before the unit. */
  public String litres(double cubicMetres, Side side) {
    double metric = cubicMetres * 1000;
    return either(
        String.format(
            Locale.ROOT, "%.0f litres", side == Side.UP ? Math.ceil(metric) : Math.floor(metric)),
        () -> volume(cubicMetres, side));
  }

  /** A moment: whole newton metres or pound feet. */
  public String moment(double newtonMetres, Side side) {
    return system.isMetric()
        ? rounded(newtonMetres, 0, side) + TIED + "Nm"
        : rounded(newtonMetres / POUND_FOOT, 0, side) + TIED + "lb ft";
  }

  /** A power: whole watts, or tenths of a horsepower. */
  public String power(double watts, Side side) {
    return system.isMetric()
        ? rounded(watts, 0, side) + TIED + "W"
        : rounded(watts / HORSEPOWER, 1, side) + TIED + "hp";
  }

  /** A force: whole newtons or pounds of force. */
  public String force(double newtons, Side side) {
    return system.isMetric()
        ? rounded(newtons, 0, side) + TIED + "N"
        : rounded(newtons / (POUND * GRAVITY), 0, side) + TIED + "lb of pull";
  }

  /** A wind speed: tenths of metres a second, or whole miles an hour. */
  public String speed(double metresASecond, Side side) {
    return system.isMetric()
        ? rounded(metresASecond, 1, side) + TIED + "m/s"
        : rounded(metresASecond / MILE_AN_HOUR, 0, side) + TIED + "mph";
  }

  /** The speed of a small boat or a current: tenths of metres a second or of miles an hour. */
  public String pace(double metresASecond, Side side) {
    return system.isMetric()
        ? rounded(metresASecond, 1, side) + TIED + "m/s"
        : rounded(metresASecond / MILE_AN_HOUR, 1, side) + TIED + "mph";
  }

  /** A temperature in whole degrees of the reader's scale. */
  public String temperature(double celsius, Side side) {
    return system.isMetric()
        ? rounded(celsius, 0, side) + TIED + "°C"
        : rounded(celsius * 9 / 5 + 32, 0, side) + TIED + "°F";
  }

  /** A measured length, as the tape gave it: sixteenths of an inch at the finest. */
  public String tape(double metres) {
    return system.isMetric() ? Rounding.plain(metres) + TIED + "m" : tied(sixteenths(metres));
  }

  /** A measured mass, as the scales gave it: tenths of a pound at the finest. */
  public String scales(double kilograms) {
    return system.isMetric()
        ? Rounding.plain(kilograms) + TIED + "kg"
        : tied(tenthsOfPounds(kilograms));
  }

  /** A measured volume, as the jug gave it: tenths of a US gallon at the finest, rounded down. */
  public String jug(double cubicMetres) {
    return system.isMetric()
        ? Rounding.plain(cubicMetres / LITRE) + TIED + "litres"
        : Rounding.plain(tenths(cubicMetres / GALLON)) + TIED + "US gallons";
  }

  /** Water that leaked in, rounded up: tenths of a litre, or whole US fluid ounces. */
  public String leaked(double cubicMetres) {
    return system.isMetric()
        ? Rounding.up(cubicMetres / LITRE, 1) + TIED + "l"
        : Rounding.up(cubicMetres / GALLON * OUNCES_IN_A_GALLON, 0) + TIED + "US fl oz";
  }

  private static double tenths(double value) {
    return Double.isFinite(value) ? Double.parseDouble(Rounding.down(value, 1)) : value;
  }

  /** The thickness of a shell; below the resolution of a tape in hundredths of an inch. */
  public String thickness(double metres) {
    if (system.isMetric()) {
      return Rounding.plain(metres * 1000) + TIED + "mm";
    }
    return metres < INCH / 8 ? Rounding.up(metres / INCH, 2) + TIED + "in" : tape(metres);
  }

  /** The diameter of a hole: whole millimetres, rounded up, or what a tape shows. */
  public String hole(double metres) {
    return system.isMetric() ? Rounding.up(metres * 1000, 0) + TIED + "mm" : tape(metres);
  }

  /** A position to mark with a tape: centimetres or quarter inches. */
  public String mark(double metres) {
    return system.isMetric()
        ? String.format(Locale.ROOT, "%.2f", metres) + TIED + "m"
        : tape(Math.rint(metres / INCH * 4) / 4 * INCH);
  }

  /** Rainfall: whole millimetres or inches. */
  public String rain(double metres, Side side) {
    return system.isMetric()
        ? rounded(metres * 1000, 0, side) + TIED + "mm"
        : rounded(metres / INCH, 0, side) + TIED + "in";
  }

  /** A distance over the water: whole metres or yards. */
  public String distance(double metres, Side side) {
    return system.isMetric()
        ? rounded(metres, 0, side) + TIED + "m"
        : yards(metres / (3 * FOOT), side) + TIED + "yards";
  }

  /** Paced yards: to fifty where there are hundreds, otherwise to five. */
  private static String yards(double exact, Side side) {
    int step = exact >= 200 ? 50 : exact >= 20 ? 5 : 1;
    return Double.isFinite(exact)
        ? Integer.toString(step * Integer.parseInt(side.rounded(exact / step, 0)))
        : side.rounded(exact, 0);
  }

  /** The twist of a panel: tenths of a degree a metre or a foot. */
  public String twist(double radiansAMetre, Side side) {
    double degrees = Math.toDegrees(radiansAMetre);
    return system.isMetric()
        ? rounded(degrees, 1, side) + TIED + "degrees a metre"
        : rounded(degrees * FOOT, 1, side) + TIED + "degrees a foot";
  }

  /** An area: tenths of a square metre, or whole square feet. */
  public String area(double squareMetres, Side side) {
    return system.isMetric()
        ? rounded(squareMetres, 1, side) + TIED + "square metres"
        : rounded(squareMetres / (FOOT * FOOT), 0, side) + TIED + "square feet";
  }

  /** The metric words that reports have always had, or the reader's own. */
  public String either(String metric, Supplier<String> own) {
    return system.isMetric() ? metric : own.get();
  }

  /** A length written into a picture, rounded down: whole centimetres or inches. */
  public String label(double metres) {
    return system.isMetric()
        ? Rounding.down(100 * metres, 0) + TIED + "cm"
        : height(metres, Side.DOWN);
  }

  /** The unit of a moment, N·m. */
  public double momentUnit() {
    return system.isMetric() ? 1 : POUND_FOOT;
  }

  /** The distance of a shift: whole centimetres or inches, to the nearest. */
  public String step(double metres) {
    return system.isMetric()
        ? String.format(Locale.ROOT, "%.0f", Math.rint(100 * metres)) + TIED + "cm"
        : tape(Math.rint(metres / INCH) * INCH);
  }

  /** The density of the shell. */
  public String density(double kilogramsPerCubicMetre) {
    return system.isMetric()
        ? Rounding.plain(kilogramsPerCubicMetre) + TIED + "kg/m3"
        : Rounding.up(kilogramsPerCubicMetre * FOOT * FOOT * FOOT / POUND, 1)
            + TIED
            + "lb per cubic foot";
  }

  /** The power of a motor by its plate: kilowatts, or tenths of a horsepower. */
  public String motor(double watts) {
    return system.isMetric() ? Rounding.plain(watts / 1000) + TIED + "kW" : power(watts, Side.UP);
  }

  private static String sixteenths(double metres) {
    return Double.isFinite(metres)
        ? QuantityText.feet(metres).replace(" ft 0 in", " ft")
        : Rounding.plain(metres) + " in";
  }

  private static String tenthsOfPounds(double kilograms) {
    return Double.isFinite(kilograms)
        ? QuantityText.pounds(kilograms)
        : Rounding.plain(kilograms) + " lb";
  }

  private static String tied(String words) {
    return words.replace(" ", TIED);
  }
}
