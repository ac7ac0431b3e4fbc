package thwartwise.walk;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.boat.Kit;
import thwartwise.walk.engine.Answer;
import thwartwise.walk.engine.Reply;

/** The place a motor is steered from, where there is more than one: stern seat or thwart. */
class WorkingPlacesTest {
  private static final Sheet FULL = Sheet.full(true);
  private static final String MOTOR = "kit.2.workedFrom";

  private static Kit motor(Boat boat) {
    return boat.kit().get(1);
  }

  @Test
  void enter_leaves_it_at_the_nearest_place_which_is_named() {
    assertThat(Sheet.open(FULL.upTo(MOTOR)).prompt())
        .isEqualTo("Kit \"motor\", steered from (its name) [Enter: stern seat, nearest]:");
    assertThat(motor(FULL.boat()).workedFrom()).isEmpty();
    assertThat(motor(FULL.with(MOTOR, "stern").boat()).workedFrom()).contains("stern seat");
  }

  // The motor hangs 0.0762 m behind the aft end, the thwart is 1.7018 m forward of it.
  @Test
  void a_place_out_of_reach_is_asked_about_and_may_be_kept() {
    assertThat(FULL.refused(MOTOR, "midships thwart"))
        .isEqualTo(
            "The motor is 1.778 m from there: more than an arm and a tiller (1.00 m), so only with an"
                + " extension. Did you mean the stern seat?");
    assertThat(motor(FULL.with(MOTOR, "midships thwart indeed").boat()).workedFrom())
        .contains("midships thwart");
  }

  @Test
  void oars_are_rowed_from_a_place_across_the_boat() {
    List<Answer> answers = FULL.upTo("kit.3.any");
    answers =
        ((Reply.Accepted) Sheet.WALK.take(answers, "pair of oars; 4; 1.6; 0; 0.4; no; none; mid"))
            .answers();
    assertThat(answers.get(answers.size() - 1)).isEqualTo(new Answer("kit.3.workedFrom", "mid"));
  }

  @Test
  void nobody_is_asked_of_a_paddle_a_battery_of_a_motor_or_where_there_is_one_place() {
    List<Answer> answers = FULL.upTo("kit.3.any");
    for (String name : List.of("paddle", "motor battery", "anchor")) {
      List<Answer> row =
          ((Reply.Accepted) Sheet.WALK.take(answers, name + "; 4; 1; 0; 0.1; no; none")).answers();
      assertThat(Sheet.open(row).key()).isEqualTo("kit.4.any");
    }
    assertThat(
            Sheet.small()
                .with("kit.1.any", "yes")
                .with("kit.1.name", "motor")
                .with("kit.1.mass", "9")
                .with("kit.1.x", "0")
                .with("kit.1.z", "0.4")
                .with("kit.1.fastened", "no")
                .toTheEnd())
        .extracting(Answer::question)
        .contains("kit.1.fastened")
        .doesNotContain("kit.1.workedFrom");
  }
}
