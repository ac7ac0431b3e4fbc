package thwartwise.walk.engine;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import thwartwise.measure.NegativeAnswer;
import thwartwise.measure.Reading;
import thwartwise.measure.Reading.Understood;
import thwartwise.measure.UnknownAnswer;

/**
 * The meaning of what is typed at one question. Immutable: each method returns a changed copy.
 *
 * @param words reads what is typed
 * @param whenEmpty the meaning of Enter alone
 * @param ifUnknown the meaning of "don't know"; where it is empty, that of Enter
 * @param storedForm the form in which an answer such as "yesterday" is stored; other answers are
 *     stored as typed
 * @param remarks what follows from a value, added to the repeated answer
 */
record AnswerReader<T>(
    Function<String, Reading<T>> words,
    Optional<Understood<T>> whenEmpty,
    Optional<Understood<T>> ifUnknown,
    Optional<Function<T, String>> storedForm,
    List<Function<T, Optional<String>>> remarks) {
  private static final String NOT_KNOWN =
      "Without it nothing can be worked out, and a guess would not be on the cautious side. Type why"
          + " to see how it is found, or stop to keep all answers and come back with it.";

  static <T> AnswerReader<T> of(Function<String, Reading<T>> words) {
    return new AnswerReader<>(
        words, Optional.empty(), Optional.empty(), Optional.empty(), List.of());
  }

  AnswerReader<T> reading(Function<String, Reading<T>> other) {
    return new AnswerReader<>(other, whenEmpty, ifUnknown, storedForm, remarks);
  }

  AnswerReader<T> whenEmpty(Optional<Understood<T>> means) {
    return new AnswerReader<>(words, means, ifUnknown, storedForm, remarks);
  }

  AnswerReader<T> ifUnknown(Optional<Understood<T>> means) {
    return new AnswerReader<>(words, whenEmpty, means, storedForm, remarks);
  }

  AnswerReader<T> storedAs(Function<T, String> form) {
    return new AnswerReader<>(words, whenEmpty, ifUnknown, Optional.of(form), remarks);
  }

  /** Adds to the repeated answer what follows from it, also where Enter alone was pressed. */
  AnswerReader<T> remark(Function<T, Optional<String>> consequence) {
    List<Function<T, Optional<String>>> more =
        Stream.concat(remarks.stream(), Stream.of(consequence)).toList();
    return new AnswerReader<>(words, whenEmpty, ifUnknown, storedForm, more);
  }

  /** Adds another way to answer, which is tried first. */
  AnswerReader<T> or(Function<String, Optional<Reading<T>>> other) {
    return reading(typed -> other.apply(typed).orElseGet(() -> words.apply(typed)));
  }

  /**
   * A reader of a larger value that contains the one read here.
   *
   * @param of the inner value
   */
  <R> AnswerReader<R> as(Function<T, R> form, Function<R, T> of) {
    return new AnswerReader<>(
        typed -> words.apply(typed).as(form),
        whenEmpty.map(u -> converted(u, form)),
        ifUnknown.map(u -> converted(u, form)),
        storedForm.map(stored -> value -> stored.apply(of.apply(value))),
        remarks.stream().map(remark -> remark.compose(of)).toList());
  }

  private static <T, R> Understood<R> converted(Understood<T> u, Function<T, R> form) {
    return new Understood<>(form.apply(u.value()), u.text(), u.basis());
  }

  /** The answer may be left out. */
  AnswerReader<Optional<T>> optional(String emptyMeans) {
    return new AnswerReader<>(
        typed -> words.apply(typed).as(Optional::of),
        Optional.of(new Understood<>(Optional.empty(), emptyMeans)),
        ifUnknown.map(u -> converted(u, Optional::of)),
        storedForm.map(form -> value -> value.map(form).orElse("")),
        remarks.stream().map(AnswerReader::whenPresent).toList());
  }

  private static <T> Function<Optional<T>, Optional<String>> whenPresent(
      Function<T, Optional<String>> remark) {
    return value -> value.flatMap(remark);
  }

  /** No, none and the like mean the same as Enter. */
  AnswerReader<T> negativeIsEmpty() {
    return emptyFor(NegativeAnswer::matches);
  }

  /** These two words mean the same as Enter. */
  AnswerReader<T> emptyFor(String word, String alias) {
    return emptyFor(
        typed -> typed.strip().equalsIgnoreCase(word) || typed.strip().equalsIgnoreCase(alias));
  }

  private AnswerReader<T> emptyFor(Predicate<String> meansEmpty) {
    Reading<T> empty = whenEmpty.orElseThrow();
    return reading(typed -> meansEmpty.test(typed) ? empty : words.apply(typed));
  }

  /**
   * Reads one answer.
   *
   * @param typed the answer with its confirmation
   * @param figure the answer without it
   * @param wanted completes "Type …" where nothing was typed
   */
  Reading<T> read(String typed, String figure, String wanted) {
    Reading<T> reading = understood(typed, figure, wanted);
    for (Function<T, Optional<String>> remark : remarks) {
      reading = reading.remark(remark);
    }
    return reading;
  }

  private Reading<T> understood(String typed, String figure, String wanted) {
    if (typed.isBlank() || isWhatEnterMeans(typed)) {
      return empty(wanted);
    }
    Reading<T> reading = words.apply(figure);
    return reading instanceof Reading.Refused<T> && UnknownAnswer.matches(typed)
        ? unknown()
        : reading;
  }

  /** Whether the typed word is the one that the prompt shows for Enter. */
  private boolean isWhatEnterMeans(String typed) {
    return whenEmpty.filter(u -> u.text().equalsIgnoreCase(typed.strip())).isPresent();
  }

  private Reading<T> unknown() {
    return ifUnknown
        .or(() -> whenEmpty)
        .<Reading<T>>map(understood -> understood)
        .orElseGet(() -> Reading.refused(NOT_KNOWN));
  }

  private Reading<T> empty(String wanted) {
    return whenEmpty
        .<Reading<T>>map(understood -> understood)
        .orElseGet(() -> Reading.refused("Nothing was typed. Type " + wanted + "."));
  }

  /** The stored form of an answer that was read. */
  String stored(String typed, T value) {
    return storedForm.map(form -> form.apply(value)).orElse(typed.strip());
  }
}
