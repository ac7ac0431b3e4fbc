package thwartwise.walk.engine;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import thwartwise.measure.Dimension;
import thwartwise.measure.RoundBounds;
import thwartwise.measure.Rounding;
import thwartwise.measure.TypedUnit;
import thwartwise.measure.UnitSystem;
import thwartwise.measured.BoatQuantity;

/**
 * The bounds within which an answer can be true, in SI, both included. An answer outside is most
 * often the right figure in another unit, so the message offers the unit that would fit.
 *
 * @param noun completes "not between … and …, the"
 * @param insistedLeast the least that is taken when the person insists
 * @param insistedMost the greatest that is taken when the person insists
 */
public record PlausibleRange(
    Dimension dimension,
    UnitSystem system,
    double least,
    double most,
    String noun,
    double insistedLeast,
    double insistedMost)
    implements Function<Double, Optional<Warning>> {

  /** The factor beyond which an answer is refused however firmly the person insists. */
  private static final double BEYOND = 1.25;

  private static final double BELOW = 0.25;

  private static final double CRUMB = 0.03;

  /** A length below a hand's breadth is first tried in millimetres, m. */
  private static final double THIN = 0.1;

  /** The usual range of a quantity; a person who insists may go as far as a boat file can. */
  static PlausibleRange of(BoatQuantity quantity, UnitSystem system) {
    return new PlausibleRange(
        quantity.dimension(),
        system,
        quantity.usualLeast(),
        quantity.usualMost(),
        quantity.ofWhat(),
        quantity.least(),
        quantity.most());
  }

  /** The same range, but a value a little outside is accepted when the person insists. */
  public PlausibleRange unlessInsisted() {
    return new PlausibleRange(dimension, system, least, most, noun, BELOW * least, BEYOND * most);
  }

  @Override
  public Optional<Warning> apply(Double si) {
    return holds(si)
        ? Optional.empty()
        : Optional.of(
            new Warning(
                outside(si) + otherUnit(si), meant(si).map(this::typed), mayBeInsistedOn(si)));
  }

  private boolean mayBeInsistedOn(double si) {
    return si >= insistedLeast && si <= insistedMost;
  }

  /** A bound as it could be typed, to more decimals than anybody measures. */
  private String typed(double si) {
    double shown =
        switch (dimension) {
          case VOLUME -> si * 1000;
          default -> si;
        };
    String unit =
        switch (dimension) {
          case LENGTH -> "m";
          case MASS -> "kg";
          case VOLUME -> "l";
          case POWER -> "W";
          case TIME -> "s";
        };
    return Rounding.plain(shown) + " " + unit;
  }

  private boolean holds(double si) {
    return least <= si && si <= most;
  }

  private String outside(double si) {
    return "%s is not %s, the %s."
        .formatted(show(si), new RoundBounds(system, dimension, least, most).words(), noun);
  }

  private String otherUnit(double si) {
    return meant(si)
        .map(meant -> " Did you mean " + show(meant) + "?")
        .orElse(" Measure it again.");
  }

  private Optional<Double> meant(double si) {
    return likely().stream().map(unit -> read(si, unit)).filter(this::isLikely).findFirst();
  }

  /**
   * Whether a value is within the bounds and not tiny compared with them: a height of 1.6 m was
   * never meant as 16 mm.
   */
  private boolean isLikely(double meant) {
    return holds(meant) && Math.abs(meant) >= CRUMB * most;
  }

  /** The same figure read in that unit. */
  private double read(double si, TypedUnit unit) {
    return si / system.bare(dimension).size().doubleValue() * unit.size().doubleValue();
  }

  /** Units that people have in mind when they do not name one; zero is the same in all of them. */
  private List<TypedUnit> likely() {
    return switch (dimension) {
      case LENGTH -> likelyLengths();
      case MASS -> system.isMetric() ? List.of(TypedUnit.POUND) : List.of(TypedUnit.KILOGRAM);
      case VOLUME -> List.of(TypedUnit.MILLILITRE);
      case POWER -> List.of(TypedUnit.WATT);
      case TIME -> List.of(TypedUnit.SECOND);
    };
  }

  private List<TypedUnit> likelyLengths() {
    if (most <= THIN) {
      return List.of(TypedUnit.MILLIMETRE, TypedUnit.CENTIMETRE);
    }
    return system.isMetric()
        ? List.of(TypedUnit.CENTIMETRE, TypedUnit.MILLIMETRE)
        : List.of(TypedUnit.FOOT, TypedUnit.CENTIMETRE, TypedUnit.MILLIMETRE);
  }

  private String show(double si) {
    return system.show(si, dimension);
  }
}
