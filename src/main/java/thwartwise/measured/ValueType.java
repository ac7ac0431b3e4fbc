package thwartwise.measured;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import thwartwise.measure.UnitFormat;

/**
 * The type of a property's value, and its form in the boat file.
 *
 * @param reader from a value of the file and the remedy to the value, SI
 * @param inFile a number, a truth value or words
 * @param shown as it was measured, in the units of the reader
 * @param form of the value in the file
 * @param described for the printed table
 * @param quantity of a number
 * @param words of a closed choice
 */
public record ValueType<V>(
    BiFunction<ScalarSource, String, V> reader,
    Function<V, Object> inFile,
    BiFunction<V, UnitFormat, String> shown,
    Form form,
    String described,
    Optional<BoatQuantity> quantity,
    List<String> words) {

  public ValueType {
    words = List.copyOf(words);
  }

  static ValueType<Double> number(BoatQuantity quantity) {
    return new ValueType<>(
        (source, remedy) -> quantity.si(source.number(quantity, remedy)),
        quantity::inFile,
        quantity::shown,
        Form.NUMBER,
        "number, " + quantity.range(),
        Optional.of(quantity),
        List.of());
  }

  /** A number of people or things. */
  static ValueType<Integer> whole(BoatQuantity quantity) {
    return new ValueType<>(
        (source, remedy) -> source.whole(quantity, remedy),
        value -> value,
        (value, units) -> Integer.toString(value),
        Form.WHOLE,
        "whole number, " + quantity.range(),
        Optional.of(quantity),
        List.of());
  }

  /** Free words. */
  static ValueType<String> text() {
    return new ValueType<>(
        ScalarSource::words,
        value -> value,
        (value, units) -> value,
        Form.TEXT,
        "words",
        Optional.empty(),
        List.of());
  }

  /** A day, year first. */
  static ValueType<LocalDate> day() {
    return new ValueType<>(
        ScalarSource::day,
        LocalDate::toString,
        (value, units) -> value.toString(),
        Form.DAY,
        "a day, as in 2026-05-02",
        Optional.empty(),
        List.of());
  }

  static ValueType<Boolean> flag() {
    return new ValueType<>(
        (source, remedy) -> source.bool(),
        value -> value,
        (value, units) -> value ? "yes" : "no",
        Form.TRUTH,
        "true or false",
        Optional.empty(),
        List.of());
  }

  static <T> ValueType<T> oneOf(Function<T, String> word, T[] values) {
    Map<String, T> byWord = new LinkedHashMap<>();
    for (T value : values) {
      byWord.put(word.apply(value), value);
    }
    return new ValueType<>(
        (source, remedy) -> source.oneOf(byWord, remedy),
        word::apply,
        (value, units) -> word.apply(value),
        Form.CHOICE,
        "one of: " + String.join(", ", byWord.keySet()),
        Optional.empty(),
        List.copyOf(byWord.keySet()));
  }

  /** The form of a value in the file. */
  public enum Form {
    NUMBER,
    WHOLE,
    TRUTH,
    TEXT,
    DAY,
    CHOICE
  }

  /**
   * One value of a file, converted to its type. The remedy says what to do when that is impossible.
   */
  public interface ScalarSource {
    /** A number in the unit of the file. */
    double number(BoatQuantity quantity, String remedy);

    int whole(BoatQuantity quantity, String remedy);

    boolean bool();

    String words(String remedy);

    LocalDate day(String remedy);

    <T> T oneOf(Map<String, T> byWord, String remedy);
  }
}
