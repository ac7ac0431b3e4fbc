package thwartwise.walk.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.Supplier;
import thwartwise.walk.engine.ReplayResult.AcceptedAnswer;

/**
 * All that a script has learnt from one replay, in order. A script is a pure function of it: as
 * long as two replays give it the same values, it asks the same next question, and an answer read
 * once keeps its meaning. So each typed line costs the reading of one answer and not of all answers
 * before it. No value may hold a reference to its replay, because a later replay would then ask the
 * earlier one.
 */
final class Transcript {
  static final Transcript NONE = new Transcript(List.of());

  /** A piece of what a script learns: the value of an answer, or whether there is an answer. */
  private sealed interface Event {}

  /** An answer that fitted its question. */
  record AnswerRead<T>(AcceptedAnswer accepted, T value) implements Event {}

  private record AnswerSought(String key, boolean found) implements Event {}

  private final List<Event> events = new ArrayList<>();
  private final List<Event> earlier;
  private boolean alike = true;

  /**
   * @param before transcript of an earlier replay of the same script
   */
  Transcript(Transcript before) {
    this(before.events);
  }

  private Transcript(List<Event> earlier) {
    this.earlier = earlier;
  }

  /** The answer as it was read in the earlier replay, or read now. */
  // The same script at the same place asks the same question, so its value is of the same type.
  @SuppressWarnings("unchecked")
  <T> AnswerRead<T> reading(Answer answer, Supplier<AnswerRead<T>> computed) {
    AnswerRead<T> read =
        isNext(event -> event instanceof AnswerRead<?> r && r.accepted().answer().equals(answer))
            ? (AnswerRead<T>) earlier.get(events.size())
            : computed.get();
    events.add(read);
    return read;
  }

  boolean sought(String key, boolean found) {
    AnswerSought sought = new AnswerSought(key, found);
    isNext(sought::equals);
    events.add(sought);
    return found;
  }

  /** Whether the earlier replay was the same up to and including this event. */
  private boolean isNext(Predicate<Event> same) {
    alike = alike && events.size() < earlier.size() && same.test(earlier.get(events.size()));
    return alike;
  }
}
