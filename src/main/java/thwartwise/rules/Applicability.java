package thwartwise.rules;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thwartwise.geometry.Span;

/**
 * To which boats a rule set applies; a condition left out lets every boat in.
 *
 * @param length over all, m; the upper end itself is outside, as in "under 20 ft"
 * @param beam greatest, m; the upper end itself is outside
 * @param hulls kinds of hull; empty for any
 * @param drives kinds of propulsion; empty for any
 * @param power of the motor, W; the upper end itself is inside, as in "up to 3 kW"
 */
public record Applicability(
    Span length, Span beam, Set<HullKind> hulls, Set<Drive> drives, Span power) {
  public static final Applicability TO_ALL =
      new Applicability(Span.ALL, Span.ALL, Set.of(), Set.of(), Span.ALL);

  public Applicability {
    hulls = Set.copyOf(hulls);
    drives = Set.copyOf(drives);
  }

  /** Why a set does not apply to this boat, in words; empty when it does. */
  public Optional<String> notBecause(RatedBoat boat) {
    return Stream.of(
            size(length, boat.length(), "long"),
            size(beam, boat.beam(), "broad"),
            hull(HullKind.of(boat)),
            drive(Drive.of(boat.propulsion())),
            power(Drive.power(boat.propulsion())))
        .flatMap(Optional::stream)
        .findFirst();
  }

  private static Optional<String> size(Span span, double size, String word) {
    if (span.from() <= size && size < span.to()) {
      return Optional.empty();
    }
    return Optional.of(
        "the boat is " + plain(size) + " m " + word + " and it is written for " + range(span));
  }

  private static String range(Span span) {
    String to = Double.isInfinite(span.to()) ? "" : "under " + plain(span.to()) + " m";
    if (!(span.from() > 0)) {
      return to;
    }
    String from = plain(span.from()) + " m ";
    return to.isEmpty() ? from + "and over" : from + "to " + to;
  }

  private Optional<String> hull(HullKind kind) {
    return hulls.isEmpty() || hulls.contains(kind)
        ? Optional.empty()
        : Optional.of(
            "the boat is "
                + kind.one()
                + " by its form and it is written for "
                + hulls.stream().sorted().map(HullKind::many).collect(Collectors.joining(" and ")));
  }

  private Optional<String> drive(Drive drive) {
    return drives.isEmpty() || drives.contains(drive)
        ? Optional.empty()
        : Optional.of(
            "the boat is "
                + drive.told()
                + " and it is written for boats "
                + drives.stream().sorted().map(Drive::told).collect(Collectors.joining(" or ")));
  }

  private Optional<String> power(double watts) {
    if (power.contains(watts)) {
      return Optional.empty();
    }
    String range =
        watts > power.to()
            ? "up to " + plain(power.to() / 1000) + " kW"
            : plain(power.from() / 1000) + " kW and over";
    return Optional.of(
        "the motor gives " + plain(watts / 1000) + " kW and it is written for " + range);
  }

  private static String plain(double value) {
    BigDecimal exact = BigDecimal.valueOf(value).setScale(3, RoundingMode.HALF_EVEN);
    return exact.signum() == 0 ? "0" : exact.stripTrailingZeros().toPlainString();
  }
}
