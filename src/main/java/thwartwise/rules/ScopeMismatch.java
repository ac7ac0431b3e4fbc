package thwartwise.rules;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import thwartwise.geometry.Span;
import thwartwise.rules.RatedBoat.HullKind;

/**
 * Why a rule set does not apply to a boat: the property of the boat that is outside what the set is
 * written for; m and W. Records store the names of these types and of their components, so they are
 * never renamed.
 */
public sealed interface ScopeMismatch {

  /** Length over all; {@code under} is empty where there is no upper end. */
  record Length(double has, double from, OptionalDouble under) implements ScopeMismatch {}

  record Beam(double has, double from, OptionalDouble under) implements ScopeMismatch {}

  record Hull(HullKind has, List<HullKind> covered) implements ScopeMismatch {}

  record Drive(DriveKind has, List<DriveKind> covered) implements ScopeMismatch {}

  /** Power of the motor, over the most or under the least that is covered. */
  record Power(double has, double limit, boolean over) implements ScopeMismatch {}

  /** In words: what older records have. */
  record Stated(String words) implements ScopeMismatch {}

  static Optional<ScopeMismatch> length(Span covered, double has) {
    return contains(covered, has)
        ? Optional.empty()
        : Optional.of(new Length(has, least(covered), most(covered)));
  }

  static Optional<ScopeMismatch> beam(Span covered, double has) {
    return contains(covered, has)
        ? Optional.empty()
        : Optional.of(new Beam(has, least(covered), most(covered)));
  }

  /** The upper end itself is outside. */
  private static boolean contains(Span covered, double has) {
    return covered.from() <= has && has < covered.to();
  }

  private static double least(Span covered) {
    return Math.max(0, covered.from());
  }

  private static OptionalDouble most(Span covered) {
    return Double.isInfinite(covered.to())
        ? OptionalDouble.empty()
        : OptionalDouble.of(covered.to());
  }

  /** No kind named covers every hull. */
  static Optional<ScopeMismatch> hull(Set<HullKind> covered, HullKind has) {
    return covered.isEmpty() || covered.contains(has)
        ? Optional.empty()
        : Optional.of(new Hull(has, covered.stream().sorted().toList()));
  }

  static Optional<ScopeMismatch> drive(Set<DriveKind> covered, DriveKind has) {
    return covered.isEmpty() || covered.contains(has)
        ? Optional.empty()
        : Optional.of(new Drive(has, covered.stream().sorted().toList()));
  }

  static Optional<ScopeMismatch> power(Span covered, double has) {
    if (covered.contains(has)) {
      return Optional.empty();
    }
    boolean over = has > covered.to();
    return Optional.of(new Power(has, over ? covered.to() : covered.from(), over));
  }
}
