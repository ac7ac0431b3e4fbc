package thwartwise.measured;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import thwartwise.measure.UnitFormat;

/**
 * A single value that differs between two owners.
 *
 * @param before empty where it was not known
 * @param after empty where it is no longer known
 */
public record PropertyDifference<O, V>(
    Property<O, V> property, Optional<V> before, Optional<V> after) {

  /** The differences of those rows that have a name for their change, in the order of the rows. */
  public static <O> List<PropertyDifference<?, ?>> between(
      List<? extends Property<O, ?>> rows, O before, O after) {
    return rows.stream()
        .filter(row -> !row.changeLabel().isBlank())
        .<PropertyDifference<?, ?>>flatMap(row -> of(row, before, after))
        .toList();
  }

  private static <O, V> Stream<PropertyDifference<?, ?>> of(Property<O, V> row, O before, O after) {
    Optional<V> was = row.value().apply(before);
    Optional<V> is = row.value().apply(after);
    return was.equals(is) ? Stream.of() : Stream.of(new PropertyDifference<>(row, was, is));
  }

  /** The value before, or its default. */
  public String before(UnitFormat units) {
    return shown(before, units);
  }

  /** The value after, or its default. */
  public String after(UnitFormat units) {
    return shown(after, units);
  }

  private String shown(Optional<V> value, UnitFormat units) {
    return value
        .map(known -> property.type().shown().apply(known, units))
        .orElse(property.whenOmitted().isEmpty() ? "not said" : property.whenOmitted());
  }
}
