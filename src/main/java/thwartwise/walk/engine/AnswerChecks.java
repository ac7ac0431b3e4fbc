package thwartwise.walk.engine;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * The checks of one answer. Immutable: each method returns a changed copy.
 *
 * @param textDoubts each looks at the typed text and may ask which of two meanings is right
 * @param doubts each looks at the value and may ask for confirmation
 * @param slips each looks at the value and may refuse it in one line
 */
record AnswerChecks<T>(
    List<Function<String, Optional<Warning>>> textDoubts,
    List<Function<T, Optional<Warning>>> doubts,
    List<Function<T, Optional<String>>> slips) {

  static <T> AnswerChecks<T> none() {
    return new AnswerChecks<>(List.of(), List.of(), List.of());
  }

  AnswerChecks<T> unlessAmbiguous(Function<String, Optional<Warning>> unclear) {
    return new AnswerChecks<>(and(textDoubts, unclear), doubts, slips);
  }

  AnswerChecks<T> within(Function<T, Optional<Warning>> doubt) {
    return new AnswerChecks<>(textDoubts, and(doubts, doubt), slips);
  }

  AnswerChecks<T> unless(Function<T, Optional<String>> slip) {
    return new AnswerChecks<>(textDoubts, doubts, and(slips, slip));
  }

  private static <E> List<E> and(List<E> all, E more) {
    return Stream.concat(all.stream(), Stream.of(more)).toList();
  }

  /** The same checks of the inner value of a larger one. */
  <R> AnswerChecks<R> compose(Function<R, T> of) {
    return new AnswerChecks<>(
        textDoubts,
        doubts.stream().map(doubt -> doubt.compose(of)).toList(),
        slips.stream().map(slip -> slip.compose(of)).toList());
  }

  /** The same checks of a value that may be left out. */
  AnswerChecks<Optional<T>> whenPresent() {
    return new AnswerChecks<>(
        textDoubts,
        doubts.stream().map(AnswerChecks::whenPresent).toList(),
        slips.stream().map(AnswerChecks::whenPresent).toList());
  }

  private static <T, R> Function<Optional<T>, Optional<R>> whenPresent(
      Function<T, Optional<R>> check) {
    return value -> value.flatMap(check);
  }

  /** Whether an answer can need confirmation at all. */
  boolean canDoubt() {
    return !(doubts.isEmpty() && textDoubts.isEmpty());
  }

  Optional<Warning> unclear(String typed) {
    return first(textDoubts, typed);
  }

  Optional<Warning> doubt(T value) {
    return first(doubts, value);
  }

  Optional<String> slip(T value) {
    return first(slips, value);
  }

  private static <A, R> Optional<R> first(List<Function<A, Optional<R>>> checks, A answer) {
    return checks.stream().map(check -> check.apply(answer)).flatMap(Optional::stream).findFirst();
  }
}
