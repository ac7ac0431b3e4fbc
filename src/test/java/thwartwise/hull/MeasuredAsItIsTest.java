package thwartwise.hull;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;
import static thwartwise.hull.Hulls.p;
import static thwartwise.hull.Hulls.station;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Vector3;
import thwartwise.geometry.WaterPlane;

/** Hulls as people find them: knuckles, slanted stations, two unlike sides, a square stern. */
class MeasuredAsItIsTest {
  private static final double NUMERIC = 1e-12;

  // Half section of every prism here: floor 0.4, flare to 0.6 at 0.5 up, so 0.25 m2 a side, its
  // centre 0.5/3 (0.4 + 2 x 0.6)/(0.4 + 0.6) up.
  private static final double AREA = 0.5;
  private static final double UP = 0.5 / 3 * 1.6;

  private static Station prism(String name, double keel, double rake) {
    return station(name, p(keel, 0, 0), p(keel, 0.4, 0), p(keel + 0.5 * rake, 0.6, 0.5));
  }

  // A bottom that runs level, rises 0.2 m within a hand's breadth and runs level again.
  @Test
  void a_hard_knuckle_leaves_every_line_between_its_neighbouring_stations() {
    List<Station> stations = new ArrayList<>();
    double[][] keel = {{0, 0}, {1.2, 0}, {2.0, 0}, {2.08, 0.2}, {3.0, 0.2}};
    for (double[] at : keel) {
      double x = at[0];
      stations.add(station("at " + x, p(x, 0, at[1]), p(x, 0.5, at[1]), p(x, 0.6, 0.5)));
    }
    FairedLines lines = FairedLines.through(stations);
    for (int i = 0; i + 1 < keel.length; i++) {
      double before = keel[i][1];
      for (int j = 1; j <= 100; j++) {
        double z = lines.at(i, j / 100.0, 0).port().get(0).z();
        assertThat(z).isBetween(before - NUMERIC, keel[i + 1][1] + NUMERIC);
        before = z;
      }
    }
    // So what is level is level all the way: 2 m of 0.5 high and 0.92 of 0.3, and the knuckle.
    double section = 0.5 * (0.5 + 0.6);
    double shallow = 0.3 * (0.5 + 0.6);
    Solid hull = HullForm.of(Hulls.measured(0.006, stations)).outside();
    assertThat(hull.volume())
        .isBetween(2 * section + 1.0 * shallow - NUMERIC, 2.08 * section + 0.92 * shallow);
  }

  @Test
  void slanted_stations_of_a_prism_give_its_exact_volume() {
    List<Station> alike =
        List.of(prism("aft", 0, 0.3), prism("middle", 1.3, 0.3), prism("fore", 3, 0.3));
    assertThat(volume(alike)).isCloseTo(AREA * 3, within(NUMERIC));
    // Each slant for itself: every end moves its centre by rake times height.
    List<Station> unlike =
        List.of(prism("aft", 0, -0.4), prism("middle", 1.3, 0.5), prism("fore", 3, 0.7));
    assertThat(volume(unlike)).isCloseTo(AREA * (3 + 1.1 * UP), within(NUMERIC));
  }

  // A slant in the middle is a way of measuring and no shape: outside, inside and skin of a hull of
  // flat panels do not know of it. Its half breadths are 0.4 + 0.1 x, upright sides; V is the sum
  // of 2 (0.4 + 0.1 x) 0.5 over 3 m.
  @Test
  void a_slanted_middle_station_of_a_wedge_changes_neither_outside_nor_inside() {
    HullForm square = HullForm.of(Hulls.measured(0.01, wedge(1.5, 1.5, 1.5)));
    HullForm slanted = HullForm.of(Hulls.measured(0.01, wedge(1.4, 1.6, 1.9)));
    assertThat(square.outside().volume()).isCloseTo(3 * 0.4 + 0.1 * 4.5, within(NUMERIC));
    assertThat(slanted.outside().volume()).isCloseTo(square.outside().volume(), within(NUMERIC));
    assertThat(slanted.inside().volume()).isCloseTo(square.inside().volume(), within(1e-9));
    assertThat(slanted.shellArea()).isCloseTo(square.shellArea(), within(NUMERIC));
  }

  private static List<Station> wedge(double keel, double chine, double rail) {
    return List.of(
        wedge("aft", 0, 0, 0), wedge("middle", keel, chine, rail), wedge("fore", 3, 3, 3));
  }

  private static Station wedge(String name, double keel, double chine, double rail) {
    return station(
        name, p(keel, 0, 0), p(chine, 0.4 + 0.1 * chine, 0), p(rail, 0.4 + 0.1 * rail, 0.5));
  }

