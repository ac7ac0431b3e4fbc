package thwartwise.checks;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.afloat.Pose;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Body;
import thwartwise.boat.BoxBoat;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.geometry.Reference;
import thwartwise.geometry.Vector3;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.loadcase.Wind;
import thwartwise.rules.Limit;
import thwartwise.rules.Limit.Basis;
import thwartwise.rules.RuleSet;

/** Wind as published, through the program's own wind. */
class WindByReferenceTest {
  private static final RuleSet RULES = RuleSetFile.cautiousDefault();
  private static final Vector3 ABEAM = Vector3.of(0, 1, 0);

  static Stream<Reference> limits() {
    return Reference.of("wind-limit");
  }

  @ParameterizedTest
  @MethodSource("limits")
  void the_wind_a_boat_is_tried_in_is_the_published_edge(Reference r) {
    assertThat(RULES.value("wind")).isCloseTo(r.wanted("speed"), within(r.near("speed")));
  }

  static Stream<Reference> pressures() {
    return Reference.of("wind-pressure");
  }

  @ParameterizedTest
  @MethodSource("pressures")
  void wind_presses_as_published(Reference r) {
    Wind wind = Wind.of(with(Map.of("wind", r.in("v"))));
    assertThat(wind.pressure()).isCloseTo(r.wanted("Pa"), within(r.near("Pa")));
  }

  static Stream<Reference> hulls() {
    return Reference.of("wind-on-hull");
  }

  // A box that draws 1: its side stands so much out of the water over its whole length.
  @ParameterizedTest
  @MethodSource("hulls")
  void wind_pushes_the_side_of_a_hull_as_published(Reference r) {
    double length = r.in("length");
    BoatModel model =
        BoxBoat.of(length, 3, 1 + r.in("out"))
            .weightlessShell()
            .hull(1000 * length * 3, 0.5)
            .model();
    Wind wind =
        Wind.of(
            with(Map.of("wind", r.in("v"), "air-density", r.in("rho"), "drag-hull", r.in("drag"))));
    assertThat(push(wind, model, List.of())).isCloseTo(r.wanted("force"), within(r.near("force")));
  }

  static Stream<Reference> people() {
    return Reference.of("wind-on-person");
  }

  @ParameterizedTest
  @MethodSource("people")
  void wind_pushes_a_person_as_published(Reference r) {
    BoatModel model =
        BoxBoat.of(4, 1.5, 0.6).place("seat", 2, 0.3, 0.3, 1).aboard("one", 80, "seat", 0).model();
    Wind wind =
        Wind.of(
            with(
                Map.of(
                    "wind", r.in("v"),
                    "air-density", r.in("rho"),
                    "drag-hull", 0.0,
                    "drag-person", r.in("drag"),
                    "person-area", r.in("area"))));
    assertThat(push(wind, model, model.aboard()))
        .isCloseTo(r.wanted("force"), within(r.near("force")));
  }

  private static double push(Wind wind, BoatModel model, List<Body> aboard) {
    LoadedBoat trial = LoadedBoat.of(model, aboard);
    Pose pose = trial.atRest().worst().orElseThrow();
    return wind.push(trial, pose, ABEAM);
  }

  private static RuleSet with(Map<String, Double> values) {
    Map<String, Limit> limits = new HashMap<>(RULES.limits());
    values.forEach((name, v) -> limits.put(name, new Limit(v, "", Basis.READ, "the row")));
    return new RuleSet("of the row", "", "", limits);
  }
}
