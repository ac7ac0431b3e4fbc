package thwartwise.hull;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bodies whose centre is known on paper, balanced on an edge. */
class TrestleBalanceTest {
  // A plank 3 m long and 0.40 m thick has its centre 0.20 m up, at 1.5 m. Tilted by 45 degrees it
  // balances on an edge 0.20 m from the middle: the corner of a square stands over the opposite
  // one.
  @Test
  void a_thick_plank_tilted_by_half_a_right_angle() {
    assertThat(new TrestleBalance(1.5, 1.3, 0, Math.PI / 4).centreHeight())
        .isCloseTo(0.2, within(1e-12));
    assertThat(new TrestleBalance(1.5, 1.7, 0, Math.PI / 4).centreHeight())
        .isCloseTo(0.2, within(1e-12));
  }

  // The side of a wedge: corners (0, 0), (3, 0), (3, 0.6). Its centroid is at two thirds of the
  // length and a third of the height (textbook): (2, 0.2). On an edge at 1.9 m the sides of a right
  // angle are 0.1 and 0.2, so it balances at arc tan (1/2), 26.565 degrees.
  @Test
  void a_wedge() {
    assertThat(new TrestleBalance(2, 1.9, 0, Math.toRadians(26.565051177078)).centreHeight())
        .isCloseTo(0.2, within(1e-9));
  }

  /** Whatever the centre, turned about the edge by the tilt it stands over the edge. */
  @ParameterizedTest
  @CsvSource({"1.7, 1.6, 0.02, 0.1", "1.7, 1.9, 0.00, 0.4", "1.2, 1.05, 0.05, 0.9"})
  void the_centre_comes_to_stand_over_the_edge(
      double balance, double edge, double bottom, double tilt) {
    double up = new TrestleBalance(balance, edge, bottom, tilt).centreHeight() - bottom;
    double along = Math.abs(balance - edge);
    assertThat(along * Math.cos(tilt) - up * Math.sin(tilt)).isCloseTo(0, within(1e-12));
    assertThat(up).isPositive();
  }
}
