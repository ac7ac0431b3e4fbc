package thwartwise.hull;

import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;
import static thwartwise.hull.Hulls.p;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.geometry.ImmersedPart;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.geometry.WaterPlane;
import thwartwise.hull.FairedLines.FairedLine;
import thwartwise.hull.HullMeasurements.Skeg;

class SkegTest {

  // Under a level keel a wedge 0.10 deep aft and 0.02 forward over 1.2 m, 0.03 thick.
  @Test
  void under_a_level_keel_it_is_the_wedge_that_was_measured() {
    Solid skeg = form(prism(), p(0, 0, -0.10), p(1.2, 0, -0.02)).skeg();
    assertThat(skeg.volume()).isCloseTo(1.2 * 0.06 * 0.03, within(1e-15));
    // Of a trapezoid: along from the deep end l/3 (a + 2b)/(a + b), down (a2 + ab + b2)/3(a + b).
    assertThat(skeg.centroid().x()).isCloseTo(0.4 * 0.14 / 0.12, within(1e-12));
    assertThat(skeg.centroid().z()).isCloseTo(-0.0124 / 0.36, within(1e-12));
    assertThat(skeg.centroid().y()).isCloseTo(0, within(1e-15));
  }

  // Hull and skeg under one plane: what each displaces alone, since they only touch.
  @Test
  void it_adds_its_whole_volume_to_a_boat_afloat_and_reaches_below_the_bottom() {
    HullForm form = form(prism(), p(0, 0, -0.10), p(1.2, 0, -0.02));
    WaterPlane plane = WaterPlane.of(0, 0, 0.1);
    assertThat(ImmersedPart.of(form.skeg(), plane).volume())
        .isCloseTo(form.skeg().volume(), within(1e-15));
    assertThat(form.skeg().extent(Vector3.of(0, 0, 1))).isEqualTo(new Span(-0.10, 0));
    assertThat(form.outside().extent(Vector3.of(0, 0, 1)).from()).isZero();
  }

  // The keel of the skiff rises aft; the skeg fills from a level edge up to it. Its top is the
  // hull's own keel line, so the volume is thickness times the area between the two, which the
  // straight pieces of the faired line give by the trapezoidal rule at any finer spacing.
  @Test
  void its_top_follows_the_faired_keel_line() {
    HullMeasurements skiff = Hulls.measured(0.006, Hulls.skiff());
    Solid skeg = form(skiff, p(0.06, 0, 0), p(1.8, 0, 0)).skeg();
    FairedLine keel =
        FairedLine.through(skiff.stations().stream().map(s -> s.port().get(0)).toList());
    double area = 0;
    for (int stretch = 0; stretch < 2; stretch++) {
      for (int j = 0; j < 1000; j++) {
        Vector3 from = keel.at(stretch, j / 1000.0, 0);
        Vector3 to = keel.at(stretch, (j + 1) / 1000.0, 0);
        area += (to.x() - from.x()) * (from.z() + to.z()) / 2;
      }
    }
    // Straight pieces sag 0.3 mm from the line over 1.74 m.
    assertThat(skeg.volume() / 0.03).isCloseTo(area, within(0.0003 * 1.74));
    for (int i = 0; i < skeg.triangleCount(); i++) {
      for (Vector3 corner : skeg.triangle(i)) {
        assertThat(corner.z()).isLessThanOrEqualTo(0.08);
      }
    }
  }

  @Test
  void it_may_run_out_into_the_keel() {
    HullForm form = form(prism(), p(0, 0, -0.10), p(1.2, 0, 0));
    assertThat(form.skeg().volume()).isCloseTo(1.2 * 0.05 * 0.03, within(1e-15));
    // A few millimetres above the keel line are the tape's doing and give no volume.
    assertThat(form(prism(), p(0, 0, -0.1), p(1.2, 0, 0), p(1.5, 0, 0.005)).skeg().volume())
        .isCloseTo(1.2 * 0.05 * 0.03, within(1e-15));
  }

  @Test
  void a_hull_without_one_has_none() {
    assertThat(HullForm.of(prism()).skeg().triangleCount()).isZero();
  }

  @Test
  void an_edge_above_the_keel_line_is_refused() {
    assertThatThrownBy(() -> form(prism(), p(0, 0, -0.10), p(1.2, 0, 0.02)))
        .isInstanceOf(UnusableBoat.class)
        .hasMessage(
            "Skeg: at x 1.20 m its lower edge (0.020 m) stands above the keel line (0.000 m)."
                + " Measure both up from the lowest point of the hull's bottom; below it z is"
                + " negative.");
    assertThatThrownBy(() -> form(prism(), p(0, 0, Double.NaN), p(1.2, 0, -0.02)))
        .isInstanceOf(UnusableBoat.class);
  }

  @Test
  void an_edge_beyond_the_keel_is_refused() {
    assertThatThrownBy(() -> form(prism(), p(-0.2, 0, -0.10), p(1.2, 0, -0.02)))
        .isInstanceOf(UnusableBoat.class)
        .hasMessage(
            "Skeg: its edge runs from x -0.20 to 1.20 m, and the keel only from 0.00 to 3.00 m."
                + " Measure x from the aft end of the hull, and end the skeg where the keel ends.");
    assertThatThrownBy(() -> form(prism(), p(2, 0, -0.10), p(3.1, 0, -0.02)))
        .isInstanceOf(UnusableBoat.class);
  }

  private static HullMeasurements prism() {
    return Hulls.prism(
        3, 0.006, new double[] {0, 0}, new double[] {0.6, 0}, new double[] {0.6, 0.5});
  }

  private static HullForm form(HullMeasurements hull, Vector3... edge) {
    return HullForm.of(
        new HullMeasurements(
            hull.mass(),
            hull.centre(),
            hull.material(),
            hull.density(),
            hull.thickness(),
            hull.floor(),
            hull.stations(),
            hull.decked(),
            Optional.of(new Skeg(List.of(edge), 0.03))));
  }
}
