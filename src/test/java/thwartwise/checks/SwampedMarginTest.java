package thwartwise.checks;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;
import static thwartwise.checks.OnPaper.RULES;
import static thwartwise.checks.OnPaper.findings;
import static thwartwise.checks.OnPaper.tanks;
import static thwartwise.checks.OnPaper.trial;
import static thwartwise.checks.OnPaper.value;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Body;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Kit;
import thwartwise.boat.Place;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.loadcase.PeopleMoves;

/**
 * A swamped box on two tanks of 0.7 m, a waterplane of 1.68 m² with I = 1.4 x 1.2³/12, and people
 * who sit too high for the water to reach them: they are weights, and paper knows the heel.
 */
class SwampedMarginTest {
  private static final double PLANE = 1.68;
  private static final double INERTIA = 1.4 * 1.728 / 12;

  /** On a seat and a floor above the water, upright. */
  private static Body dry(double mass, double reach, double y) {
    Place thwart = new Place("thwart", 1.5, 0.25, reach, 1);
    return Body.seated("crew", mass, thwart, y, 0.24);
  }

  private static double centre(Body body) {
    return body.centreHeight();
  }

  private static double heel(double hull, double weight, double height, double out) {
    double mass = hull + weight;
    double g = (hull * 0.2 + weight * height) / mass;
    double tangent = OnPaper.tangent(mass / 1000, PLANE, INERTIA, g, weight * out / mass);
    assertThat(0.6 * tangent).isLessThan(Math.min(mass / 1680, 0.5 - mass / 1680));
    return Math.atan(tangent);
  }

  private static List<Finding> margin(BoxBoat boat, Body... people) {
    return findings(new SwampedMargin(RULES), trial(boat, people));
  }

  // Half the weight at 0.6 x 0.4: as all of it at 0.12 m; and all of it at 0.10 m.
  @Test
  void half_the_crew_to_one_side_heels_the_swamped_box_as_paper_says() {
    Body one = dry(60, 0.4, 0);
    List<Finding> found = margin(tanks(200), one);
    assertThat(found)
        .extracting(FindingText::check)
        .containsExactly(
            "swamped, half the crew's weight to one side",
            "swamped, everyone a little off the middle");
    assertThat(found).allMatch(f -> f.role() == Role.LIMITS_CREW);
    assertThat(value(found.get(0))).isCloseTo(heel(200, 60, centre(one), 0.12), within(1e-6));
    assertThat(value(found.get(1))).isCloseTo(heel(200, 60, centre(one), 0.10), within(1e-6));
    assertThat(found.get(0).limit()).isCloseTo(Math.toRadians(30), within(1e-12));
    assertThat(found.get(1).limit()).isCloseTo(Math.toRadians(45), within(1e-12));
    assertThat(FindingText.condition(found.get(0)))
        .isEqualTo("on paper; half of everyone's weight three fifths of the way to port");
    assertThat(FindingText.condition(found.get(1)))
        .isEqualTo("on paper; everyone 0.10 m off the middle to port");
  }

  // Two side by side move over together, and their centre of gravity with them.
  @Test
  void people_side_by_side_stay_side_by_side() {
    LoadedBoat two = trial(tanks(200), dry(60, 0.4, -0.2), dry(60, 0.4, 0.2));
    List<LoadedBoat> ways = PeopleMoves.partly(two, 0.5, 0.6);
    assertThat(ways).hasSize(1);
    assertThat(ways.get(0).people())
        .extracting(Body::y)
        .satisfiesExactly(
            y -> assertThat(y).isCloseTo(-0.2 + 0.12, within(1e-12)),
            y -> assertThat(y).isCloseTo(0.2 + 0.12, within(1e-12)));
  }

  // Half of one who sits 0.2 m to port at 0.24 to starboard, the other half as before: -0.02.
  @Test
  void somebody_off_the_middle_already_leaves_half_their_weight_there() {
    LoadedBoat one = trial(tanks(200), dry(60, 0.4, 0.2));
    assertThat(PeopleMoves.partly(one, 0.5, 0.6))
        .extracting(t -> t.people().get(0).y())
        .satisfiesExactly(
            y -> assertThat(y).isCloseTo(0.22, within(1e-12)),
            y -> assertThat(y).isCloseTo(-0.02, within(1e-12)));
  }

  // A knife's edge: 250 kg and G just under the metacentre of the box lie level when everybody is
  // on the middle line, and go over with 0.10 m. GM = 0.02 m, so that the tangent would have to be
  // far beyond what the tanks' depth gives.
  @Test
  void a_boat_on_a_knifes_edge_lies_level_and_yet_falls_short() {
    Body one = dry(95, 0.4, 0);
    double mass = 295;
    double needed = mass / 1000 / PLANE / 2 + INERTIA / (mass / 1000) - 0.02;
    double hull = (mass * needed - 95 * centre(one)) / 200;
    BoxBoat edge =
        BoxBoat.of(3, 1.2, 0.5)
            .hull(200, hull)
            .weightlessShell()
            .proven("stern tank", new Span(0, 0.7))
            .proven("bow tank", new Span(2.3, 3));
    LoadedBoat trial = trial(edge, one);
    assertThat(new SwampedLevel(RULES).readings(trial)).allMatch(CheckReading::met);
    List<CheckReading> margin = new SwampedMargin(RULES).readings(trial);
    assertThat(margin).noneMatch(CheckReading::met);
  }

  @Test
  void nobody_aboard_is_off_no_middle() {
    assertThat(margin(tanks(200))).isEmpty();
  }

  // 20 kg on the floor slide to the side, 0.6 m: they heel the box on top of the crew.
  @Test
  void loose_kit_slides_to_the_low_side_of_the_swamped_boat() {
    Body one = dry(60, 0.4, 0);
    BoxBoat boat =
        tanks(180)
            .kit(
                new Kit(
                    "bag", 20, Vector3.of(1.5, 0, 0.2), Optional.empty(), false, Optional.empty()));
    double out = (60 * 0.12 + 20 * 0.6) / 80;
    double height = (60 * centre(one) + 20 * 0.2) / 80;
    List<Finding> found = margin(boat, one);
    assertThat(value(found.get(0))).isCloseTo(heel(180, 80, height, out), within(1e-5));
  }
}
