package thwartwise.hull;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import thwartwise.hull.FairedLines.FairedCurve;

class FairedCurveTest {

  @Test
  void it_passes_through_every_measured_point_and_never_overshoots_between_two() {
    Random random = new Random(8);
    for (int trial = 0; trial < 300; trial++) {
      int n = 3 + random.nextInt(6);
      double[] x = new double[n];
      double[] y = new double[n];
      for (int i = 0; i < n; i++) {
        x[i] = (i == 0 ? 0 : x[i - 1]) + 0.05 + random.nextDouble() * random.nextDouble() * 2;
        y[i] = random.nextInt(4) == 0 && i > 0 ? y[i - 1] : random.nextGaussian();
      }
      holdsBetweenItsPoints(x, y);
    }
  }

  // A hard knuckle: flat floor, then a steep rise within a hand's breadth, then flat again.
  @Test
  void a_hard_knuckle_is_not_overshot() {
    holdsBetweenItsPoints(
        new double[] {0, 1, 2, 2.05, 3, 4}, new double[] {0, 0, 0, 0.4, 0.4, 0.41});
  }

  private static void holdsBetweenItsPoints(double[] x, double[] y) {
    FairedCurve curve = FairedCurve.through(x, y);
    for (int i = 0; i < x.length; i++) {
      assertThat(curve.at(x[i])).isCloseTo(y[i], within(1e-12));
    }
    for (int i = 0; i + 1 < x.length; i++) {
      double low = Math.min(y[i], y[i + 1]) - 1e-12;
      double high = Math.max(y[i], y[i + 1]) + 1e-12;
      double before = y[i];
      for (int k = 1; k <= 200; k++) {
        double at = curve.at(x[i] + (x[i + 1] - x[i]) * k / 200);
        assertThat(at).isBetween(low, high);
        assertThat((at - before) * Math.signum(y[i + 1] - y[i])).isGreaterThan(-1e-12);
        before = at;
      }
    }
  }

  @Test
  void a_parabola_with_its_top_at_a_point_is_followed_exactly() {
    double[] x = {-2, -1.1, 0, 0.8, 1.9};
    double[] y = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      y[i] = 3 - 0.7 * x[i] * x[i];
    }
    FairedCurve curve = FairedCurve.through(x, y);
    for (double at = -2; at <= 1.9; at += 0.013) {
      assertThat(curve.at(at)).isCloseTo(3 - 0.7 * at * at, within(1e-12));
    }
  }

  @Test
  void a_straight_line_stays_straight() {
    FairedCurve curve = FairedCurve.through(new double[] {0, 0.3, 2}, new double[] {1, 1.3, 3});
    for (double at = 0; at <= 2; at += 0.01) {
      assertThat(curve.at(at)).isCloseTo(1 + at, within(1e-12));
    }
  }
}
