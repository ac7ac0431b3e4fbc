package thwartwise.boat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thwartwise.geometry.Vector3;
import thwartwise.hull.HullForm;
import thwartwise.hull.HullMeasurements;
import thwartwise.hull.Station;

/** The rail abreast of somebody who leans out, and where their weight comes to. */
class RailAbreastTest {
  // A wedge 4 m long: rail from 0.8 m out and 0.5 m up aft to 0.4 m out and 0.7 m up forward, in
  // straight lines, with a raked stem whose rail ends at x = 4.2.
  private static HullForm wedge() {
    List<Station> stations =
        List.of(station("aft", 0, 0), station("middle", 0.5, 0.1), station("fore", 1, 0.2));
    return HullForm.of(
        new HullMeasurements(
            80, Optional.empty(), Optional.empty(), 750, 0.006, 0.02, stations, List.of()));
  }

  private static Station station(String name, double share, double rake) {
    double half = 0.8 - 0.4 * share;
    return Station.mirrored(
        name,
        List.of(
            Vector3.of(4 * share, 0, 0),
            Vector3.of(4 * share, half, 0),
            Vector3.of(4 * share + rake, half, 0.5 + 0.2 * share)));
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0.8, 0.5",
    "1.05, 0.7, 0.55",
    "2.1, 0.6, 0.6",
    "3.15, 0.5, 0.65",
    "4.2, 0.4, 0.7"
  })
  void the_rail_abreast_lies_on_the_line_of_the_rail(double x, double out, double up) {
    Vector3 port = wedge().railAt(x, true);
    assertThat(port.x()).isCloseTo(x, within(1e-9));
    assertThat(port.y()).isCloseTo(out, within(1e-6));
    assertThat(port.z()).isCloseTo(up, within(1e-6));
    assertThat(wedge().railAt(x, false)).isEqualTo(port.mirrored());
  }

  @Test
  void beyond_either_end_it_is_the_end_of_the_rail() {
    assertThat(wedge().railAt(-1, true)).isEqualTo(wedge().aftRail().get(0));
    assertThat(wedge().railAt(9, true)).isEqualTo(wedge().foreRail().get(0));
    assertThat(wedge().railAt(9, false)).isEqualTo(wedge().foreRail().get(1));
  }

  private static final Body HELM =
      Body.seated("helm", 80, new Place("seat", 1.2, 0.3, 0.4, 1), 0.1, 0.05);

  // Carried 0.15 m above the floor at 0.05, stiff 0.45 m above it.
  @Test
  void kneeling_is_on_the_floor_where_they_sit() {
    Body kneeling = HELM.kneeling();
    assertThat(kneeling.centre().x()).isEqualTo(1.2);
    assertThat(kneeling.centre().y()).isEqualTo(0.1);
    assertThat(kneeling.centre().z()).isCloseTo(0.2, within(1e-12));
    assertThat(kneeling.stiff().centre().z()).isCloseTo(0.5, within(1e-12));
    assertThat(kneeling.mass()).isEqualTo(80);
    assertThat(kneeling.across().to()).isEqualTo(0.4);
  }

  // Over the rail and 0.10 m above it, abreast of where they sit.
  @Test
  void leaning_out_is_over_the_rail() {
    Body out = HELM.leaningOut(Vector3.of(1.3, -0.7, 0.45));
    assertThat(out.centre().x()).isEqualTo(1.2);
    assertThat(out.centre().y()).isEqualTo(-0.7);
    assertThat(out.centre().z()).isCloseTo(0.55, within(1e-12));
    assertThat(out.mass()).isEqualTo(80);
  }
}
