package thwartwise.hull;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import thwartwise.geometry.Box;
import thwartwise.geometry.ImmersedPart;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.geometry.WaterPlane;

class HullFormTest {

  @Test
  void the_inside_of_a_box_hull_is_exactly_one_thickness_further_in() {
    double t = 0.012;
    HullForm form = HullForm.of(Hulls.prism(3, t, xy(0, 0), xy(0.6, 0), xy(0.6, 0.5)));
    assertThat(form.outside().volume()).isCloseTo(3 * 1.2 * 0.5, within(1e-12));
    double inside = (3 - 2 * t) * (1.2 - 2 * t) * (0.5 - t);
    assertThat(form.inside().volume()).isCloseTo(inside, within(1e-12));
    assertThat(form.inside().centroid().minus(Vector3.of(1.5, 0, (0.5 + t) / 2)).norm())
        .isLessThan(1e-12);
    // Bottom, two sides, two ends; no lid.
    double area = 3 * 1.2 + 2 * 3 * 0.5 + 2 * 1.2 * 0.5;
    assertThat(form.shellArea()).isCloseTo(area, within(1e-12));
    double lifted = form.shellFactor() * (1.8 - inside);
    assertThat(lifted).isCloseTo(60.0 / 750, within(1e-12));
  }

  // A V of half breadth b and height h: each side moved in by t, square to itself, is the same
  // triangle with the keel t s/b higher and the rail t s/h further in, s = root(b2 + h2).
  @Test
  void the_inside_of_a_v_hull_is_the_smaller_v() {
    double t = 0.01;
    double b = 0.5;
    double h = 0.4;
    HullForm form = HullForm.of(Hulls.prism(4, t, xy(0, 0), xy(b, h)));
    double s = Math.hypot(b, h);
    double inside = (4 - 2 * t) * (b - t * s / h) * (h - t * s / b);
    assertThat(form.inside().volume()).isCloseTo(inside, within(1e-12));
  }

  // Closed form: a trapezoid, floor half breadth f at height 0, flare to b at h. The side moves in
  // by t, so along the floor by t (s - (b - f))/h from the chine's foot: see the corner equations.
  @Test
  void the_inside_of_a_flared_hull_has_its_chine_where_the_moved_panels_meet() {
    double t = 0.01;
    double f = 0.4;
    double b = 0.6;
    double h = 0.5;
    HullForm form = HullForm.of(Hulls.prism(4, t, xy(0, 0), xy(f, 0), xy(b, h)));
    double s = Math.hypot(b - f, h);
    // The moved side: y = f + (b - f)/h z - t s/h; met with z = t, and at z = h.
    double foot = f + (b - f) / h * t - t * s / h;
    double rail = b - t * s / h;
    double inside = (4 - 2 * t) * (h - t) * (foot + rail);
    assertThat(form.inside().volume()).isCloseTo(inside, within(1e-12));
  }

  // The shell is thin: its volume is area times thickness but for corners, which on these boats
  // (about 12 m of edges, t2 or less each) and for the clipped rail and stem make under 3 %.
  @Test
  void the_shell_of_a_shaped_hull_is_area_times_thickness() {
    for (List<Station> stations : List.of(Hulls.skiff(), Hulls.lopsided())) {
      double t = 0.006;
      HullForm form = HullForm.of(Hulls.measured(t, stations));
      double shell = form.outside().volume() - form.inside().volume();
      assertThat(shell / (form.shellArea() * t)).isBetween(0.97, 1.01);
    }
  }

  @Test
  void a_sharp_stem_stays_inside_its_outside() {
    for (double t : new double[] {0.002, 0.006, 0.02}) {
      HullForm form = HullForm.of(Hulls.measured(t, Hulls.skiff()));
      Solid inside = form.inside();
      for (int i = 0; i < inside.triangleCount(); i++) {
        assertThat(inside.triangle(i)).allMatch(Vector3::isFinite);
      }
      // No slice of the inside is fuller than the same slice of the outside.
      for (double x = 0; x < 3.6; x += 0.1) {
        Box slice = new Box(new Span(x, x + 0.1), Span.ALL, Span.ALL);
        assertThat(inside.within(slice).volume())
            .isLessThanOrEqualTo(form.outside().within(slice).volume() + 1e-12)
            .isGreaterThan(-1e-12);
      }
    }
  }

