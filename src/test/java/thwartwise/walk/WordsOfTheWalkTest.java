package thwartwise.walk;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Propulsion;
import thwartwise.walk.engine.Answer;
import thwartwise.walk.engine.Reply;

class WordsOfTheWalkTest {
  private static final Sheet SMALL = Sheet.small();

  @Test
  void list_shows_the_answers_so_far_with_their_numbers() {
    assertThat(Sheet.WALK.take(SMALL.upTo("hull.length"), "list"))
        .isEqualTo(
            new Reply.Listed(
                String.join(
                    "\n",
                    "  1. Your own boat, or a borrowed one: own",
                    "  2. Name of the boat: Bath Mat",
                    "  3. Who measures: not said",
                    "  4. Units: metric",
                    "  5. Water: fresh",
                    "  6. How it is driven: manual",
                    "  7. What the hull is made of: plywood",
                    "  8. Thickness of the shell: 12 mm, thick for it, not measured")));
  }

  @Test
  void list_before_the_first_answer_says_so() {
    assertThat(Sheet.WALK.take(List.of(), "list")).isEqualTo(new Reply.Listed("No answers yet."));
  }

  @Test
  void why_tells_how_to_measure_and_what_for() {
    Reply.Explained why =
        new Reply.Explained(
            """
        Plumb both ends down to the ground and tape between the marks. In a row with ;
        between; the length alone: the rest is asked, or comes as a table of stations.
        It is only used to find slips of the tape in the answers that follow.
        Type a length such as 1.02 (metres), 102 cm or 3' 4 1/2".
        Or the whole row, with ; between; what the row leaves out is asked after it.
        It cannot be left out: without it nothing can be worked out.
        There is a sketch: type show.""");
    for (String word : List.of("why", "WHY", " help ", "?")) {
      assertThat(Sheet.WALK.take(SMALL.upTo("hull.length"), word)).isEqualTo(why);
    }
  }

  @Test
  void skip_takes_what_enter_takes_and_says_so() {
    List<Answer> before = SMALL.upTo("hull.thickness");
    assertThat(Sheet.WALK.take(before, "skip")).isEqualTo(Sheet.WALK.take(before, ""));
    assertThat(SMALL.accepted("hull.thickness", "skip"))
        .isEqualTo("Thickness of the shell: 12 mm, thick for it, not measured");
  }

  @Test
  void what_cannot_be_left_out_says_so() {
    assertThat(SMALL.refused("hull.mass", "skip"))
        .isEqualTo(
            "It cannot be left out: without it nothing can be worked out."
                + " Type stop to keep all answers and come back with it.");
  }

  @Test
  void show_draws_what_is_measured_where() {
    Reply.Explained drawn =
        (Reply.Explained) Sheet.WALK.take(SMALL.upTo("hull.station.2.point.2.y"), "show");
    assertThat(drawn.text()).contains("half-breadth", "baseline", "keel", "chine", "rail");
    assertThat(drawn.text().lines()).allMatch(line -> line.length() <= 78);
    assertThat(Sheet.WALK.take(SMALL.upTo("water"), "show"))
        .isEqualTo(
            new Reply.Explained("There is no sketch for this one; why tells how to measure it."));
  }

  @Test
  void why_says_what_becomes_of_it_when_it_is_left_out() {
    Reply.Explained why = (Reply.Explained) Sheet.WALK.take(SMALL.upTo("hull.thickness"), "why");
    assertThat(why.text())
        .contains("Enter or skip leaves it out: 12 mm, thick for it, not measured.");
  }

  @Test
  void stop_says_how_much_is_kept() {
    assertThat(Sheet.WALK.take(SMALL.upTo("hull.length"), "stop"))
        .isEqualTo(new Reply.Stopped("Stopped. Your 8 answers are kept."));
    assertThat(Sheet.WALK.take(SMALL.upTo("name"), "stop"))
        .isEqualTo(new Reply.Stopped("Stopped. Your answer is kept."));
  }

  @Test
  void after_the_last_question_an_answer_is_refused_and_back_still_works() {
    List<Answer> all = SMALL.toTheEnd();
    assertThat(Sheet.WALK.take(all, "yes"))
        .isEqualTo(
            new Reply.Refused(
                "Every question is answered."
                    + " Type back to return to the last one, or list to see them all."));
    assertThat(Sheet.open(((Reply.WentBack) Sheet.WALK.take(all, "back")).answers()).key())
        .isEqualTo("finish");
  }

  @Test
  void the_answer_is_repeated_in_the_unit_it_was_understood_in() {
    assertThat(SMALL.accepted("hull.length", "8' 2\""))
        .isEqualTo("Length overall: 8 ft 2 in (2.489 m)");
    assertThat(SMALL.accepted("hull.station.2.point.2.y", "60 cm"))
        .isEqualTo("Station 2 \"station 2\", rail, half-breadth: 0.60 m");
    assertThat(SMALL.accepted("hull.alike", "yes")).isEqualTo("Are port and starboard alike? yes");
  }

  @Test
  void a_rowed_boat_is_not_asked_for_power() {
    assertThat(SMALL.boat().propulsion()).isEqualTo(new Propulsion.Manual());
    assertThat(SMALL.toTheEnd()).extracting(Answer::question).doesNotContain("propulsion.power");
  }

  @Test
  void the_opening_tells_what_to_do_if_nothing_else_is_done() {
    assertThat(Walk.OPENING)
        .startsWith("If you do nothing else: everybody wears a life jacket, weigh everybody")
        .contains("counts for nothing", "help start");
    assertThat(Walk.OPENING.lines()).hasSize(6);
    Reply.Explained rest = (Reply.Explained) Sheet.WALK.take(List.of(), "help start");
    assertThat(rest.text())
        .contains("knee-deep", "everyone to one side", "swamp it", "same as 3", "in a row");
    assertThat(rest.text().lines()).allMatch(line -> line.length() <= 81);
    assertThat(Walk.OPENING.lines()).allMatch(line -> line.length() < 80);
  }
}
