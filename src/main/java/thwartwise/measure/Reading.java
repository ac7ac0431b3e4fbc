package thwartwise.measure;

import java.util.Optional;
import java.util.function.Function;

/** The result of reading typed text: understood, or refused with one line that says why. */
public sealed interface Reading<T> {

  /**
   * @param text the value in words, to be repeated to the person
   * @param basis what it rests on
   */
  record Understood<T>(T value, String text, AnswerBasis basis) implements Reading<T> {
    public Understood(T value, String text) {
      this(value, text, AnswerBasis.STATED);
    }
  }

  /**
   * @param reason one line: what was typed, what was expected, an example
   */
  record Refused<T>(String reason) implements Reading<T> {}

  static <T> Reading<T> understood(T value, String text) {
    return new Understood<>(value, text);
  }

  static <T> Reading<T> understood(T value, String text, AnswerBasis basis) {
    return new Understood<>(value, text, basis);
  }

  static <T> Reading<T> refused(String reason) {
    return new Refused<>(reason);
  }

  /** Continues with the value that was understood; a refusal stays a refusal. */
  default <R> Reading<R> then(Function<T, Reading<R>> next) {
    return this instanceof Understood<T> understood
        ? next.apply(understood.value())
        : refused(((Refused<T>) this).reason());
  }

  /** Another form of the value with the same text. */
  default <R> Reading<R> as(Function<T, R> form) {
    return this instanceof Understood<T> understood
        ? understood(form.apply(understood.value()), understood.text(), understood.basis())
        : refused(((Refused<T>) this).reason());
  }

  /** Adds a remark about the value to the text. */
  default Reading<T> remark(Function<T, Optional<String>> remark) {
    return this instanceof Understood<T> understood
        ? understood(
            understood.value(),
            understood.text()
                + remark.apply(understood.value()).map(r -> " (" + r + ")").orElse(""),
            understood.basis())
        : this;
  }

  /** The reason for a refusal; empty when it was understood. */
  default Optional<String> refusal() {
    return this instanceof Refused<T> refused ? Optional.of(refused.reason()) : Optional.empty();
  }

  /** Refuses a value for which there is a reason. */
  default Reading<T> unless(Function<T, Optional<String>> complaint) {
    return this instanceof Understood<T> understood
        ? complaint.apply(understood.value()).map(Reading::<T>refused).orElse(this)
        : this;
  }

  /** The basis of an answer. */
  enum AnswerBasis {
    /** Measured, counted or known. */
    STATED,
    /** A guess, used as it was given. */
    GUESSED,
    /** A guess that counts as another figure, on the unfavourable side (judgement). */
    GUESS_COUNTED_POORER;

    public boolean isGuess() {
      return this != STATED;
    }
  }
}
