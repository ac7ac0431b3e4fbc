package thwartwise.checks;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;
import static thwartwise.checks.OnPaper.DEPTH;
import static thwartwise.checks.OnPaper.GRAVITY;
import static thwartwise.checks.OnPaper.PLANE;
import static thwartwise.checks.OnPaper.RULES;
import static thwartwise.checks.OnPaper.findings;
import static thwartwise.checks.OnPaper.person;
import static thwartwise.checks.OnPaper.trial;
import static thwartwise.checks.OnPaper.value;

import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.loadcase.LoadedBoat;

/** A box of 900 kg and somebody stiff of 200 kg hard against one side of it. */
class LowSideTest {
  private static final double MASS = 1100;
  private static final double DRAFT = MASS / 1000 / PLANE;
  private static final double BM = 0.12 / DRAFT;
  private static final double GM = DRAFT / 2 + BM - (900 * 0.2 + 200 * 0.55) / MASS;
  private static final double FLOODS = Math.atan((DEPTH - DRAFT) / 0.6);

  // Energy over weight of the wall-sided, as in SuddenShiftTest.
  private static double energy(double heel, double reach) {
    double cos = Math.cos(heel);
    return GM * (1 - cos) + BM / 2 * (1 / cos + cos - 2) - 200 * reach / MASS * Math.sin(heel);
  }

  private static double work(double reach) {
    double rest = OnPaper.heel(900, 200, reach, 0.55);
    return MASS * GRAVITY * (energy(FLOODS, reach) - energy(rest, reach));
  }

  private static Finding found(double reach) {
    List<Finding> found =
        findings(new LowSide(RULES), trial(OnPaper.boat(900), person(200, reach)));
    assertThat(found).hasSize(1);
    return found.get(0);
  }

  // The least energy is taken at whole degrees, so at most half a degree from where it rests:
  // W GM' (0.0087)²/2, under 0.2 Nm here.
  @Test
  void the_work_to_flooding_is_that_of_paper() {
    Finding found = found(0.3);
    assertThat(FindingText.check(found))
        .isEqualTo("righting with everyone on the low side, work to flooding");
    assertThat(found.role()).isEqualTo(Role.INFORMATION);
    assertThat(value(found)).isCloseTo(work(0.3), within(0.2));
    assertThat(found.limit()).isEqualTo(20);
    assertThat(FindingText.condition(found))
        .isEqualTo("on paper; everyone stiff on the low side, to port");
    LoadedBoat trial = trial(OnPaper.boat(900), person(200, 0.3));
    assertThat(FindingText.note(new LowSide(RULES).readings(trial).get(0)))
        .startsWith(
            "to port it ends at " + (int) Math.floor(Math.toDegrees(FLOODS)) + " degrees, because")
        .contains(" reaches the water; the righting moment is at most ");
  }

  // 20 Nm: the reach at which paper leaves just that.
  @Test
  void it_falls_short_just_past_the_reach_paper_finds() {
    double reach = OnPaper.root(r -> work(r) - 20, 0.1, 0.5);
    assertThat(found(reach - 0.005).outcome()).isNotEqualTo(Outcome.FALLS_SHORT);
    assertThat(found(reach + 0.005).outcome()).isEqualTo(Outcome.FALLS_SHORT);
  }

  // 300 kg reaching 0.6 m: past where the rail goes under, nothing rights it.
  @Test
  void a_boat_nothing_brings_back_has_no_work_left() {
    Finding found = findings(new LowSide(RULES), trial(OnPaper.boat(900), person(300, 0.6))).get(0);
    assertThat(value(found)).isZero();
    assertThat(FindingText.note(found)).endsWith("; nothing brings it back");
    assertThat(found.outcome()).isEqualTo(Outcome.FALLS_SHORT);
  }
}
