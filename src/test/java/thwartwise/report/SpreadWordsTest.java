package thwartwise.report;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.checks.CheckId;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.Measure;
import thwartwise.inspection.PlainHulls;
import thwartwise.loadcase.Allowance;
import thwartwise.measure.UnitFormat;
import thwartwise.spread.BoatSpread;
import thwartwise.spread.CrewChance;
import thwartwise.spread.InputKind;
import thwartwise.spread.Remeasurement;

/** Wording: the figures are made up. */
class SpreadWordsTest {
  private static List<String> onScreen(
      int searched, int recommended, double each, List<CrewChance> chances, int reached) {
    BoatSpread spread =
        new BoatSpread(
            95,
            searched,
            95,
            recommended,
            each,
            chances,
            List.of(),
            List.of(),
            List.of(),
            List.of(
                new Remeasurement(
                    InputKind.HULL_MASS,
                    "",
                    CheckQuestion.of(CheckId.FREEBOARD_AT_REST, Measure.FREEBOARD),
                    0.6,
                    reached)),
            30,
            new Allowance(1.05, 0.9, 0.02));
    return new SpreadWords(PlainHulls.skiff(), spread, UnitFormat.METRIC).onScreen();
  }

  @Test
  void a_sure_answer_says_in_how_many_boats_it_would_be_fewer_and_what_one_weighing_could_gain() {
    assertThat(onScreen(2, 2, 95, List.of(new CrewChance(1, 1), new CrewChance(2, 0.974)), 3))
        .containsExactly(
            "Two adults; in 3 of 100 boats measured like this it would be one",
            "Weigh the bare hull, one end after the other on bathroom scales on hard ground: could"
                + " be three adults");
  }

  @Test
  void a_lowered_answer_says_from_what() {
    assertThat(onScreen(2, 1, 95, List.of(new CrewChance(1, 0.96), new CrewChance(2, 0.8)), 1))
        .containsExactly(
            "One adult; in 4 of 100 boats measured like this it would be none",
            "Two adults would be too many: fewer than 95 of 100 boats measured like this carry"
                + " them");
  }

  @Test
  void one_light_person_is_told_with_the_mass() {
    assertThat(onScreen(1, 1, 78, List.of(new CrewChance(1, 0.96)), 1).get(0))
        .isEqualTo(
            "One person of 78\u00a0kg; in 4 of 100 boats measured like this it would be none");
  }

  @Test
  void a_boat_that_carries_nobody_says_whether_measuring_better_could_change_it() {
    assertThat(onScreen(0, 0, 95, List.of(new CrewChance(1, 0.1)), 0))
        .containsExactly("Measuring better would not let anybody go");
    assertThat(onScreen(0, 0, 95, List.of(new CrewChance(1, 0.9)), 1))
        .containsExactly(
            "Weigh the bare hull, one end after the other on bathroom scales on hard ground: could"
                + " be one adult");
  }
}
