package thwartwise.walk;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thwartwise.walk.engine.Answer;
import thwartwise.walk.engine.Question;
import thwartwise.walk.engine.Reply;
import thwartwise.walk.engine.Step;
import thwartwise.walk.engine.WalkSection.WalkPosition;

/** How far a walk has come, what the hull looks like by then, and typing less. */
class WhereAmITest {
  private static final Sheet LONG = CountedWalks.longBench();
  private static final List<List<Answer>> STOPS = LONG.stops();

  private static WalkPosition at(List<Answer> answers) {
    return ((Step.Ask) Sheet.next(answers)).position().orElseThrow();
  }

  @Test
  void every_question_after_the_first_says_its_section_and_how_many_are_left() {
    int before = 0;
    for (List<Answer> stop : STOPS.subList(1, STOPS.size() - 1)) {
      WalkPosition position = at(stop);
      assertThat(position.of()).isEqualTo(8);
      assertThat(position.number()).isGreaterThanOrEqualTo(Math.max(1, before));
      assertThat(position.remaining()).isPositive();
      before = position.number();
    }
    assertThat(before).isEqualTo(8);
  }

  @Test
  void it_is_one_line() {
    assertThat(at(LONG.upTo("whenSwamped")).words()).startsWith("Section 8 of 8");
    assertThat(new WalkPosition("chambers and foam", 5, 8, 83).words())
        .isEqualTo("Section 5 of 8, chambers and foam, about 80 values left.");
    assertThat(new WalkPosition("kit", 7, 8, 12).words())
        .isEqualTo("Section 7 of 8, kit, about 10 values left.");
    assertThat(new WalkPosition("kit", 7, 8, 2).words())
        .isEqualTo("Section 7 of 8, kit, a few values left.");
  }

  @Test
  void the_hull_is_drawn_from_above_and_from_the_side_to_one_scale() {
    Question looks = Sheet.open(Sheet.small().upTo("hull.looks"));
    assertThat(looks.prompt()).isEqualTo("Does this look like your boat? (yes, no) [Enter: yes]:");
    assertThat(String.join("\n", looks.how()))
        .isEqualTo(
            """
            From above, the bow on the right:
                                              ...o
                      ........................    ........
              o.......                                    ........
              .                                                   ........
              .                                                           ........
              .                                                                   .o
              .                                                                    .
              .                                                                    .
              .                                                                    .
              o..................................o.................................o
              .                                                                    .
              .                                                                    .
              .                                                                    .
              .                                                                   .o
              .                                                           ........
              .                                                   ........
              o.......                                    ........
                      ........................    ........
                                              ...o
            From the side, to the same scale:
                                                               ....................o
              o..................................o.............                    .
              .                                                                    .
              .                                                                    .
              .                                                                    .
              .                                                                    .
              o..............                                ......................o
                             ....................o...........
            no: type list, then change and the number of the answer that is wrong.""");
  }

  @Test
  void a_hull_that_looks_wrong_is_mended_before_the_walk_goes_on() {
    assertThat(Sheet.small().refused("hull.looks", "no"))
        .isEqualTo(
            "Then type list, and change with the number of the answer that is wrong; or back.");
  }

  @Test
  void rows_wherever_there_is_one_take_a_third_of_the_lines() {
    assertThat(CountedWalks.rows(Sheet.WALK, LONG).lines()).isLessThanOrEqualTo(60);
  }

  @Test
  void a_thing_like_another_takes_one_word() {
    List<Answer> before = LONG.upTo("chamber.2.test.date");
    Reply.Accepted same = (Reply.Accepted) Sheet.WALK.take(before, "same as 1");
    assertThat(same.answers().subList(before.size(), same.answers().size()))
        .extracting(Answer::question)
        .containsExactly("chamber.2.test.date", "chamber.2.test.how");
    assertThat(LONG.refused("chamber.1.test.date", "same"))
        .isEqualTo(
            "There is no number 0 whose answers fit here. Type same as and its number, or answer; a"
                + " name is its own.");
  }

  /** It copied the place as well: two motors lay in one spot. */
  @Test
  void a_piece_of_kit_like_another_is_asked_where_it_lies() {
    Sheet full = Sheet.full(true);
    assertThat(same(full.upTo("kit.2.mass"))).containsExactly("kit.2.mass");
    assertThat(same(full.upTo("kit.2.x"))).containsExactly("kit.2.x");
    assertThat(same(full.upTo("kit.2.z"))).startsWith("kit.2.z", "kit.2.fastened");
    assertThat(same(full.upTo("place.2.lies"))).containsExactly("place.2.lies");
    assertThat(same(full.upTo("place.2.z")))
        .containsExactly("place.2.z", "place.2.halfWidth", "place.2.people");
  }

  private static List<String> same(List<Answer> before) {
    Reply.Accepted same = (Reply.Accepted) Sheet.WALK.take(before, "same");
    return same.answers().subList(before.size(), same.answers().size()).stream()
        .map(Answer::question)
        .toList();
  }

  /** A test and a jug say something of the chamber they were at, and of no other. */
  @ParameterizedTest
  @ValueSource(strings = {"chamber.2.test.minutes", "chamber.2.test.litresIn", "chamber.2.litres"})
  void what_was_measured_of_another_chamber_is_not_copied(String question) {
    assertThat(LONG.refused(question, "same as 1"))
        .isEqualTo(
            "What was measured of another chamber says nothing about this one. Type what this one"
                + " showed.");
  }

  @Test
  void a_station_like_another_takes_how_far_forward_and_one_word() {
    Sheet small = Sheet.small();
    List<Answer> before = small.upTo("hull.station.2.point.1.z");
    Reply.Accepted same = (Reply.Accepted) Sheet.WALK.take(before, "same as station 1");
    assertThat(same.understood())
        .isEqualTo(
            """
            Station 2 "station 2", keel, height: 60 mm
              Station 2 "station 2", rail, half-breadth: 0.50 m
              Station 2 "station 2", rail, height: 0.44 m""");
  }

  @Test
  void a_draft_of_an_earlier_version_keeps_its_answers_of_questions_no_longer_asked() {
    List<Answer> all = new java.util.ArrayList<>(Sheet.small().toTheEnd());
    all.removeIf(a -> a.question().equals("hull.looks"));
    all.add(new Answer("hull.station.2.upright", "no"));
    Step.Ask ask = (Step.Ask) Sheet.WALK.next(all);
    assertThat(ask.question().key()).isEqualTo("hull.station.2.point.1.x");
    all.removeIf(a -> a.question().equals("hull.station.2.upright"));
    all.add(new Answer("hull.station.2.upright", ""));
    ask = (Step.Ask) Sheet.WALK.next(all);
    assertThat(ask.question().key()).isEqualTo("hull.looks");
    assertThat(Sheet.boat(Sheet.answer(all, ""))).isEqualTo(Sheet.small().boat());
  }
}