  @Test
  void outside_and_inside_are_closed() {
    for (List<Station> stations : List.of(Hulls.skiff(), Hulls.lopsided())) {
      HullForm form = HullForm.of(Hulls.measured(0.006, stations));
      for (Solid solid :
          List.of(form.outside(), form.inside(), form.shellOutside(), form.shellInside())) {
        assertThat(open(solid)).isEmpty();
        assertThat(solid.volume()).isPositive();
      }
    }
  }

  @Test
  void a_hull_measured_on_one_side_is_symmetric() {
    HullForm form = HullForm.of(Hulls.measured(0.006, Hulls.skiff()));
    assertThat(form.outside().centroid().y()).isCloseTo(0, within(1e-14));
    assertThat(form.inside().centroid().y()).isCloseTo(0, within(1e-14));
    ImmersedPart port = ImmersedPart.of(form.outside(), WaterPlane.of(0.3, 0.05, 0.15));
    ImmersedPart starboard = ImmersedPart.of(form.outside(), WaterPlane.of(-0.3, 0.05, 0.15));
    assertThat(port.volume()).isCloseTo(starboard.volume(), within(1e-13));
  }

  @Test
  void a_mirrored_hull_gives_the_mirrored_solid() {
    HullForm one = HullForm.of(Hulls.measured(0.006, Hulls.lopsided()));
    List<Station> turned =
        Hulls.lopsided().stream()
            .map(
                s ->
                    new Station(
                        s.name(),
                        s.starboard().stream().map(Vector3::mirrored).toList(),
                        s.port().stream().map(Vector3::mirrored).toList()))
            .toList();
    HullForm other = HullForm.of(Hulls.measured(0.006, turned));
    assertThat(other.outside().volume()).isCloseTo(one.outside().volume(), within(1e-12));
    // Inside, the two ends of an end panel's strip differ in height, so the strip is twisted by the
    // fraction of a millimetre its diagonal halves, and mirrored the diagonal runs the other way.
    assertThat(other.inside().centroid().mirrored().minus(one.inside().centroid()).norm())
        .isLessThan(1e-6);
  }

  @Test
  void a_decked_length_is_no_edge_that_floods_but_its_ends_are() {
    HullMeasurements plain = Hulls.prism(3, 0.006, xy(0, 0), xy(0.6, 0), xy(0.6, 0.5));
    HullMeasurements decked =
        new HullMeasurements(
            60,
            plain.centre(),
            plain.material(),
            750,
            0.006,
            0.02,
            plain.stations(),
            List.of(new Span(2.2, 3)));
    List<FloodPoint> rail = HullForm.of(decked).rail();
    assertThat(rail).extracting(f -> f.at().x()).allMatch(x -> x <= 2.2);
    assertThat(rail).extracting(f -> f.at().x()).contains(2.2, 0.0);
    assertThat(HullForm.of(plain).rail()).extracting(f -> f.at().x()).contains(3.0);
  }

  private static double[] xy(double y, double z) {
    return new double[] {y, z};
  }

  private static Map<List<Vector3>, Integer> open(Solid solid) {
    Map<List<Vector3>, Integer> net = new HashMap<>();
    for (int i = 0; i < solid.triangleCount(); i++) {
      List<Vector3> t = solid.triangle(i);
      for (int k = 0; k < 3; k++) {
        Vector3 from = t.get(k).plus(Vector3.ZERO);
        Vector3 to = t.get((k + 1) % 3).plus(Vector3.ZERO);
        net.merge(List.of(from, to), 1, Integer::sum);
        net.merge(List.of(to, from), -1, Integer::sum);
      }
    }
    net.values().removeIf(n -> n == 0);
    return net;
  }
}
