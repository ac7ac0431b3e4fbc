package thwartwise.measure;

import java.util.Optional;
import java.util.function.Function;

/** What became of something typed: understood, or refused with one line that says why. */
public sealed interface Reading<T> {

  /**
   * @param text the value in words, to be repeated to the person who typed it
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

  /** Goes on with the value that was understood; a refusal stays a refusal. */
  default <R> Reading<R> then(Function<T, Reading<R>> next) {
    return this instanceof Understood<T> understood
        ? next.apply(understood.value())
        : refused(((Refused<T>) this).reason());
  }

  /** Another form of the value next to the same text. */
  default <R> Reading<R> as(Function<T, R> form) {
    return this instanceof Understood<T> understood
        ? understood(form.apply(understood.value()), understood.text(), understood.basis())
        : refused(((Refused<T>) this).reason());
  }

  /** Adds to the text what somebody has to say about the value. */
  default Reading<T> remark(Function<T, Optional<String>> remark) {
    return this instanceof Understood<T> understood
        ? understood(
            understood.value(),
            understood.text()
                + remark.apply(understood.value()).map(r -> " (" + r + ")").orElse(""),
            understood.basis())
        : this;
  }

  /** Why it was refused; empty when it was understood. */
  default Optional<String> refusal() {
    return this instanceof Refused<T> refused ? Optional.of(refused.reason()) : Optional.empty();
  }

  /** Refuses a value about which somebody has something to say. */
  default Reading<T> unless(Function<T, Optional<String>> complaint) {
    return this instanceof Understood<T> understood
        ? complaint.apply(understood.value()).map(Reading::<T>refused).orElse(this)
        : this;
  }

  /** What an answer rests on. */
  enum AnswerBasis {
    /** Measured, counted or known. */
    STATED,
    /** A guess, taken as it was given. */
    GUESSED,
    /** A guess that counts as another figure, on the poor side (judgement). */
    GUESS_COUNTED_POORER;

    public boolean isGuess() {
      return this != STATED;
    }
  }
}
