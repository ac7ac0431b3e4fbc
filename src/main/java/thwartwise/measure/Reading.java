package thwartwise.measure;

import java.util.function.Function;

/** What became of something typed: understood, or refused with one line that says why. */
public sealed interface Reading<T> {

  /**
   * @param text the value in words, to be repeated to the person who typed it
   */
  record Understood<T>(T value, String text) implements Reading<T> {}

  /**
   * @param reason one line: what was typed, what was expected, an example
   */
  record Refused<T>(String reason) implements Reading<T> {}

  static <T> Reading<T> understood(T value, String text) {
    return new Understood<>(value, text);
  }

  static <T> Reading<T> refused(String reason) {
    return new Refused<>(reason);
  }

  /** Goes on with what was understood; a refusal stays a refusal. */
  default <R> Reading<R> then(Function<Understood<T>, Reading<R>> next) {
    return this instanceof Understood<T> understood
        ? next.apply(understood)
        : refused(((Refused<T>) this).reason());
  }

  /** The same text beside another form of the value. */
  default <R> Reading<R> as(Function<T, R> form) {
    return then(u -> understood(form.apply(u.value()), u.text()));
  }
}
