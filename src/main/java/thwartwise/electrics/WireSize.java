package thwartwise.electrics;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/** Sizes in which wire is sold, in square millimetres and in American gauge (AWG). */
public final class WireSize {
  private static final double SQUARE_MILLIMETRE = 1e-6;
  private static final double HAIR = 1 + 1e-9;
  private static final List<Double> METRIC =
      List.of(0.75, 1.0, 1.5, 2.5, 4.0, 6.0, 10.0, 16.0, 25.0, 35.0, 50.0, 70.0);
  private static final int THINNEST = 18;

  /** 1/0; thicker gauges have no plain number. */
  private static final int THICKEST = 0;

  private WireSize() {}

  /** The copper of a gauge, m²: 0.127 mm times the 39th root of 92 for each step from 36. */
  public static double ofGauge(int gauge) {
    double diameter = 0.127e-3 * Math.pow(92, (36 - gauge) / 39.0);
    return Math.PI / 4 * diameter * diameter;
  }

  /** The thinnest metric wire of at least that area, m²; NaN when none is sold so thick. */
  public static double metric(double area) {
    return METRIC.stream()
        .flatMapToDouble(DoubleStream::of)
        .map(mm2 -> mm2 * SQUARE_MILLIMETRE)
        .filter(sold -> sold * HAIR >= area)
        .findFirst()
        .orElse(Double.NaN);
  }

  /** The thinnest gauge of at least that area; even numbers are sold. */
  public static OptionalInt gauge(double area) {
    return IntStream.iterate(THINNEST, n -> n >= THICKEST, n -> n - 2)
        .filter(n -> ofGauge(n) * HAIR >= area)
        .findFirst();
  }
}
