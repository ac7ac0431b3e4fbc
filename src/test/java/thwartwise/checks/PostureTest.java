package thwartwise.checks;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;
import static thwartwise.checks.OnPaper.RULES;
import static thwartwise.checks.OnPaper.findings;
import static thwartwise.checks.OnPaper.person;
import static thwartwise.checks.OnPaper.trial;
import static thwartwise.checks.OnPaper.value;

import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.afloat.Pose;
import thwartwise.boat.Body;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Loading;
import thwartwise.geometry.Vector3;
import thwartwise.loadcase.LoadedBoat;

/** People who keep the trunk upright and people who lean with the boat, on the box of OnPaper. */
class PostureTest {

  private static Pose rest(LoadedBoat trial) {
    return trial.atRest().worst().orElseThrow();
  }

  // References E2 (READ): a freely hanging weight acts at its point of suspension. Turned over: the
  // trunk of somebody upright has its centre of gravity 0.30 m plumb above the seat whatever the
  // heel. A weight lashed at that very point of the heeled boat rests at the same heel.
  @Test
  void somebody_upright_heels_the_boat_as_a_weight_plumb_above_the_seat() {
    Body out = person(95, 0.4).at(0.3);
    Pose upright = rest(trial(OnPaper.boat(300), out));
    Vector3 seat = Vector3.of(out.x(), 0.3, 0.25);
    Vector3 trunk = seat.plus(upright.plane().up().times(0.30));
    Pose lashed = rest(trial(OnPaper.boat(300)).with(new Loading.Weight(95, trunk)));
    assertThat(upright.heel()).isNotCloseTo(0, within(0.01));
    assertThat(lashed.heel()).isCloseTo(upright.heel(), within(1e-8));
    assertThat(lashed.trim()).isCloseTo(upright.trim(), within(1e-8));
  }

  // The wall-sided box, the weight at the seat and 0.30 m above it.
  @Test
  void the_box_heels_on_paper_with_people_upright_and_stiff() {
    LoadedBoat out = trial(OnPaper.boat(300), person(95, 0.4).at(0.3));
    assertThat(rest(out).heel()).isCloseTo(-OnPaper.heel(300, 95, 0.3, 0.25), within(1e-8));
    assertThat(rest(out.stiff()).heel()).isCloseTo(-OnPaper.heel(300, 95, 0.3, 0.55), within(1e-8));
  }

  // References E2: loss of metacentric height w h/W, here 95 x 0.30/395.
  @Test
  void leaning_with_the_boat_costs_the_metacentric_height_the_textbook_says() {
    LoadedBoat level = trial(OnPaper.boat(300), person(95, 0.4));
    double lost = rest(level).metacentricHeight() - rest(level.stiff()).metacentricHeight();
    assertThat(lost).isCloseTo(95 * 0.30 / 395, within(1e-9));
  }

  @Test
  void everyone_stiff_and_a_little_off_the_middle_heels_as_paper_says() {
    List<Finding> found =
        findings(new StiffOffTheMiddle(RULES, false), trial(OnPaper.boat(300), person(95, 0.4)));
    assertThat(found)
        .extracting(FindingText::check)
        .containsExactly(
            "sitting stiff a little off the middle",
            "sitting stiff a little off the middle, freeboard left");
    assertThat(found).allMatch(f -> f.role() == Role.LIMITS_CREW);
    assertThat(value(found.get(0))).isCloseTo(OnPaper.heel(300, 95, 0.1, 0.55), within(1e-8));
    assertThat(found.get(0).limit())
        .isCloseTo(Math.toRadians(10 + Math.pow(21, 3) / 600), within(1e-12));
    assertThat(FindingText.condition(found.get(0)))
        .isEqualTo("on paper; everyone stiff and 0.10 m off the middle to port");
  }

  // 4 m by 0.9 m is a canoe by its form: the same answer, and it limits nothing.
  @Test
  void of_a_canoe_it_is_only_told() {
    BoxBoat slim = BoxBoat.of(4, 0.9, 0.4).hull(30, 0.15);
    LoadedBoat trial = trial(slim, person(80, 0.3));
    assertThat(findings(new StiffOffTheMiddle(RULES, false), trial)).isEmpty();
    assertThat(findings(new StiffOffTheMiddle(RULES, true), trial))
        .hasSize(2)
        .allMatch(f -> f.role() == Role.FORBIDS_AN_ACT);
    assertThat(findings(new StiffOffTheMiddle(RULES, true), trial(OnPaper.boat(300)))).isEmpty();
  }
}
