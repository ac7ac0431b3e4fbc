package thwartwise.plausibility;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The range in which a reading would be in line with those of the other stations: between the least
 * and the greatest value of the straight line between its neighbours, the parabolas through three
 * and the cubic through four of the nearest others (Lagrange's formula). Where one curve does not
 * suit the boat another does, so a doubt needs all of them against the reading.
 */
record FairRange(double least, double most) {

  /** The range of the point at {@code i}, which has a neighbour on either side. */
  static FairRange of(double[] x, double[] value, int i) {
    boolean twoAft = i >= 2;
    boolean twoForward = i + 2 < x.length;
    List<Double> fair = new ArrayList<>();
    fair.add(through(x, value, x[i], i - 1, i + 1));
    if (twoAft) {
      fair.add(through(x, value, x[i], i - 2, i - 1, i + 1));
    }
    if (twoForward) {
      fair.add(through(x, value, x[i], i - 1, i + 1, i + 2));
    }
    if (twoAft && twoForward) {
      fair.add(through(x, value, x[i], i - 2, i - 1, i + 1, i + 2));
    }
    return new FairRange(Collections.min(fair), Collections.max(fair));
  }

  /** The polynomial through these points, by Lagrange's formula. */
  private static double through(double[] x, double[] value, double at, int... points) {
    double sum = 0;
    for (int a : points) {
      double weight = 1;
      for (int b : points) {
        weight *= a == b ? 1 : (at - x[b]) / (x[a] - x[b]);
      }
      sum += weight * value[a];
    }
    return sum;
  }

  double nearest(double value) {
    return Math.max(least, Math.min(most, value));
  }

  double off(double value) {
    return Math.abs(value - nearest(value));
  }
}
