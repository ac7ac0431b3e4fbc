package thwartwise.walk;

import static thwartwise.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.measure.PrintableText;
import thwartwise.walk.engine.Answer;
import thwartwise.walk.engine.Reply;
import thwartwise.walk.engine.Step;

/** Whatever is typed at whatever question: one reply, no exception, no answer lost. */
class OddInputTest {
  private static final List<String> ODD = OddInputs.all();
  private static final Walk KNOWING =
      Sheet.walk(Sheet.TODAY, new PreviousBoats(List.of(Sheet.full(true).boat())));

  /** Every kind of change, one after the other. */
  private static final Map<String, String> CHANGED =
      Map.ofEntries(
          Map.entry("way", "changed"),
          Map.entry("changed.boat", "gravy"),
          Map.entry("units", "metric"),
          Map.entry("changed.1", "added"),
          Map.entry("changed.1.name", "lamps"),
          Map.entry("changed.1.x", "0.4"),
          Map.entry("changed.1.y", "0"),
          Map.entry("changed.1.z", "0.3"),
          Map.entry("changed.1.in", "none"),
          Map.entry("changed.1.fastened", "yes"),
          Map.entry("changed.2", "removed"),
          Map.entry("changed.2.which", "lamps"),
          Map.entry("changed.3", "moved"),
          Map.entry("changed.3.which", "motor"),
          Map.entry("changed.3.x", "0.4"),
          Map.entry("changed.3.y", "0"),
          Map.entry("changed.3.z", "0.3"),
          Map.entry("changed.4", "chamber"),
          Map.entry("changed.4.which", "fore"),
          Map.entry("changed.4.filling", "air"),
          Map.entry("changed.4.seal", "open"),
          Map.entry("changed.5", "cut"),
          Map.entry("changed.5.kind", "other"),
          Map.entry("changed.5.into", "boat"),
          Map.entry("changed.5.name", "notch"),
          Map.entry("changed.5.x", "0"),
          Map.entry("changed.5.y", "0"),
          Map.entry("changed.5.z", "0.35"),
          Map.entry("changed.5.width", "0.2"),
          Map.entry("changed.5.closedBy", "no"),
          Map.entry("changed.5.edge", "across"),
          Map.entry("changed.6", "weight"),
          Map.entry("changed.6.mass", "70"),
          Map.entry("changed.7", "people"),
          Map.entry("changed.7.person.1.any", "no"));

  /** Every question of the three ways in, each with the answers before it. */
  static Stream<Arguments> ways() {
    return Stream.of(
        Arguments.of("own, in metres", Sheet.WALK, Sheet.small().stops()),
        Arguments.of("own, in feet", Sheet.WALK, Sheet.full(false).stops()),
        Arguments.of("own, of every kind", Sheet.WALK, ofTheirKind()),
        Arguments.of("borrowed", Sheet.WALK, Sheet.borrowed(true).stops()),
        Arguments.of("changed", KNOWING, stopsOfTheChanged()));
  }

  /** Only what the other boats are not asked. */
  private static List<List<Answer>> ofTheirKind() {
    return Sheet.everyKind(false).stops().stream()
        .filter(
            stop ->
                Sheet.next(stop) instanceof Step.Ask ask
                    && ask.question()
                        .key()
                        .matches(
                            "hull\\.(scale|centre|tilt).*|(chamber|opening)\\..*|kit.*\\.from"))
        .toList();
  }

  private static List<List<Answer>> stopsOfTheChanged() {
    List<List<Answer>> stops = new ArrayList<>(List.of(List.of()));
    List<Answer> answers = List.of();
    while (KNOWING.next(answers) instanceof Step.Ask ask) {
      String typed = CHANGED.getOrDefault(ask.question().key(), "");
      Reply reply = KNOWING.take(answers, typed);
      assertThat(reply).as(ask.question().key()).isInstanceOf(Reply.Accepted.class);
      answers = ((Reply.Accepted) reply).answers();
      stops.add(answers);
    }
    return stops;
  }

  @Test
  void there_are_more_than_two_hundred_of_them() {
    assertThat(ODD).hasSizeGreaterThan(200).doesNotHaveDuplicates();
    assertThat(stopsOfTheChanged()).hasSizeGreaterThan(CHANGED.size());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("ways")
  void odd_input_at_every_question_gets_one_harmless_line_and_loses_nothing(
      String way, Walk walk, List<List<Answer>> stops) {
    for (List<Answer> stop : stops) {
      String key = walk.next(stop) instanceof Step.Ask ask ? ask.question().key() : "the end";
      ODD.forEach(typed -> survives(walk, stop, key, typed));
    }
  }

  private static void survives(Walk walk, List<Answer> stop, String key, String typed) {
    Reply reply = walk.take(stop, typed);
    if (reply instanceof Reply.Accepted accepted) {
      int more = accepted.answers().size() - stop.size();
      assertThat(more)
          .as("%s at %s", typed, key)
          .isEqualTo(saysAnother(accepted, stop) ? 2 : isRow(typed) ? more : 1);
      assertThat(more).isPositive();
      assertThat(accepted.answers().subList(0, stop.size())).isEqualTo(stop);
      accepted.understood().lines().forEach(OddInputTest::harmless);
    } else {
      assertThat(reply).isInstanceOf(Reply.Refused.class);
      harmless(((Reply.Refused) reply).reason());
    }
  }

  private static boolean isRow(String typed) {
    return typed.contains(";");
  }

  /** The first value of another thing says that there is one, that it has no name or one mass. */
  private static boolean saysAnother(Reply.Accepted accepted, List<Answer> stop) {
    Answer next = accepted.answers().get(stop.size());
    return next.question().endsWith(".any")
            && next.typed().equals("yes")
            && accepted.answers().size() == stop.size() + 2
        || accepted.answers().size() > stop.size() + 1
            && next.question().matches("hull.station.\\d+.name|hull.weighed")
            && next.typed().isEmpty();
  }

  private static void harmless(String line) {
    assertThat(line).isNotBlank().hasSizeLessThan(600);
    assertThat(line.codePoints()).allMatch(PrintableText::isHarmless);
  }

  @Test
  void odd_answers_in_a_draft_stop_the_walk_at_their_question_and_nowhere_else() {
    List<Answer> all = Sheet.small().toTheEnd();
    for (int i = 0; i < all.size(); i++) {
      String key = all.get(i).question();
      for (String typed : List.of("\u0000", "x".repeat(1_000_000))) {
        List<Answer> spoilt =
            all.stream().map(a -> a.question().equals(key) ? new Answer(key, typed) : a).toList();
        Step.Ask ask = (Step.Ask) Sheet.WALK.next(spoilt);
        assertThat(ask.question().key()).isEqualTo(key);
        assertThat(ask.note()).isPresent();
        harmless(ask.note().orElseThrow());
      }
    }
  }
}
