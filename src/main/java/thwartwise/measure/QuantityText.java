package thwartwise.measure;

/**
 * SI values in words, to the nearest step that a tape or a scale shows; independent of the locale.
 */
public final class QuantityText {
  private static final double FOOT = 0.3048;
  private static final int STEPS_IN_AN_INCH = 16;
  private static final int INCHES_IN_A_FOOT = 12;
  private static final int POUNDS_IN_A_STONE = 14;

  /** From here on nobody counts tenths of a litre. */
  private static final double BUCKETS = 20;

  private QuantityText() {}

  /**
   * The value in the family of the unit in which it was typed, and in brackets in the unit in
   * force, if that is another one.
   */
  static String both(double si, Dimension dimension, TypedUnit unit, boolean metricInForce) {
    String metric = metric(si, dimension);
    if (dimension == Dimension.TIME || (unit.isMetric() && metricInForce)) {
      return metric;
    }
    if (!unit.isMetric()) {
      return customary(si, unit) + (metricInForce ? " (" + metric + ")" : "");
    }
    return switch (dimension) {
      case LENGTH -> metric + " (" + feet(si) + ")";
      case MASS -> metric + " (" + customary(si, TypedUnit.POUND) + ")";
      default -> metric;
    };
  }

  static String metric(double si, Dimension dimension) {
    return switch (dimension) {
      case LENGTH -> metres(si);
      case MASS -> Rounding.nearest(si, 2) + " kg";
      case VOLUME -> Rounding.nearest(si * 1000, 2) + " l";
      case POWER ->
          Math.abs(si) < 1000
              ? Rounding.nearest(si, 0) + " W"
              : Rounding.nearest(si / 1000, 2) + " kW";
      case TIME -> Rounding.nearest(si / 60, 1) + " min";
    };
  }

  /** Computed litres, rounded down to what a jug or a bucket shows. */
  public static String litres(double cubicMetres) {
    double litres = cubicMetres * 1000;
    double size = Math.abs(litres);
    int decimals = size >= BUCKETS ? 0 : size >= 1 ? 1 : 2;
    return Rounding.plain(Double.parseDouble(Rounding.down(litres, decimals))) + " l";
  }

  /** A length below a hand's breadth in millimetres, so that a thickness is not 0.00 m. */
  private static String metres(double si) {
    return si != 0 && Math.abs(si) < 0.0995
        ? Rounding.nearest(si * 1000, 1) + " mm"
        : hundredths(si) + " m";
  }

  private static String customary(double si, TypedUnit unit) {
    return switch (unit) {
      case FOOT, INCH -> feet(si);
      case STONE -> stones(si);
      case POUND, OUNCE -> pounds(si);
      default -> Rounding.nearest(si / unit.size().doubleValue(), 2) + " " + unit.symbol();
    };
  }

  static String feet(double si) {
    long steps = Math.round(Math.abs(si) / FOOT * INCHES_IN_A_FOOT * STEPS_IN_AN_INCH);
    long inches = steps / STEPS_IN_AN_INCH;
    String sign = si < 0 && steps > 0 ? "-" : "";
    String rest = inches(inches % INCHES_IN_A_FOOT, steps % STEPS_IN_AN_INCH);
    long feet = inches / INCHES_IN_A_FOOT;
    return sign + (feet == 0 ? rest : feet + " ft " + rest);
  }

  private static String inches(long whole, long steps) {
    if (steps == 0) {
      return whole + " in";
    }
    long common = Long.lowestOneBit(steps);
    String fraction = steps / common + "/" + STEPS_IN_AN_INCH / common;
    return (whole == 0 ? fraction : whole + " " + fraction) + " in";
  }

  static String pounds(double si) {
    return Rounding.nearest(si / TypedUnit.POUND.size().doubleValue(), 1) + " lb";
  }

  private static String stones(double si) {
    // Tenths of a pound, so that 13.96 lb becomes the next stone and not "14 lb".
    long tenths = Math.round(si / TypedUnit.POUND.size().doubleValue() * 10);
    long stone = tenths / (POUNDS_IN_A_STONE * 10);
    return stone + " st " + Rounding.nearest(tenths % (POUNDS_IN_A_STONE * 10) / 10.0, 1) + " lb";
  }

  private static String hundredths(double value) {
    String shown = Rounding.nearest(value, 3);
    int point = shown.indexOf('.');
    if (point < 0) {
      return shown + ".00";
    }
    return point == shown.length() - 2 ? shown + "0" : shown;
  }

  /** "one person", "3 people". */
  public static String people(int count) {
    return count == 1 ? "one person" : count + " people";
  }
}
