package thwartwise.checks;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;
import static thwartwise.checks.OnPaper.DEPTH;
import static thwartwise.checks.OnPaper.PLANE;
import static thwartwise.checks.OnPaper.RULES;
import static thwartwise.checks.OnPaper.findings;
import static thwartwise.checks.OnPaper.person;
import static thwartwise.checks.OnPaper.trial;
import static thwartwise.checks.OnPaper.value;

import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Body;

/**
 * Somebody of 140 kg throws themselves to the side of a box of 1000 kg. On paper the work of a
 * wall-sided boat from upright is W [GM (1 - cos) + BM/2 (1/cos + cos - 2) - yG sin].
 */
class SuddenShiftTest {
  private static final double MASS = 1140;
  private static final double DRAFT = MASS / 1000 / PLANE;
  private static final double BM = 1.44 / 12 / DRAFT;
  private static final double GM = DRAFT / 2 + BM - (1000 * 0.2 + 140 * 0.55) / MASS;
  private static final double FLOODS = Math.atan((DEPTH - DRAFT) / 0.6);

  private static double work(double heel) {
    double cos = Math.cos(heel);
    return GM * (1 - cos) + BM / 2 * (1 / cos + cos - 2);
  }

  private static double swing(double reach) {
    double offset = 140 * reach / MASS;
    return OnPaper.root(a -> work(a) - offset * Math.sin(a), 1e-3, 0.6);
  }

  /** The reach at which it swings back just as the water comes over the rail. */
  private static final double FLOODING_REACH = work(FLOODS) / Math.sin(FLOODS) * MASS / 140;

  private static Finding found(double reach) {
    List<Finding> found =
        findings(new SuddenShift(RULES), trial(OnPaper.boat(1000), person(140, reach)));
    assertThat(found).hasSize(1);
    return found.get(0);
  }

  @Test
  void it_swings_as_far_as_the_work_on_paper_says() {
    Finding found = found(0.2);
    assertThat(FindingText.check(found)).isEqualTo("one person suddenly to one side");
    assertThat(found.role()).isEqualTo(Role.FORBIDS_AN_ACT);
    assertThat(value(found)).isCloseTo(swing(0.2), within(1e-6));
    assertThat(found.limit()).isCloseTo(FLOODS, within(1e-6));
    assertThat(found.outcome()).isEqualTo(Outcome.MEETS);
    assertThat(FindingText.note(found))
        .isEqualTo("how far it swings, against the heel at which water comes in");
    assertThat(FindingText.condition(found))
        .isEqualTo("on paper; crew suddenly hard against the side to port");
  }

  @Test
  void it_floods_just_past_the_reach_paper_finds() {
    assertThat(FLOODING_REACH).isBetween(0.3, 0.6);
    assertThat(found(FLOODING_REACH - 1e-3).outcome()).isEqualTo(Outcome.BORDERLINE);
    Finding floods = found(FLOODING_REACH + 1e-3);
    assertThat(floods.outcome()).isEqualTo(Outcome.FALLS_SHORT);
    assertThat(floods.value()).isEmpty();
    assertThat(FindingText.note(floods))
        .matches("at \\d+° water comes in at the rail, near .*, before it swings back");
  }

  // About twice the heel at which the same weight lies still.
  @Test
  void it_swings_further_than_it_would_rest() {
    double rests = OnPaper.heel(1000, 140, 0.2, 0.55);
    assertThat(value(found(0.2))).isGreaterThan(1.9 * rests);
  }

  // Two people sit apart: the boat is not alike on both sides, and the one at port who throws
  // themselves to starboard moves further than the other way.
  @Test
  void somebody_on_the_far_side_moves_further() {
    Body port = person(70, 0.4).at(0.3);
    Body starboard = person(70, 0.4).at(-0.3);
    Finding found =
        findings(new SuddenShift(RULES), trial(OnPaper.boat(1000), port, starboard)).get(0);
    double offset = 70 * 0.7 / MASS;
    double swing = OnPaper.root(a -> work(a) - offset * Math.sin(a), 1e-3, 0.6);
    assertThat(value(found)).isCloseTo(swing, within(1e-6));
  }

  @Test
  void a_boat_that_has_no_rest_to_start_from_falls_short_and_says_so() {
    Finding found =
        findings(new SuddenShift(RULES), trial(OnPaper.boat(1790), person(140, 0.3))).get(0);
    assertThat(found.outcome()).isEqualTo(Outcome.FALLS_SHORT);
    assertThat(FindingText.note(found)).startsWith("it sinks");
  }
}
