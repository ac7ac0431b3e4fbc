package thwartwise.boat;

import static thwartwise.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thwartwise.boat.PointAnswer.PointCondition;
import thwartwise.boat.PointAnswer.PointGravity;
import thwartwise.record.SampleBoats;

/** What follows from an answer, and when it is asked for again. */
class PointAnswerTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 6, 1);
  private static final Boat PLAIN = SampleBoats.plain();

  private static PointAnswer answer(
      PointCondition condition, PointGravity gravity, int againAfter, LocalDate date, String mark) {
    return new PointAnswer(
        "point",
        "System",
        "battery",
        "The thing is so",
        condition,
        gravity,
        Optional.empty(),
        againAfter,
        "",
        "Iris",
        date,
        mark);
  }

  /** Advice is only told; what is not bad weighs nothing, however grave its point is. */
  @ParameterizedTest
  @CsvSource({
    "NOT_AS_IT_SHOULD_BE, HOLDS_THE_LAUNCH, true, true",
    "NOT_AS_IT_SHOULD_BE, PUT_RIGHT_FIRST, true, false",
    "NOT_AS_IT_SHOULD_BE, ADVICE, false, false",
    "AS_IT_SHOULD_BE, HOLDS_THE_LAUNCH, false, false",
    "AS_IT_SHOULD_BE, PUT_RIGHT_FIRST, false, false",
    "NOT_LOOKED_AT, HOLDS_THE_LAUNCH, false, false",
    "NOT_LOOKED_AT, PUT_RIGHT_FIRST, false, false",
    "DOES_NOT_APPLY, HOLDS_THE_LAUNCH, false, false"
  })
  void an_answer_is_grave_when_it_is_bad_and_more_than_advice(
      PointCondition condition, PointGravity gravity, boolean grave, boolean holds) {
    PointAnswer answer = answer(condition, gravity, 0, TODAY, "");
    assertThat(answer.isGrave()).isEqualTo(grave);
    assertThat(answer.holdsTheLaunch()).isEqualTo(holds);
  }

  /** Days after the answer, and whether the point is asked again. */
  @ParameterizedTest
  @CsvSource({
    "AS_IT_SHOULD_BE, 30, -1, true",
    "AS_IT_SHOULD_BE, 30, 0, false",
    "AS_IT_SHOULD_BE, 30, 29, false",
    "AS_IT_SHOULD_BE, 30, 30, true",
    "AS_IT_SHOULD_BE, 0, -1, true",
    "AS_IT_SHOULD_BE, 0, 3650, false",
    "DOES_NOT_APPLY, 30, -1, true",
    "DOES_NOT_APPLY, 30, 30, true",
    "NOT_LOOKED_AT, 0, 0, true",
    "NOT_AS_IT_SHOULD_BE, 30, 3650, false",
    "NOT_AS_IT_SHOULD_BE, 30, -1, false"
  })
  void an_answer_is_due_after_its_days_and_when_its_day_is_to_come(
      PointCondition condition, int againAfter, int daysLater, boolean due) {
    PointAnswer answer =
        answer(
            condition, PointGravity.ADVICE, againAfter, TODAY, PointAnswer.mark(PLAIN, "battery"));
    assertThat(answer.isDue(PLAIN, TODAY.plusDays(daysLater))).isEqualTo(due);
  }

  @Test
  void an_answer_about_something_measured_otherwise_since_is_due() {
    for (String mark : new String[] {"", PointAnswer.mark(PLAIN, "motor"), "0"}) {
      assertThat(
              answer(PointCondition.AS_IT_SHOULD_BE, PointGravity.ADVICE, 0, TODAY, mark)
                  .isDue(PLAIN, TODAY))
          .isTrue();
    }
  }
}
