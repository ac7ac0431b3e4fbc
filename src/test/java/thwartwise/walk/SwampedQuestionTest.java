package thwartwise.walk;

import static thwartwise.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import thwartwise.boat.CrewWhenSwamped;
import thwartwise.walk.engine.Answer;

class SwampedQuestionTest {
  /** 4.2 m by 0.8 m: a canoe by its form. */
  private static Sheet canoe() {
    return Sheet.small()
        .with("hull.length", "4.2")
        .with("hull.station.1.point.2.y", "0.2")
        .with("hull.station.2.x", "2.1")
        .with("hull.station.2.point.2.y", "0.4")
        .with("hull.station.3.x", "4.2")
        .with("hull.station.3.point.2.y", "0.2")
        .with("place.1.x", "2.1")
        .with("place.1.halfWidth", "0.2");
  }

  @Test
  void the_prompt_says_what_enter_takes() {
    assertThat(Sheet.open(Sheet.small().upTo("whenSwamped")).prompt())
        .isEqualTo("When it is swamped, people (sit in it, hold on to it) [Enter: sit in it]:");
  }

  @Test
  void the_answer_is_kept_with_the_boat() {
    assertThat(Sheet.small().boat().whenSwamped()).contains(CrewWhenSwamped.SIT_IN_IT);
    assertThat(Sheet.small().with("whenSwamped", "hold").boat().whenSwamped())
        .contains(CrewWhenSwamped.HOLD_ON);
  }

  @Test
  void a_canoe_by_its_form_is_not_asked() {
    assertThat(canoe().toTheEnd())
        .extracting(Answer::question)
        .doesNotContain("whenSwamped")
        .contains("bailer");
    assertThat(Sheet.small().toTheEnd()).extracting(Answer::question).contains("whenSwamped");
  }
}
