package thwartwise.hull;

import java.util.Arrays;

/**
 * A curve y(x) through measured points that does not overshoot between them.
 *
 * <p>Method: piecewise cubic Hermite. Slopes are those of the parabola through three neighbours, so
 * a parabola is followed exactly, then held to at most three times the lesser neighbouring chord
 * and to zero at a local extreme, which keeps each piece between its ends (Fritsch and Carlson,
 * "Monotone piecewise cubic interpolation", SIAM J. Numer. Anal. 17, 1980; from memory).
 */
final class FairedCurve {
  private final double[] x;
  private final double[] y;

  /** Of each piece at its start and at its end. */
  private final double[] start;

  private final double[] end;

  private FairedCurve(double[] x, double[] y, double[] start, double[] end) {
    this.x = x;
    this.y = y;
    this.start = start;
    this.end = end;
  }

  /** The straight pieces from point to point. */
  static FairedCurve straight(double[] x, double[] y) {
    double[] chord = chords(x, y);
    return new FairedCurve(x.clone(), y.clone(), chord, chord);
  }

  /** Through at least three points, x strictly increasing. */
  static FairedCurve through(double[] x, double[] y) {
    int n = x.length;
    double[] chord = chords(x, y);
    double[] slope = new double[n];
    for (int i = 1; i < n - 1; i++) {
      double before = x[i] - x[i - 1];
      double after = x[i + 1] - x[i];
      double parabola = (chord[i - 1] * after + chord[i] * before) / (before + after);
      slope[i] = heldIn(parabola, chord[i - 1], chord[i]);
    }
    slope[0] = heldAtEnd(2 * chord[0] - parabolaSlope(x, chord, 1), chord[0]);
    slope[n - 1] = heldAtEnd(2 * chord[n - 2] - parabolaSlope(x, chord, n - 2), chord[n - 2]);
    return new FairedCurve(
        x.clone(), y.clone(), Arrays.copyOf(slope, n - 1), Arrays.copyOfRange(slope, 1, n));
  }

  private static double[] chords(double[] x, double[] y) {
    double[] chord = new double[x.length - 1];
    for (int i = 0; i < chord.length; i++) {
      chord[i] = (y[i + 1] - y[i]) / (x[i + 1] - x[i]);
    }
    return chord;
  }

  private static double parabolaSlope(double[] x, double[] chord, int i) {
    double before = x[i] - x[i - 1];
    double after = x[i + 1] - x[i];
    return (chord[i - 1] * after + chord[i] * before) / (before + after);
  }

  private static double heldIn(double slope, double before, double after) {
    if (before * after <= 0) {
      return 0;
    }
    double most = 3 * Math.min(Math.abs(before), Math.abs(after));
    return Math.copySign(Math.min(Math.abs(slope), most), before);
  }

  private static double heldAtEnd(double slope, double chord) {
    if (slope * chord <= 0) {
      return 0;
    }
    return Math.copySign(Math.min(Math.abs(slope), 3 * Math.abs(chord)), chord);
  }

  /** Value at any x; beyond the ends the end pieces go on. */
  double at(double at) {
    int i = 0;
    while (i < x.length - 2 && at > x[i + 1]) {
      i++;
    }
    double h = x[i + 1] - x[i];
    double t = (at - x[i]) / h;
    double u = 1 - t;
    return y[i] * u * u * (1 + 2 * t)
        + y[i + 1] * t * t * (3 - 2 * t)
        + h * t * u * (start[i] * u - end[i] * t);
  }

  /** The greatest |y″| on the piece after point i; of a cubic it stands at one of its ends. */
  double greatestBend(int i) {
    double h = x[i + 1] - x[i];
    double chord = (y[i + 1] - y[i]) / h;
    double atStart = (6 * chord - 4 * start[i] - 2 * end[i]) / h;
    double atEnd = (-6 * chord + 2 * start[i] + 4 * end[i]) / h;
    return Math.max(Math.abs(atStart), Math.abs(atEnd));
  }
}
