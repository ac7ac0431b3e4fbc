package thwartwise.report;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import thwartwise.measure.UnitFormat;
import thwartwise.measured.Property;

/** Single values as they were measured, each with its label from the table of properties. */
final class PropertyWords {
  private PropertyWords() {}

  /** The known values of those rows that have a label. */
  static <O> Stream<String> of(List<? extends Property<O, ?>> rows, O owner, UnitFormat units) {
    return rows.stream()
        .filter(row -> !row.label().isBlank())
        .flatMap(row -> of(row, owner, units).stream());
  }

  /** The same, after other words about a thing. */
  static <O> String behind(List<? extends Property<O, ?>> rows, O owner, UnitFormat units) {
    return String.join("", of(rows, owner, units).map(words -> ", " + words).toList());
  }

  private static <O, V> Optional<String> of(Property<O, V> row, O owner, UnitFormat units) {
    return row.value()
        .apply(owner)
        .map(value -> row.label() + row.type().shown().apply(value, units));
  }
}