  // The same with flared sides that close in, raked ends and a rising floor: still flat panels.
  // Floor 0.05 x up, so that no measured point stands where another station's stood.
  @Test
  void slanted_stations_of_a_flat_panelled_hull_leave_its_inside_alone() {
    HullForm square = HullForm.of(Hulls.measured(0.012, planked(1.5, 1.5, 1.5)));
    HullForm slanted = HullForm.of(Hulls.measured(0.012, planked(1.3, 1.5, 1.8)));
    assertThat(slanted.outside().volume()).isCloseTo(square.outside().volume(), within(NUMERIC));
    assertThat(slanted.inside().volume()).isCloseTo(square.inside().volume(), within(1e-9));
  }

  private static List<Station> planked(double keel, double chine, double rail) {
    return List.of(
        planked("aft", 0, 0, -0.15),
        planked("middle", keel, chine, rail),
        planked("fore", 3, 3, 3.2));
  }

  // Side: y = 0.3 + 0.05 x + 0.3 z. Bottom: z = 0.05 x + 0.1 y.
  private static Station planked(String name, double keel, double chine, double rail) {
    double out = (0.3 + 0.05 * chine + 0.3 * 0.05 * chine) / (1 - 0.3 * 0.1);
    return station(
        name,
        p(keel, 0, 0.05 * keel),
        p(chine, out, 0.05 * chine + 0.1 * out),
        p(rail, 0.3 + 0.05 * rail + 0.3 * 0.55, 0.55));
  }

  @Test
  void two_unlike_sides_hold_the_mean_of_the_two_symmetric_hulls() {
    List<Station> port =
        List.of(prism("aft", 0, 0.3), prism("middle", 1.3, 0.1), prism("fore", 3, 0.2));
    List<Station> starboard = port.stream().map(s -> wider(s, 1.2)).toList();
    double mean = (volume(port) + volume(starboard)) / 2;
    assertThat(volume(sides(port, starboard))).isCloseTo(mean, within(NUMERIC));
    // Of a shaped hull the two symmetric ones are cut into pieces of their own, to 0.3 mm.
    List<Station> skiff = Hulls.skiff();
    List<Station> fuller = skiff.stream().map(s -> wider(s, 1.2)).toList();
    Solid both = HullForm.of(Hulls.measured(0.006, sides(skiff, fuller))).outside();
    assertThat(both.volume()).isCloseTo((volume(skiff) + volume(fuller)) / 2, within(0.0003 * 7));
    assertThat(both.centroid().y()).isNegative();
  }

  // Prisms of one section a side: the rails 0.5 and 0.6 up, a lid from one to the other.
  @Test
  void sides_of_unlike_height_are_closed_by_a_sloping_lid() {
    List<Station> port = new ArrayList<>();
    List<Station> starboard = new ArrayList<>();
    for (double x : new double[] {0, 1.5, 3}) {
      port.add(station("at " + x, p(x, 0, 0), p(x, 0.5, 0), p(x, 0.5, 0.5)));
      starboard.add(station("at " + x, p(x, 0, 0), p(x, 0.7, 0), p(x, 0.7, 0.6)));
    }
    assertThat(volume(sides(port, starboard)))
        .isCloseTo(3 * (0.5 + 0.7) * (0.5 + 0.6) / 2, within(NUMERIC));
  }

  private static Station wider(Station s, double by) {
    return station(
        s.name(),
        s.port().stream().map(v -> Vector3.of(v.x(), by * v.y(), v.z())).toArray(Vector3[]::new));
  }

  private static List<Station> sides(List<Station> port, List<Station> starboard) {
    List<Station> both = new ArrayList<>();
    for (int i = 0; i < port.size(); i++) {
      both.add(new Station(port.get(i).name(), port.get(i).port(), starboard.get(i).starboard()));
    }
    return both;
  }

  @Test
  void a_stern_cut_off_square_holds_the_prism_exactly_and_floods_at_its_corners() {
    List<Station> stations =
        List.of(prism("transom", 0, 0), prism("middle", 1.3, 0), prism("fore", 3, 0));
    assertThat(volume(stations)).isCloseTo(AREA * 3, within(NUMERIC));
    HullForm form = HullForm.of(Hulls.measured(0.006, stations));
    // Bow up: the stern goes under first, and listing, the corner on that side.
    assertThat(lowest(form, WaterPlane.upward(0, -0.05)).name()).isEqualTo("rail, near transom");
    assertThat(lowest(form, WaterPlane.upward(0.02, -0.05)).at()).isEqualTo(p(0, -0.6, 0.5));
    assertThat(lowest(form, WaterPlane.upward(-0.02, -0.05)).at()).isEqualTo(p(0, 0.6, 0.5));
    assertThat(lowest(form, WaterPlane.upward(0, 0.05)).name()).isEqualTo("rail, near fore");
  }

  private static FloodPoint lowest(HullForm form, Vector3 up) {
    return form.rail().stream().min(Comparator.comparingDouble(f -> up.dot(f.at()))).orElseThrow();
  }

  private static double volume(List<Station> stations) {
    return HullForm.of(Hulls.measured(0.006, stations)).outside().volume();
  }
}
