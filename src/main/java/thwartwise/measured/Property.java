package thwartwise.measured;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import thwartwise.measured.ValueType.ScalarSource;

/**
 * A row of the table: one single value of an owner (a boat, its hull, its waters, a piece of kit).
 * Immutable: each wording method returns a changed copy.
 *
 * @param key in the file, and of the walk's question
 * @param value of an owner; empty where it is not known
 * @param subject what the walk asks for, in a few words
 * @param how to measure it, a line or two
 * @param why it matters, a line or two
 * @param remedy how to correct a file with a wrong value
 * @param whenOmitted what is assumed when nobody states it
 * @param changeLabel its name in the difference between two boats
 * @param label what stands before the value on the page; blank where the page does not show it so
 */
public record Property<O, V>(
    String key,
    ValueType<V> type,
    Function<O, Optional<V>> value,
    String subject,
    List<String> how,
    List<String> why,
    String remedy,
    String whenOmitted,
    String changeLabel,
    String label) {

  static <O, V> Property<O, V> of(
      String key, ValueType<V> type, Function<O, Optional<V>> value, String remedy) {
    return new Property<>(key, type, value, "", List.of(), List.of(), remedy, "", "", "");
  }

  /** A property that is always known. */
  static <O, V> Property<O, V> known(
      String key, ValueType<V> type, Function<O, V> value, String remedy) {
    return of(key, type, owner -> Optional.of(value.apply(owner)), remedy);
  }

  Property<O, V> withQuestion(String newSubject, List<String> newHow, List<String> newWhy) {
    return new Property<>(
        key, type, value, newSubject, newHow, newWhy, remedy, whenOmitted, changeLabel, label);
  }

  Property<O, V> whenOmitted(String taken) {
    return new Property<>(key, type, value, subject, how, why, remedy, taken, changeLabel, label);
  }

  Property<O, V> withChangeLabel(String words) {
    return new Property<>(key, type, value, subject, how, why, remedy, whenOmitted, words, label);
  }

  Property<O, V> withLabel(String before) {
    return new Property<>(
        key, type, value, subject, how, why, remedy, whenOmitted, changeLabel, before);
  }

  /** The keys of all these and some others, for an object of the file. */
  public static <O> String[] keys(List<Property<O, ?>> properties, String... others) {
    return Stream.concat(Stream.of(others), properties.stream().map(Property::key))
        .toArray(String[]::new);
  }

  Settable<O, V> with(BiFunction<O, V, O> setter) {
    return new Settable<>(this, setter, owner -> true);
  }

  /** The value as in a file: a number, a truth value or words. */
  public Optional<Object> inFile(O owner) {
    return value.apply(owner).map(type.inFile());
  }

  /**
   * A property that can be left out, and set on an owner that lacks it.
   *
   * @param concerns the owners about which the walk asks it
   */
  public record Settable<O, V>(
      Property<O, V> property, BiFunction<O, V, O> setter, Predicate<O> concerns) {
    Settable<O, V> ofThose(Predicate<O> asked) {
      return new Settable<>(property, setter, asked);
    }

    /** The owner with the value of a file. */
    public O read(O owner, ScalarSource source) {
      return setter.apply(owner, property.type().reader().apply(source, property.remedy()));
    }
  }
}
