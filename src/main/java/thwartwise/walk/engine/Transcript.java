package thwartwise.walk.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.Supplier;
import thwartwise.walk.engine.ReplayResult.AcceptedAnswer;

/**
 * All that a script has learnt from one replay, in order. A script is a pure function of that: as
 * long as two replays tell it the same, it asks the same next, and an answer read once means the
 * same. So each typed line costs the reading of one answer and not of all those before it. No value
 * may hold on to its replay: it would ask that one and not the one that goes on.
 */
final class Transcript {
  static final Transcript NONE = new Transcript(List.of());

  /** What a script can learn: the value of an answer, or whether one is kept. */
  private sealed interface Event {}

  /** An answer that fitted its question. */
  record AnswerRead<T>(AcceptedAnswer accepted, T value) implements Event {}

  private record AnswerSought(String key, boolean found) implements Event {}

  private final List<Event> events = new ArrayList<>();
  private final List<Event> earlier;
  private boolean alike = true;

  /**
   * @param before of a replay of the same script that has ended
   */
  Transcript(Transcript before) {
    this(before.events);
  }

  private Transcript(List<Event> earlier) {
    this.earlier = earlier;
  }

  /** The answer as it was read before, or read now. */
  // The same script at the same place asks the same question, so its value is of the same type.
  @SuppressWarnings("unchecked")
  <T> AnswerRead<T> reading(Answer answer, Supplier<AnswerRead<T>> anew) {
    AnswerRead<T> read =
        isNext(event -> event instanceof AnswerRead<?> r && r.accepted().answer().equals(answer))
            ? (AnswerRead<T>) earlier.get(events.size())
            : anew.get();
    events.add(read);
    return read;
  }

  boolean sought(String key, boolean found) {
    AnswerSought sought = new AnswerSought(key, found);
    isNext(sought::equals);
    events.add(sought);
    return found;
  }

  /** Whether the earlier replay has been the same up to here, and here too. */
  private boolean isNext(Predicate<Event> same) {
    alike = alike && events.size() < earlier.size() && same.test(earlier.get(events.size()));
    return alike;
  }
}
