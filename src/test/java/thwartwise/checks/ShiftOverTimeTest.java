package thwartwise.checks;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;
import static thwartwise.checks.OnPaper.GRAVITY;
import static thwartwise.checks.OnPaper.PLANE;
import static thwartwise.checks.OnPaper.RULES;
import static thwartwise.checks.OnPaper.findings;
import static thwartwise.checks.OnPaper.person;
import static thwartwise.checks.OnPaper.trial;
import static thwartwise.checks.OnPaper.value;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Somebody of 100 kg who takes a step to the side of a box of 1000 kg. */
class ShiftOverTimeTest {
  private static final double MASS = 1100;
  private static final double DRAFT = MASS / 1000 / PLANE;
  private static final double GM = DRAFT / 2 + 1.44 / 12 / DRAFT - (1000 * 0.2 + 100 * 0.55) / MASS;

  private static Finding found(double mass, double reach) {
    List<Finding> found =
        findings(new ShiftOverTime(RULES), trial(OnPaper.boat(1000), person(mass, reach)));
    assertThat(found).hasSize(1);
    return found.get(0);
  }

  // Textbooks of vibration (FROM MEMORY): a load that rises evenly in a time s swings an undamped
  // body to 1 + |sin(pi s/T)|/(pi s/T) of where it would rest, and one put on at once to 2. The
  // period T = 2 pi k/sqrt(g GM) (references A23), k = 0.4 of 1.2 m. Under three degrees the box is
  // as
  // good as linear.
  @Test
  void a_step_swings_the_boat_by_the_factor_of_an_evenly_rising_load() {
    double rest = OnPaper.heel(1000, 100, 0.15, 0.55);
    assertThat(rest).isLessThan(Math.toRadians(3));
    double period = 2 * Math.PI * 0.48 / Math.sqrt(GRAVITY * GM);
    double turn = Math.PI * 0.75 / period;
    double factor = 1 + Math.abs(Math.sin(turn)) / turn;
    assertThat(factor).isBetween(1.0, 2.0);
    Finding found = found(100, 0.15);
    assertThat(value(found)).isCloseTo(factor * rest, within(0.02 * rest));
    assertThat(found.role()).isEqualTo(Role.INFORMATION);
    assertThat(FindingText.check(found)).isEqualTo("one person to one side in a step");
    assertThat(FindingText.condition(found))
        .isEqualTo("on paper; crew hard against the side to port within 0.75 s");
  }

  @Test
  void a_step_swings_it_further_than_it_rests_and_less_far_than_a_move_in_no_time() {
    Finding sudden =
        findings(new SuddenShift(RULES), trial(OnPaper.boat(1000), person(140, 0.2))).get(0);
    assertThat(value(found(140, 0.2))).isBetween(OnPaper.heel(1000, 140, 0.2, 0.55), value(sudden));
    assertThat(found(140, 0.2).limit()).isCloseTo(sudden.limit(), within(1e-6));
  }

  @Test
  void a_step_that_swings_it_under_falls_short() {
    Finding floods = found(200, 0.6);
    assertThat(floods.outcome()).isEqualTo(Outcome.FALLS_SHORT);
    assertThat(FindingText.note(floods)).isEqualTo("water comes in before it swings back");
  }
}
