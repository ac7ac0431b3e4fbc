package thwartwise.walk;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thwartwise.walk.engine.Answer;
import thwartwise.walk.engine.Question;
import thwartwise.walk.engine.Reply;
import thwartwise.walk.engine.Step;

/** Answers in the words in which people give them. The day is Saturday, 9 May 2026. */
class AnswersAsGivenTest {
  private static final Sheet METRIC = Sheet.full(true);
  private static final Sheet FEET = CountedWalks.longBench();

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          way                    | my own             | Your own boat, or a borrowed one: own
          measuredBy             | don't know         | Who measures: not said
          measuredBy             | -                  | Who measures: not said
          hull.material          | marine ply         | What the hull is made of: plywood
          hull.material          | ply                | What the hull is made of: plywood
          hull.stations          | three              | How many stations: 3
          opening.1.any          | none               | Is there any notch, drain, hatch or cable hole? no
          kit.1.any              | -                  | Is any kit carried? no
          hull.decked.1.any      | not sure           | Is any length of the boat decked over? no
          hull.centre            | don't know         | Do you know where the bare hull balances? no
          opening.1.closedBy     | none               | Opening "motor notch", closed under way by: nothing
          opening.1.closedBy     | don't know         | Opening "motor notch", closed under way by: nothing
          chamber.1.seal         | not tested         | Chamber "fore locker", its seal is: claimed (it counts for nothing until a leak test is recorded)
          chamber.1.seal         | sealed but never tested | Chamber "fore locker", its seal is: claimed (it counts for nothing until a leak test is recorded)
          chamber.1.seal         | Not sure           | Chamber "fore locker", its seal is: claimed (it counts for nothing until a leak test is recorded)
          chamber.1.test.date    | yesterday          | Chamber "fore locker", leak test done on: 2026-05-08
          chamber.1.test.date    | last Saturday      | Chamber "fore locker", leak test done on: 2026-05-02
          chamber.1.test.date    | two weeks ago      | Chamber "fore locker", leak test done on: 2026-04-25
          chamber.1.test.date    | 21/4/2026          | Chamber "fore locker", leak test done on: 2026-04-21
          chamber.1.test.date    | 4/21/2026          | Chamber "fore locker", leak test done on: 2026-04-21
          chamber.1.test.date    | 5/4/2026           | ?"5/4/2026" may be 5 April 2026 or 4 May 2026: which is the month? Type 2026-04-05 or 2026-05-04.
          chamber.1.test.date    | 3/10/2025          | ?"3/10/2025" may be 3 October 2025 or 10 March 2025: which is the month? Type 2025-10-03 or 2025-03-10.
          chamber.1.test.date    | 2 May 2026         | Chamber "fore locker", leak test done on: 2026-05-02
          chamber.1.test.date    | May 2nd, 2026      | Chamber "fore locker", leak test done on: 2026-05-02
          chamber.3.closed       | don't know         | Chamber "side foam", is the foam closed-cell? no (such foam counts for nothing)
          chamber.1.litres       | not measured       | Chamber "fore locker", it holds: not measured
          kit.1.fastened         | not sure           | Kit "battery", is it fastened? no
          kit.1.litres           | no                 | Kit "battery", its own volume: gives no lift
          bailer                 | bucket             | Bailer or bucket aboard, it holds: 10 l, a guess, counted as 7.5 l
          bailer                 | none               | Bailer or bucket aboard, it holds: none aboard
          propulsion.power       | 55 lb thrust       | Power of the motor: 660 W (55 lb of thrust at 12 W a pound, a rule of thumb for motors of 12 V), a guess, counted as 825 W
          waters.sheltered       | don't know         | Only sheltered, warm water close to the shore? no
          whenSwamped            | don't know         | When it is swamped, people: sit in it
          hull.alike             | don't know         | ?Without it nothing can be worked out, and a guess would not be on the cautious side. Type why to see how it is found, or stop to keep all answers and come back with it.
          """)
  void an_answer_as_people_give_it(String key, String typed, String reply) {
    assertReply(METRIC, key, typed, reply);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          hull.length            | 12.5   | ?1 ft 1/2 in is not between 5 and 26 ft, the length of any boat this is for. Did you mean 12 ft 6 in?
          hull.station.2.x       | 12.5   | ?"12.5": feet or inches? 12 ft 6 in, or 1 ft 1/2 in.
          kit.1.x                | 15,67  | ?"15,67": feet or inches? 15 ft 8 1/16 in, or 1 ft 3 11/16 in.
          hull.station.2.x       | 12.5 indeed | Station 2 "station 2", forward of the aft end: 1 ft 1/2 in
          hull.station.2.point.2.y | 21.5 | Station 2 "station 2", chine, half-breadth: 1 ft 9 1/2 in
          """)
  void feet_and_inches(String key, String typed, String reply) {
    assertReply(FEET, key, typed, reply);
  }

  private static final Map<String, List<List<Answer>>> STOPS = new ConcurrentHashMap<>();

  /** The walk up to a question, without walking there anew each time. */
  private static List<Answer> upTo(Sheet sheet, String key) {
    return STOPS.computeIfAbsent(sheet.typed().get("name"), name -> sheet.stops()).stream()
        .filter(stop -> stop.size() < last(sheet).size())
        .filter(stop -> last(sheet).get(stop.size()).question().equals(key))
        .findFirst()
        .orElseThrow();
  }

  private static List<Answer> last(Sheet sheet) {
    List<List<Answer>> stops = STOPS.get(sheet.typed().get("name"));
    return stops.get(stops.size() - 1);
  }

  private static void assertReply(Sheet sheet, String key, String typed, String reply) {
    Reply taken = Sheet.WALK.take(upTo(sheet, key), typed);
    if (reply.startsWith("?")) {
      assertThat(((Reply.Refused) taken).reason()).isEqualTo(reply.substring(1));
    } else {
      assertThat(((Reply.Accepted) taken).understood()).isEqualTo(reply);
    }
  }

  @Test
  void a_day_typed_as_a_word_is_kept_as_a_date() {
    List<Answer> before = upTo(METRIC, "chamber.1.test.date");
    assertThat(Sheet.answer(before, "yesterday"))
        .contains(new Answer("chamber.1.test.date", "2026-05-08"));
  }

  /** What stands in a prompt can be typed there. */
  @Test
  void every_word_shown_in_a_prompt_is_accepted() {
    for (Sheet sheet : List.of(Sheet.small(), Sheet.borrowedAndTried())) {
      for (List<Answer> sofar : sheet.stops()) {
        if (Sheet.next(sofar) instanceof Step.Ask ask) {
          ask.question().skipped().ifPresent(word -> assertTaken(sofar, ask.question(), word));
        }
      }
    }
  }

  private static void assertTaken(List<Answer> sofar, Question question, String word) {
    assertThat(Sheet.WALK.take(sofar, word))
        .as(question.prompt())
        .isInstanceOf(Reply.Accepted.class);
    assertThat(((Reply.Accepted) Sheet.WALK.take(sofar, word)).understood())
        .isEqualTo(((Reply.Accepted) Sheet.WALK.take(sofar, "")).understood());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          kit.1.name     | 4"; 2; 0 | Value 1 of the row, "4"" for Kit, name: "4"" is an answer to another question, and a name is asked for. Type a name, or back. Nothing of the row was taken.
          kit.1.name     | yes      | "yes" is an answer to another question, and a name is asked for. Type a name, or back.
          chamber.1.name | 3 ft     | "3 ft" is an answer to another question, and a name is asked for. Type a name, or back.
          place.1.name   | not sure | "not sure" is an answer to another question, and a name is asked for. Type a name, or back.
          """)
  void a_name_that_is_another_answer_is_refused(String key, String typed, String reply) {
    assertReply(METRIC, key, typed, "?" + reply);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          kit.1.mass             | 0      | 0 lb is not more than nothing and at most 661 lb, the mass of a piece of kit. Measure it again.
          hull.thickness         | 5"     | 5 in is not between 1/32 and 2 1/4 in, the thickness of such shells. Did you mean 3/16 in?
          hull.station.2.x       | 16'    | 16 ft 0 in is not between 0 and 15 ft, the length overall and a hand's breadth. Did you mean 6 ft 3 9/16 in?
          hull.scale.aft.x       | 16'    | 16 ft 0 in is not between 0 and 15 ft 8 in, the length of the hull. Did you mean 6 ft 3 9/16 in?
          person.1.mass          | 5      | 5 lb is not between 18 and 440 lb, the mass of one person. Measure it again.
          """)
  void limits_are_given_as_a_person_says_them(String key, String typed, String reply) {
    assertReply(FEET, key, typed, "?" + reply);
  }

  @Test
  void keep_is_only_offered_where_the_value_can_be_used() {
    Reply.Refused tooLong = (Reply.Refused) Sheet.WALK.take(upTo(METRIC, "hull.length"), "30");
    assertThat(tooLong.insisted()).isEmpty();
    Reply.Refused perhaps = (Reply.Refused) Sheet.WALK.take(upTo(METRIC, "hull.length"), "8.5");
    assertThat(perhaps.insisted()).hasValue("8.5 indeed");
    Reply.Refused lid =
        (Reply.Refused) Sheet.WALK.take(upTo(METRIC, "opening.1.closedBy"), "yes indeed");
    assertThat(lid.insisted()).isEmpty();
  }
}
