package thwartwise.rules;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thwartwise.geometry.Span;
import thwartwise.measure.Rounding;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
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

  /** Why a set does not apply to this boat, in words; empty when it does. */
  public Optional<String> reasonAgainst(RatedBoat boat) {
    UnitFormat units = new UnitFormat(boat.model().boat().units());
    return Stream.of(
            size(length, boat.length(), "long", units),
            size(beam, boat.beam(), "broad", units),
            hull(boat.kind()),
            drive(DriveKind.of(boat.propulsion())),
            power(DriveKind.power(boat.propulsion()), units))
        .flatMap(Optional::stream)
        .findFirst();
  }

  private static Optional<String> size(Span span, double size, String word, UnitFormat units) {
    if (span.from() <= size && size < span.to()) {
      return Optional.empty();
    }
    return Optional.of(
        "the boat is "
            + metres(size, units)
            + " "
            + word
            + " and it is written for "
            + range(span, units));
  }

  private static String range(Span span, UnitFormat units) {
    String to = Double.isInfinite(span.to()) ? "" : "under " + metres(span.to(), units);
    if (!(span.from() > 0)) {
      return to;
    }
    String from = metres(span.from(), units) + " ";
    return to.isEmpty() ? from + "and over" : from + "to " + to;
  }

  private Optional<String> hull(HullKind kind) {
    return hulls.isEmpty() || hulls.contains(kind)
        ? Optional.empty()
        : Optional.of(
            "the boat is "
                + kind.singular()
                + " by its form and it is written for "
                + hulls.stream()
                    .sorted()
                    .map(HullKind::plural)
                    .collect(Collectors.joining(" and ")));
  }

  private Optional<String> drive(DriveKind drive) {
    return drives.isEmpty() || drives.contains(drive)
        ? Optional.empty()
        : Optional.of(
            "the boat is "
                + drive.words()
                + " and it is written for boats "
                + drives.stream()
                    .sorted()
                    .map(DriveKind::words)
                    .collect(Collectors.joining(" or ")));
  }

  private Optional<String> power(double watts, UnitFormat units) {
    if (power.contains(watts)) {
      return Optional.empty();
    }
    String range =
        watts > power.to()
            ? "up to " + kilowatts(power.to(), units)
            : kilowatts(power.from(), units) + " and over";
    return Optional.of(
        "the motor gives " + kilowatts(watts, units) + " and it is written for " + range);
  }

  private static String metres(double size, UnitFormat units) {
    return units.either(Rounding.nearest(size, 3) + " m", () -> units.tape(size));
  }

  private static String kilowatts(double watts, UnitFormat units) {
    return units.either(
        Rounding.nearest(watts / 1000, 3) + " kW", () -> units.power(watts, Side.UP));
  }
}
