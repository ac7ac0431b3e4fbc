package thwartwise.walk;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.walk.engine.Answer;
import thwartwise.walk.engine.QuestionDefinition;
import thwartwise.walk.engine.WordQuestions;

/** A walk reads no answer twice; one that reads them all anew asks the same. */
class ReplayCacheTest {
  private static final long SEED = 20261127;

  static Stream<Sheet> sheets() {
    return Stream.of(Sheet.full(false), Sheet.borrowed(true));
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void a_walk_that_has_heard_others_before_asks_what_a_new_one_asks(Sheet sheet) {
    List<List<Answer>> stops = sheet.stops();
    Walk remembering = Sheet.walk();
    Random random = new Random(SEED);
    for (List<Answer> stop : stops) {
      Walk anew = Sheet.walk();
      assertThat(remembering.next(stop)).isEqualTo(anew.next(stop));
      assertThat(remembering.partialBoat(stop)).isEqualTo(anew.partialBoat(stop));
      // Shorter, longer, or the same with one changed: the next stop follows something else.
      remembering.next(stops.get(random.nextInt(stops.size())));
      remembering.next(withAnotherAnswer(stop, random));
    }
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void another_answer_is_read_and_not_the_one_before_it(Sheet sheet) {
    List<Answer> all = sheet.toTheEnd();
    Walk remembering = Sheet.walk();
    Random random = new Random(SEED);
    for (int tried = 0; tried < 60; tried++) {
      List<Answer> other = withAnotherAnswer(all, random);
      remembering.next(all);
      assertThat(remembering.next(other)).isEqualTo(Sheet.walk().next(other));
      assertThat(remembering.take(other, "list")).isEqualTo(Sheet.walk().take(other, "list"));
    }
  }

  private static List<Answer> withAnotherAnswer(List<Answer> answers, Random random) {
    if (answers.isEmpty()) {
      return answers;
    }
    Answer changed = answers.get(random.nextInt(answers.size()));
    String other = List.of("no", "0.3", "1", "yes", "").get(random.nextInt(5));
    return answers.stream()
        .map(a -> a.equals(changed) ? new Answer(a.question(), other) : a)
        .toList();
  }

  @Test
  void two_walks_by_turns_read_each_of_their_answers_once() {
    AtomicInteger reads = new AtomicInteger();
    List<QuestionDefinition<?>> asked =
        IntStream.range(0, 5).<QuestionDefinition<?>>mapToObj(i -> counted(i, reads)).toList();
    Walk walk = Walk.asking(Sheet.small().boat(), asked);
    for (int answers = 1; answers <= 5; answers++) {
      walk.next(numbered(answers, "1"));
      walk.next(numbered(answers, "2"));
    }
    assertThat(reads).hasValue(2 * 5);
  }

  private static QuestionDefinition<Integer> counted(int question, AtomicInteger reads) {
    return WordQuestions.whole("q" + question, "How many", 0, 9)
        .unless(
            number -> {
              reads.incrementAndGet();
              return Optional.empty();
            });
  }

  private static List<Answer> numbered(int answers, String typed) {
    return IntStream.range(0, answers).mapToObj(i -> new Answer("q" + i, typed)).toList();
  }
}
