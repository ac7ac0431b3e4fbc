package thwartwise.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Two bounds as a person says them: {@code between 5 and 26 ft}. They are rounded inward, so that
 * every value between them fits.
 *
 * @param least SI
 * @param most SI
 */
public record RoundBounds(UnitSystem system, Dimension dimension, double least, double most) {
  /** A least value below this share of the greatest is shown as nothing. */
  private static final double NEXT_TO_NOTHING = 1.0 / 400;

  private static final double INCH = 0.0254;
  private static final double DAY = 86_400;

  /** The allowance for numerical error before rounding. */
  private static final double NOISE = 1e-6;

  /** Completes "is not …". */
  public String words() {
    if (least > 0 && least < NEXT_TO_NOTHING * most) {
      return "more than nothing and at most " + with(most, RoundingMode.FLOOR);
    }
    Said from = said(least, RoundingMode.CEILING);
    Said to = said(most, RoundingMode.FLOOR);
    String first = from.unit().equals(to.unit()) || least == 0 ? from.figure() : from.whole();
    return "between " + first + " and " + to.whole();
  }

  private String with(double si, RoundingMode way) {
    return said(si, way).whole();
  }

  private record Said(String figure, String unit) {
    String whole() {
      return unit.isEmpty() ? figure : figure + " " + unit;
    }
  }

  private Said said(double si, RoundingMode way) {
    return switch (dimension) {
      case LENGTH -> system.isMetric() ? metric(si, way) : feet(si, way);
      case MASS -> system.isMetric() ? coarse(si, "kg", way) : coarse(si / pound(), "lb", way);
      case VOLUME -> coarse(si * 1000, "l", way);
      case POWER ->
          system.isMetric()
              ? coarse(si / 1000, "kW", way)
              : coarse(si / TypedUnit.HORSEPOWER.size().doubleValue(), "hp", way);
      case TIME -> si > 2 * DAY ? coarse(si / DAY, "days", way) : coarse(si / 60, "minutes", way);
    };
  }

  private static double pound() {
    return TypedUnit.POUND.size().doubleValue();
  }

  /** Below a hand's breadth in millimetres, otherwise in metres to the centimetre. */
  private Said metric(double si, RoundingMode way) {
    return most < 0.1 && si != 0
        ? new Said(stepped(si * 1000, 0.1, way), "mm")
        : new Said(stepped(si, 0.01, way), "m");
  }

  private Said feet(double si, RoundingMode way) {
    double inches = si / INCH;
    double size = Math.abs(inches);
    if (isWhole(2 * inches)) {
      return inFeet(Math.round(2 * inches) / 2.0);
    }
    double step = size >= 48 ? 12 : size >= 12 ? 1 : size >= 1 ? 0.25 : 1.0 / 64;
    return inFeet(Double.parseDouble(stepped(inches, step, way)));
  }

  private static boolean isWhole(double figure) {
    return Math.abs(figure - Math.rint(figure)) < NOISE;
  }

  /** Feet alone where nothing remains, inches alone below a foot. */
  private static Said inFeet(double inches) {
    String sign = inches < 0 ? "-" : "";
    double size = Math.abs(inches);
    long feet = (long) Math.floor(size / 12 + NOISE);
    double rest = size - 12 * feet;
    if (rest < NOISE) {
      return new Said(sign + feet, "ft");
    }
    String left = fraction(rest);
    return feet == 0 ? new Said(sign + left, "in") : new Said(sign + feet + " ft " + left, "in");
  }

  private static String fraction(double inches) {
    long sixtyFourths = Math.round(inches * 64);
    long whole = sixtyFourths / 64;
    long over = sixtyFourths % 64;
    if (over == 0) {
      return Long.toString(whole);
    }
    long under = 64;
    while (over % 2 == 0) {
      over /= 2;
      under /= 2;
    }
    return (whole == 0 ? "" : whole + " ") + over + "/" + under;
  }

  /** To two figures, or three from a hundred on. */
  private static Said coarse(double figure, String unit, RoundingMode way) {
    double size = Math.abs(figure);
    double step = size >= 1000 ? 10 : size >= 10 ? 1 : size >= 1 ? 0.1 : 0.01;
    return new Said(stepped(figure, step, way), unit);
  }

  private static String stepped(double figure, double step, RoundingMode way) {
    double steps = figure / step;
    BigDecimal whole =
        isWhole(steps)
            ? BigDecimal.valueOf(Math.round(steps))
            : new BigDecimal(steps).setScale(0, way);
    BigDecimal rounded = whole.multiply(BigDecimal.valueOf(step)).stripTrailingZeros();
    return rounded.signum() == 0 ? "0" : rounded.toPlainString();
  }
}
