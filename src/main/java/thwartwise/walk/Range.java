package thwartwise.walk;

import java.util.List;
import java.util.Optional;
import thwartwise.measure.Dimension;
import thwartwise.measure.TypedUnit;
import thwartwise.measure.UnitSystem;

/**
 * Between what bounds an answer can be true, in SI, both included. An answer outside is most often
 * the right figure in another unit, so the message offers the one that would fit.
 *
 * @param ofWhat completes "outside … to …, the"
 */
record Range(Dimension dimension, UnitSystem system, double least, double most, String ofWhat) {

  Optional<String> complaint(double si) {
    return holds(si) ? Optional.empty() : Optional.of(outside(si) + otherUnit(si));
  }

  private boolean holds(double si) {
    return least <= si && si <= most;
  }

  private String outside(double si) {
    return "%s is outside %s to %s, the %s.".formatted(show(si), show(least), show(most), ofWhat);
  }

  private String otherUnit(double si) {
    return likely().stream()
        .map(unit -> read(si, unit))
        .filter(this::holds)
        .findFirst()
        .map(meant -> " Did you mean " + show(meant) + "?")
        .orElse(" Measure it again.");
  }

  /** The same figure, had it been written in that unit. */
  private double read(double si, TypedUnit unit) {
    return si / system.bare(dimension).size().doubleValue() * unit.size().doubleValue();
  }

  /** Units people think in when they forget to say so; nought is the same in all of them. */
  private List<TypedUnit> likely() {
    return switch (dimension) {
      case LENGTH ->
          system.isMetric()
              ? List.of(TypedUnit.CENTIMETRE, TypedUnit.MILLIMETRE)
              : List.of(TypedUnit.FOOT, TypedUnit.CENTIMETRE, TypedUnit.MILLIMETRE);
      case MASS -> system.isMetric() ? List.of(TypedUnit.POUND) : List.of(TypedUnit.KILOGRAM);
      case VOLUME -> List.of(TypedUnit.MILLILITRE);
      case POWER -> List.of(TypedUnit.WATT);
      case TIME -> List.of(TypedUnit.SECOND);
    };
  }

  private String show(double si) {
    return system.show(si, dimension);
  }
}
