package thwartwise.checklist;

import static thwartwise.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatFact;
import thwartwise.boat.PointAnswer;
import thwartwise.boat.PointAnswer.PointCondition;
import thwartwise.boat.PointAnswer.PointGravity;
import thwartwise.record.SampleBoats;

/** What is asked of a boat, and again. */
class PointQuestionTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 6, 1);
  private static final Boat PLAIN = SampleBoats.plain();
  private static final Checklist LIST =
      new Checklist(
          "Chambers",
          "each season",
          "common practice, no source",
          List.of(
              new ChecklistPoint(
                  "pocket",
                  "Every pocket is closed",
                  "feel",
                  "one opens it all",
                  Concern.AIR,
                  PointGravity.HOLDS_THE_LAUNCH,
                  Optional.of(BoatFact.CHAMBER_OPEN),
                  180)));

  private static PointAnswer answered(Boat boat, String thing, PointCondition condition) {
    return PointQuestion.of(List.of(LIST), boat).stream()
        .filter(question -> question.item().equals(thing))
        .findFirst()
        .orElseThrow()
        .answered(condition, "the lid is at home", "Iris", TODAY, boat);
  }

  @Test
  void a_point_is_asked_of_each_thing_by_itself_and_its_answer_carries_all_of_it() {
    assertThat(PointQuestion.of(List.of(LIST), PLAIN))
        .extracting(PointQuestion::item)
        .containsExactly("fore locker", "midships thwart");
    PointAnswer answer = answered(PLAIN, "fore locker", PointCondition.NOT_AS_IT_SHOULD_BE);
    assertThat(answer)
        .isEqualTo(
            new PointAnswer(
                "pocket",
                "Chambers",
                "fore locker",
                "Every pocket is closed",
                PointCondition.NOT_AS_IT_SHOULD_BE,
                PointGravity.HOLDS_THE_LAUNCH,
                Optional.of(BoatFact.CHAMBER_OPEN),
                180,
                "the lid is at home",
                "Iris",
                TODAY,
                PointAnswer.mark(PLAIN, "fore locker")));
    assertThat(answer.mark()).isNotBlank();
  }

  /** The locker is called otherwise and the list is another one: neither closes the pocket. */
  @Test
  void
      what_was_found_bad_is_asked_of_a_thing_that_is_called_otherwise_and_of_a_list_that_is_gone() {
    PointAnswer bad = answered(PLAIN, "fore locker", PointCondition.NOT_AS_IT_SHOULD_BE);
    Boat renamed =
        SampleBoats.with("\"name\": \"fore locker\"", "\"name\": \"bow box\"")
            .withPointAnswers(List.of(bad));
    assertThat(PointQuestion.of(List.of(LIST), renamed))
        .extracting(PointQuestion::item)
        .containsExactly("bow box", "midships thwart", "fore locker");
    List<PointQuestion> alone = PointQuestion.of(List.of(), renamed);
    assertThat(alone).hasSize(1).allMatch(question -> question.isAnsweredBy(bad));
    PointQuestion again = alone.get(0);
    assertThat(again.system()).isEqualTo("Chambers");
    assertThat(again.point().id()).isEqualTo("pocket");
    assertThat(again.point().look()).isEqualTo("Every pocket is closed");
    assertThat(again.point().why())
        .isEqualTo("it was found bad on 2026-06-01 and nobody said since that it is put right");
    assertThat(again.point().gravity()).isEqualTo(PointGravity.HOLDS_THE_LAUNCH);
    assertThat(again.point().fact()).contains(BoatFact.CHAMBER_OPEN);
    assertThat(again.point().repeatAfterDays()).isEqualTo(180);
    assertThat(PointQuestion.withAll(renamed, alone, "Iris", TODAY).pointAnswers())
        .containsExactly(bad);
  }

  /** A thing that is gone takes its good answers along, and those nobody gave. */
  @Test
  void what_was_found_good_of_a_thing_that_is_gone_is_dropped() {
    for (PointCondition condition : PointCondition.values()) {
      if (condition != PointCondition.NOT_AS_IT_SHOULD_BE) {
        Boat boat = PLAIN.withPointAnswers(List.of(answered(PLAIN, "fore locker", condition)));
        assertThat(PointQuestion.of(List.of(), boat)).isEmpty();
      }
    }
  }

  @Test
  void whatever_nobody_answered_stands_as_not_looked_at() {
    PointAnswer good = answered(PLAIN, "midships thwart", PointCondition.AS_IT_SHOULD_BE);
    Boat boat = PLAIN.withPointAnswers(List.of(good));
    Boat all = PointQuestion.withAll(boat, PointQuestion.of(List.of(LIST), boat), "Iris", TODAY);
    assertThat(all.pointAnswers()).hasSize(2).contains(good);
    assertThat(all.pointAnswers().get(0).condition()).isEqualTo(PointCondition.NOT_LOOKED_AT);
    assertThat(all.pointAnswers().get(0).isDue(all, TODAY)).isTrue();
    assertThat(good.isDue(all, TODAY)).isFalse();
  }

  @Test
  void an_answer_stands_in_the_place_of_an_earlier_one_to_the_same_question_alone() {
    PointAnswer fore = answered(PLAIN, "fore locker", PointCondition.NOT_AS_IT_SHOULD_BE);
    PointAnswer thwart = answered(PLAIN, "midships thwart", PointCondition.AS_IT_SHOULD_BE);
    PointAnswer mended = answered(PLAIN, "fore locker", PointCondition.AS_IT_SHOULD_BE);
    Boat boat = PointQuestion.with(PointQuestion.with(PLAIN, fore), thwart);
    assertThat(boat.pointAnswers()).containsExactly(fore, thwart);
    assertThat(PointQuestion.with(boat, mended).pointAnswers()).containsExactly(mended, thwart);
  }
}
