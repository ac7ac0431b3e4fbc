package thwartwise.hull;

import static thwartwise.Assertions.assertThat;
import static thwartwise.hull.Hulls.p;
import static thwartwise.hull.Hulls.station;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;

class CrossingTest {

  @Test
  void two_swapped_points_cross_and_are_named() {
    List<Vector3> good = side(0, 0, 0.4, 0, 0.55, 0.2, 0.6, 0.5);
    assertThat(Crossing.of(good)).isEmpty();
    // Keel to the upper chine, back to the lower one, and up to the rail.
    List<Vector3> wrong = side(0, 0, 0.5, 0.3, 0.5, 0.05, 0.3, 0.5);
    assertThat(Crossing.of(wrong)).contains(new Crossing(1, 2));
    assertThat(Crossing.of(wrong.stream().map(Vector3::mirrored).toList()))
        .contains(new Crossing(1, 2));
  }

  @Test
  void stretches_farther_apart_are_looked_at_too() {
    assertThat(Crossing.of(side(0, 0, 0.5, 0, 0.6, 0.2, 0.2, 0.3, 0.2, -0.1, 0.3, 0.5)))
        .contains(new Crossing(1, 3));
  }

  @Test
  void an_outline_that_comes_back_to_the_middle_line_touches_the_other_side() {
    assertThat(Crossing.of(side(0, 0, 0.4, 0.1, 0, 0.3, 0.5, 0.5))).contains(new Crossing(1, 2));
    // A sharp stem ends on the middle line, or never leaves it, or leaves it once.
    assertThat(Crossing.of(side(0, 0.1, 0.02, 0.2, 0, 0.6))).isEmpty();
    assertThat(Crossing.of(side(0, 0.1, 0, 0.2, 0, 0.6))).isEmpty();
    assertThat(Crossing.of(side(0, 0.1, 0, 0.2, 0.03, 0.6))).isEmpty();
  }

  @Test
  void points_that_fall_together_and_tumblehome_are_no_crossing() {
    assertThat(Crossing.of(side(0, 0, 0.4, 0, 0.4, 0, 0.4, 0, 0.6, 0.5))).isEmpty();
    assertThat(Crossing.of(side(0, 0, 0.6, 0.1, 0.65, 0.3, 0.5, 0.5))).isEmpty();
  }

  // Neither end crosses: aft a hollow lies over the first panel, forward it lies under it. On the
  // way from one to the other it passes through.
  @Test
  void outlines_that_cross_only_between_two_stations_are_found() {
    HullForm form =
        HullForm.of(
            Hulls.measured(0.006, List.of(fold("aft", 0), fold("mid", 1), fold("fore", 2))));
    assertThat(form.crossings()).hasSize(1);
    // The upper corner (0.1 + 0.4 t, 0.5 - 0.4 t) comes to lie on the first panel where
    // 0.22 - 0.54 t + 0.08 t2 = 0; t is half of x.
    double on = (0.54 - Math.sqrt(0.54 * 0.54 - 4 * 0.08 * 0.22)) / 0.16;
    assertThat(form.crossings().get(0).to()).isBetween(2 * on, 2 * on + 0.03);
    assertThat(form.crossings().get(0).length()).isLessThan(0.2);
    assertThat(HullForm.of(Hulls.measured(0.006, Hulls.lopsided())).crossings())
        .isEqualTo(List.<Span>of());
  }

  // No file brings such a station, but a hull may be built from what somebody typed just now.
  @Test
  void outlines_that_cross_up_to_the_end_are_found_too() {
    HullForm form =
        HullForm.of(
            Hulls.measured(0.006, List.of(fold("aft", 0), fold("mid", 0.5), fold("fore", 0.85))));
    assertThat(form.crossings()).hasSize(1);
    assertThat(form.crossings().get(0).to()).isEqualTo(0.85);
  }

  private static Station fold(String name, double x) {
    double t = x / 2;
    return station(
        name,
        p(x, 0, 0),
        p(x, 0.5 - 0.4 * t, 0.3 + 0.2 * t),
        p(x, 0.1 + 0.4 * t, 0.5 - 0.4 * t),
        p(x, 0.7, 0.6));
  }

  private static List<Vector3> side(double... yz) {
    List<Vector3> points = new ArrayList<>();
    for (int i = 0; i < yz.length; i += 2) {
      points.add(p(0, yz[i], yz[i + 1]));
    }
    return points;
  }
}
