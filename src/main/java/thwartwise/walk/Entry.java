package thwartwise.walk;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import thwartwise.measure.NoneSaid;
import thwartwise.measure.Reading;

/**
 * One question together with how its answer is read and what would make it a slip. Immutable: each
 * method returns a changed copy.
 *
 * @param whenEmpty what pressing Enter alone means
 * @param slips each looks at the value and may complain in one line
 * @param governsTheRest true when later answers mean something else once this one changes
 */
record Entry<T>(
    String key,
    Wording wording,
    Function<String, Reading<T>> reader,
    Optional<Reading.Understood<T>> whenEmpty,
    List<Function<T, Optional<String>>> slips,
    boolean governsTheRest) {

  static <T> Entry<T> of(
      String key,
      String subject,
      String unit,
      String expected,
      Function<String, Reading<T>> reader) {
    Wording wording = new Wording(subject, unit, expected, List.of(), List.of());
    return new Entry<>(key, wording, reader, Optional.empty(), List.of(), false);
  }

  Entry<T> how(String... lines) {
    return worded(wording.how(lines));
  }

  Entry<T> why(String... lines) {
    return worded(wording.why(lines));
  }

  private Entry<T> worded(Wording other) {
    return new Entry<>(key, other, reader, whenEmpty, slips, governsTheRest);
  }

  /** Pressing Enter alone means this, and the prompt says so. */
  Entry<T> orElse(T value, String text) {
    Reading.Understood<T> empty = new Reading.Understood<>(value, text);
    return new Entry<>(key, wording, reader, Optional.of(empty), slips, governsTheRest);
  }

  /** Refuses a value about which the slip has something to say. */
  Entry<T> unless(Function<T, Optional<String>> slip) {
    List<Function<T, Optional<String>>> more =
        Stream.concat(slips.stream(), Stream.of(slip)).toList();
    return new Entry<>(key, wording, reader, whenEmpty, more, governsTheRest);
  }

  /** Adds to the repeat what follows from the answer. */
  Entry<T> remark(Function<T, Optional<String>> consequence) {
    return new Entry<>(
        key,
        wording,
        typed -> reader.apply(typed).remark(consequence),
        whenEmpty,
        slips,
        governsTheRest);
  }

  /** The answer may be left out. */
  Entry<Optional<T>> optional(String emptyMeans) {
    return new Entry<>(
        key,
        wording,
        typed -> reader.apply(typed).as(Optional::of),
        Optional.of(new Reading.Understood<>(Optional.empty(), emptyMeans)),
        slips.stream().map(Entry::whenPresent).toList(),
        governsTheRest);
  }

  /** The answer may be left out; no, none and the like say so too. */
  Entry<Optional<T>> orNone(String emptyMeans) {
    Entry<Optional<T>> left = optional(emptyMeans);
    return new Entry<>(
        key,
        wording,
        typed -> NoneSaid.by(typed) ? left.empty() : left.reader.apply(typed),
        left.whenEmpty,
        left.slips,
        governsTheRest);
  }

  private static <T> Function<Optional<T>, Optional<String>> whenPresent(
      Function<T, Optional<String>> slip) {
    return value -> value.flatMap(slip);
  }

  Entry<T> governingTheRest() {
    return new Entry<>(key, wording, reader, whenEmpty, slips, true);
  }

  Reading<T> read(String typed) {
    Reading<T> reading = typed.isBlank() ? empty() : reader.apply(typed.strip());
    return reading.unless(this::slip);
  }

  private Reading<T> empty() {
    return whenEmpty
        .<Reading<T>>map(understood -> understood)
        .orElseGet(() -> Reading.refused("Nothing was typed. Type " + wording.expected() + "."));
  }

  private Optional<String> slip(T value) {
    return slips.stream().map(slip -> slip.apply(value)).flatMap(Optional::stream).findFirst();
  }

  Question question() {
    return new Question(
        key,
        wording.subject(),
        wording.prompt(whenEmpty.map(Reading.Understood::text).orElse("")),
        wording.how(),
        wording.why(),
        wording.expected());
  }
}
