package thwartwise.boat;

import static thwartwise.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import thwartwise.geometry.ImmersedPart;
import thwartwise.geometry.Reference;
import thwartwise.geometry.Vector3;
import thwartwise.geometry.WaterPlane;
import thwartwise.hull.HullForm;
import thwartwise.hull.Hulls;
import thwartwise.hull.Station;

/**
 * A hull whose every figure has a closed form, measured as an owner would: so many stations, flats
 * between fifteen points from keel to water, and a wall above the water.
 */
class WigleyTest {
  private static final int[] STATIONS = {5, 7, 11, 21};
  private static final int FLATS = 15;
  private static final List<String> FIGURES = List.of("V", "Aw", "KB", "IT", "IL");

  private final Reference wigley = Reference.named("A25-wigley");

  // Stations evenly spaced have one at the widest place; then the faired lines are the hull's own
  // parabolas, and only flats and sag are left.
  @Test
  void evenly_spaced_stations_meet_the_closed_form_from_five_up() {
    for (int n : STATIONS) {
      Map<String, Double> error = errors(n, 1);
      print("evenly spaced", n, error);
      for (String figure : FIGURES) {
        assertThat(Math.abs(error.get(figure)) * wigley.wanted(figure))
            .as("%s at %d stations", figure, n)
            .isLessThanOrEqualTo(wigley.near(figure));
      }
    }
  }

  // Crowded aft, the widest place falls between two stations, where a line that must not overshoot
  // lies flat. At most it leaves out a bulge of (h/L)^2 of the half-breadth over the length h, two
  // thirds full; of I_T, which goes with the breadth cubed and is 16/35 of L, that is
  // 3 x 2/3 x 35/16 (h/L)^3 = 4.4 (h/L)^3. Flats and sag keep their 0.2 %.
  @Test
  void stations_that_miss_the_widest_place_err_less_the_more_there_are() {
    Map<String, Double> before = new TreeMap<>();
    for (int n : STATIONS) {
      Map<String, Double> error = errors(n, 1.25);
      print("widest place missed", n, error);
      double widest = 1.25 / (n - 1);
      for (String figure : FIGURES) {
        assertThat(Math.abs(error.get(figure)))
            .as("%s at %d stations", figure, n)
            .isLessThan(0.002 + 4.4 * Math.pow(widest, 3));
        if (before.containsKey(figure) && Math.abs(before.get(figure)) > 0.004) {
          assertThat(Math.abs(error.get(figure)))
              .as("%s at %d stations", figure, n)
              .isLessThan(Math.abs(before.get(figure)));
        }
      }
      before.putAll(error);
    }
  }

  // What lifts is never drawn larger than it is.
  @Test
  void a_measured_round_hull_is_never_larger_than_the_real_one() {
    for (int n : STATIONS) {
      assertThat(errors(n, 1).get("V")).isNegative();
      assertThat(errors(n, 1.25).get("V")).isNegative();
    }
  }

  private Map<String, Double> errors(int n, double crowding) {
    double draft = wigley.in("T");
    HullForm form = HullForm.of(Hulls.measured(0.0005, stations(n, crowding)));
    ImmersedPart part = ImmersedPart.of(form.outside(), WaterPlane.of(0, 0, draft));
    Map<String, Double> ours =
        Map.of(
            "V", part.volume(),
            "Aw", part.area(),
            "KB", part.centroid().z(),
            "IT", part.transverseInertia(),
            "IL", part.longitudinalInertia());
    Map<String, Double> errors = new TreeMap<>();
    ours.forEach((name, value) -> errors.put(name, value / wigley.wanted(name) - 1));
    return errors;
  }

  private List<Station> stations(int n, double crowding) {
    double length = wigley.in("L");
    List<Station> stations = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double x = length * Math.pow((double) i / (n - 1), crowding);
      stations.add(Station.mirrored("station " + i, points(x)));
    }
    return stations;
  }

  private List<Vector3> points(double x) {
    double draft = wigley.in("T");
    double fore = 2 * x / wigley.in("L") - 1;
    List<Vector3> points = new ArrayList<>();
    for (int k = 0; k <= FLATS; k++) {
      double z = draft * k / FLATS;
      double down = 1 - z / draft;
      double y = wigley.in("B") / 2 * (1 - fore * fore) * (1 - down * down);
      points.add(Vector3.of(x, y, z));
    }
    points.add(Vector3.of(x, wigley.in("B") / 2 * (1 - fore * fore), draft + 0.2));
    return points;
  }

  private static void print(String how, int n, Map<String, Double> error) {
    StringBuilder line =
        new StringBuilder(String.format(Locale.ROOT, "Wigley, %s, %2d stations:", how, n));
    FIGURES.forEach(
        f -> line.append(String.format(Locale.ROOT, "  %s %+.3f %%", f, 100 * error.get(f))));
    System.out.println(line);
  }
}
