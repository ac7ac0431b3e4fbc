package thwartwise.rules;

import java.util.Optional;
import java.util.Set;
import thwartwise.geometry.Span;
import thwartwise.rules.RatedBoat.HullKind;

/**
 * The boats to which a rule set applies; a condition left out excludes no boat.
 *
 * @param length over all, m; the upper end itself is outside, as in "under 20 ft"
 * @param beam greatest, m; the upper end itself is outside
 * @param hulls kinds of hull; empty for any
 * @param drives kinds of propulsion; empty for any
 * @param power of the motor, W; the upper end itself is inside, as in "up to 3 kW"
 */
public record Applicability(
    Span length, Span beam, Set<HullKind> hulls, Set<DriveKind> drives, Span power) {
  public static final Applicability TO_ALL =
      new Applicability(Span.ALL, Span.ALL, Set.of(), Set.of(), Span.ALL);

  public Applicability {
    hulls = Set.copyOf(hulls);
    drives = Set.copyOf(drives);
  }

  /** Why a set does not apply to this boat; empty when it does. */
  public Optional<ScopeMismatch> mismatch(RatedBoat boat) {
    return ScopeMismatch.length(length, boat.length())
        .or(() -> ScopeMismatch.beam(beam, boat.beam()))
        .or(() -> ScopeMismatch.hull(hulls, boat.kind()))
        .or(() -> ScopeMismatch.drive(drives, DriveKind.of(boat.propulsion())))
        .or(() -> ScopeMismatch.power(power, DriveKind.power(boat.propulsion())));
  }
}
