package thwartwise.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import thwartwise.measure.Reading;

/**
 * One question together with how its answer is read and what would make it a slip. Immutable: each
 * method returns a changed copy.
 *
 * @param unit what a bare number means, or the choices; stands in the prompt
 * @param expected what may be typed, with examples
 * @param whenEmpty what pressing Enter alone means
 * @param slips each looks at the value and may complain in one line
 * @param governsTheRest true when later answers mean something else once this one changes
 */
record Entry<T>(
    String key,
    String subject,
    String unit,
    String expected,
    List<String> how,
    List<String> why,
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
    return new Entry<>(
        key,
        subject,
        unit,
        expected,
        List.of(),
        List.of(),
        reader,
        Optional.empty(),
        List.of(),
        false);
  }

  Entry<T> how(String... lines) {
    return new Entry<>(
        key,
        subject,
        unit,
        expected,
        List.of(lines),
        why,
        reader,
        whenEmpty,
        slips,
        governsTheRest);
  }

  Entry<T> why(String... lines) {
    return new Entry<>(
        key,
        subject,
        unit,
        expected,
        how,
        List.of(lines),
        reader,
        whenEmpty,
        slips,
        governsTheRest);
  }

  /** Pressing Enter alone means this, and the prompt says so. */
  Entry<T> orElse(T value, String text) {
    return new Entry<>(
        key,
        subject,
        unit,
        expected,
        how,
        why,
        reader,
        Optional.of(new Reading.Understood<>(value, text)),
        slips,
        governsTheRest);
  }

  /** Refuses a value about which the slip has something to say. */
  Entry<T> unless(Function<T, Optional<String>> slip) {
    List<Function<T, Optional<String>>> more = new ArrayList<>(slips);
    more.add(slip);
    return new Entry<>(
        key,
        subject,
        unit,
        expected,
        how,
        why,
        reader,
        whenEmpty,
        List.copyOf(more),
        governsTheRest);
  }

  /** Adds to the repeat what follows from the answer. */
  Entry<T> remark(Function<T, Optional<String>> consequence) {
    return new Entry<>(
        key,
        subject,
        unit,
        expected,
        how,
        why,
        typed -> reader.apply(typed).remark(consequence),
        whenEmpty,
        slips,
        governsTheRest);
  }

  /** An answer may be left out. */
  Entry<Optional<T>> optional(String emptyMeans) {
    return new Entry<>(
        key,
        subject,
        unit,
        expected,
        how,
        why,
        typed -> reader.apply(typed).as(Optional::of),
        Optional.of(new Reading.Understood<>(Optional.empty(), emptyMeans)),
        slips.stream().map(Entry::whenPresent).toList(),
        governsTheRest);
  }

  private static <T> Function<Optional<T>, Optional<String>> whenPresent(
      Function<T, Optional<String>> slip) {
    return value -> value.flatMap(slip);
  }

  Entry<T> governingTheRest() {
    return new Entry<>(key, subject, unit, expected, how, why, reader, whenEmpty, slips, true);
  }

  Reading<T> read(String typed) {
    Reading<T> reading = typed.isBlank() ? empty() : reader.apply(typed.strip());
    return reading.unless(this::slip);
  }

  private Reading<T> empty() {
    return whenEmpty
        .<Reading<T>>map(understood -> understood)
        .orElseGet(() -> Reading.refused("Nothing was typed. Type " + expected + "."));
  }

  private Optional<String> slip(T value) {
    return slips.stream().map(slip -> slip.apply(value)).flatMap(Optional::stream).findFirst();
  }

  Question question() {
    return new Question(key, subject, prompt(), how, why, expected);
  }

  private String prompt() {
    String brackets = unit.isEmpty() ? "" : " (" + unit + ")";
    return subject + brackets + whenEmpty.map(u -> " [Enter: " + u.text() + "]").orElse("") + ":";
  }
}
