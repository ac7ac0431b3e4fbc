package thwartwise.walk;

import static thwartwise.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.walk.engine.Answer;
import thwartwise.walk.engine.Question;
import thwartwise.walk.engine.Reply;
import thwartwise.walk.engine.Step;

class BackAndResumeTest {
  private static final Sheet FULL = Sheet.full(true);

  @Test
  void going_back_at_every_question_and_forward_again_gives_the_same_boat() {
    List<List<Answer>> stops = FULL.stops();
    for (int i = 1; i < stops.size(); i++) {
      Reply.WentBack back = (Reply.WentBack) Sheet.WALK.take(stops.get(i), "back");
      assertThat(back.answers()).isEqualTo(stops.get(i - 1));
      Question again = Sheet.open(back.answers());
      assertThat(Sheet.answer(back.answers(), FULL.at(again))).isEqualTo(stops.get(i));
    }
  }

  @Test
  void back_from_the_end_to_the_beginning_opens_every_question_again() {
    List<Answer> answers = FULL.toTheEnd();
    for (int left = answers.size(); left > 0; left--) {
      answers = ((Reply.WentBack) Sheet.WALK.take(answers, "back")).answers();
      assertThat(answers).hasSize(left - 1);
    }
    assertThat(Sheet.open(answers).key()).isEqualTo("way");
  }

  @Test
  void a_terminal_closed_after_every_single_answer_loses_nothing() {
    Boat uninterrupted = FULL.boat();
    List<Answer> kept = List.of();
    while (Sheet.walk().next(reloaded(kept)) instanceof Step.Ask ask) {
      kept = Sheet.answer(reloaded(kept), FULL.at(ask.question()));
    }
    assertThat(Sheet.boat(reloaded(kept))).isEqualTo(uninterrupted);
  }

  private static List<Answer> reloaded(List<Answer> kept) {
    return kept.stream()
        .map(a -> new Answer(String.valueOf(a.question()), String.valueOf(a.typed())))
        .toList();
  }

  @Test
  void back_says_what_had_been_typed() {
    List<Answer> answers = FULL.upTo("hull.stations");
    assertThat(((Reply.WentBack) Sheet.WALK.take(answers, " BACK ")).note())
        .isEqualTo("Asked again. You had: Length overall: 3.658 m");
  }

  @Test
  void there_is_nothing_before_the_first_question() {
    assertThat(Sheet.WALK.take(List.of(), "back"))
        .isEqualTo(
            new Reply.Refused("This is the first question; there is nothing to go back to."));
  }

  @Test
  void every_answer_can_be_changed_and_answered_the_same_and_the_boat_is_the_same() {
    List<Answer> all = FULL.toTheEnd();
    Boat boat = Sheet.boat(all);
    for (int i = 1; i <= all.size(); i++) {
      if (all.get(i - 1).question().equals("units")) {
        continue;
      }
      List<Answer> open = ((Reply.WentBack) Sheet.WALK.take(all, "change " + i)).answers();
      assertThat(Sheet.open(open).key()).isEqualTo(all.get(i - 1).question());
      List<Answer> again = Sheet.answer(open, all.get(i - 1).typed());
      assertThat(again).isEqualTo(all);
      assertThat(Sheet.boat(again)).isEqualTo(boat);
    }
  }

  @Test
  void a_changed_answer_keeps_those_after_it() {
    List<Answer> all = FULL.toTheEnd();
    List<Answer> open = ((Reply.WentBack) Sheet.WALK.take(all, "change 56")).answers();
    assertThat(Sheet.open(open).key()).isEqualTo("hull.mass");
    assertThat(Sheet.boat(Sheet.answer(open, "71"))).isEqualTo(FULL.with("hull.mass", "71").boat());
  }

  @Test
  void the_units_cannot_be_changed_under_later_answers() {
    assertThat(Sheet.WALK.take(FULL.toTheEnd(), "change 4"))
        .isEqualTo(
            new Reply.Refused(
                "The units decide what all later numbers mean."
                    + " Go back to them with back, or start anew."));
  }

  @Test
  void change_without_a_number_on_the_list_is_refused() {
    for (String typed : List.of("change", "change 0", "change 999")) {
      assertThat(Sheet.WALK.take(FULL.upTo("water"), typed))
          .isEqualTo(
              new Reply.Refused(
                  "Type change and the number of an answer, as in change 2;"
                      + " list shows the numbers."));
    }
  }

  @Test
  void a_kept_answer_that_does_not_fit_is_asked_again_and_those_after_it_stay() {
    List<Answer> answers = spoilt(FULL.toTheEnd(), "hull.mass", "NaN");
    Step.Ask ask = (Step.Ask) Sheet.WALK.next(answers);
    assertThat(ask.question().key()).isEqualTo("hull.mass");
    assertThat(ask.note())
        .hasValue(
            "The answer kept from before does not fit here, so it is asked again."
                + " \"NaN\" is not a mass this can use."
                + " Type a mass such as 95 (kg), 500 g or 12 st 4 lb.");
    assertThat(Sheet.boat(Sheet.answer(answers, "68.0388555"))).isEqualTo(FULL.boat());
  }

  @Test
  void units_that_do_not_fit_drop_the_answers_after_them_and_it_is_said() {
    List<Answer> answers = spoilt(FULL.upTo("hull.material"), "units", "cubits");
    Reply.Accepted accepted = (Reply.Accepted) Sheet.WALK.take(answers, "feet");
    assertThat(accepted.understood())
        .isEqualTo(
            "Units: feet (the answers after it meant something else before: 3 to be asked again)");
    assertThat(accepted.answers()).hasSize(4);
  }

  @Test
  void answers_no_question_asks_for_are_left_out_and_it_is_said() {
    List<Answer> answers = new ArrayList<>(Sheet.small().toTheEnd());
    answers.add(0, new Answer("hull.wings", "2"));
    answers.add(new Answer(null, null));
    Step.Done done = (Step.Done) Sheet.WALK.next(answers);
    assertThat(done.boat()).isEqualTo(Sheet.small().boat());
    assertThat(done.note())
        .hasValue("Answers left out, because no question asks for them any more: 2.");
  }

  @Test
  void a_draft_in_another_order_gives_the_same_boat() {
    List<Answer> answers = new ArrayList<>(FULL.toTheEnd());
    java.util.Collections.reverse(answers);
    assertThat(Sheet.boat(answers)).isEqualTo(FULL.boat());
  }

  private static List<Answer> spoilt(List<Answer> answers, String key, String typed) {
    return answers.stream()
        .map(a -> a.question().equals(key) ? new Answer(key, typed) : a)
        .toList();
  }
}
