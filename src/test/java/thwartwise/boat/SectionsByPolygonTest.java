package thwartwise.boat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import thwartwise.geometry.Box;
import thwartwise.geometry.ImmersedPart;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.geometry.WaterPlane;
import thwartwise.hull.HullForm;
import thwartwise.hull.Hulls;
import thwartwise.hull.Station;

/** Lofted hulls against polygons cut and clipped by a general library. */
class SectionsByPolygonTest {

  // Between two corners of the loft a section's area is a parabola, which three Gauss points sum
  // exactly; only where the water crosses a corner line a bend stays, that shrinks with the pieces.
  // Volumes differed by 7e-5, 4e-6, 6e-7, 2e-7, 2e-9 at 1, 2, 4, 8, 16 pieces of a stretch; the
  // waterplane, whose outline ends like a root, by ten times that.
  @Test
  void immersed_volume_centre_and_waterplane_agree_at_random_poses() {
    Random random = new Random(9);
    for (List<Station> stations : List.of(Hulls.skiff(), Hulls.lopsided())) {
      Solid hull = HullForm.of(Hulls.measured(0.006, stations)).outside();
      for (int i = 0; i < 3; i++) {
        WaterPlane plane =
            WaterPlane.of(
                1.2 * (random.nextDouble() - 0.5),
                0.15 * (random.nextDouble() - 0.5),
                0.12 + 0.2 * random.nextDouble());
        ImmersedPart part = ImmersedPart.of(hull, plane);
        PolygonOracle oracle = PolygonOracle.of(hull, plane, 4);
        assertThat(part.volume() / oracle.volume).as("%s", plane).isCloseTo(1, within(1e-5));
        assertThat(part.area() / oracle.waterplane).as("%s", plane).isCloseTo(1, within(1e-4));
        Vector3 centre = oracle.moment.times(1 / oracle.volume);
        assertThat(part.centroid().minus(centre).norm()).as("%s", plane).isLessThan(2e-5);
      }
    }
  }

  // A slice so thin that its volume over its thickness is its middle section's area, but for the
  // bend of the areas over it: (1e-3)^2.
  @Test
  void a_thin_slice_has_the_area_of_its_section() {
    Solid hull = HullForm.of(Hulls.measured(0.006, Hulls.skiff())).outside();
    for (double x = 0.113; x < 3.4; x += 0.171) {
      Box slice = new Box(new Span(x - 0.0005, x + 0.0005), Span.ALL, Span.ALL);
      assertThat(hull.within(slice).volume() / 0.001)
          .isCloseTo(PolygonOracle.sectionArea(hull, x), within(1e-5));
    }
  }

  // A station's own section is the polygon that was measured.
  @Test
  void the_section_at_a_station_is_the_one_measured() {
    Solid hull = HullForm.of(Hulls.measured(0.006, Hulls.skiff())).outside();
    // Middle: keel 0, chine 0.54 at 0.02, rail 0.69 at 0.43; twice the half section.
    double half = 0.54 * 0.02 / 2 + 0.41 * (0.54 + 0.69) / 2;
    assertThat(PolygonOracle.sectionArea(hull, 1.8 + 1e-7)).isCloseTo(2 * half, within(1e-6));
  }
}
