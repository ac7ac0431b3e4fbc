package thwartwise.inspection;

import java.util.Optional;
import thwartwise.checks.Reading;
import thwartwise.checks.Unit;

/**
 * How far inside its limit a check comes out, after the allowance, SI.
 *
 * @param atLeast true when the value must not be below the limit
 */
public record Margin(String check, double value, double limit, boolean atLeast, Unit unit) {

  /** A limit of nought has no shares; less than this (m, rad, kg) counts as this. */
  private static final double LEAST_LIMIT = 0.05;

  /** Empty where there is no value. */
  static Optional<Margin> of(Reading reading) {
    return reading.value().isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Margin(
                reading.check(),
                reading.value().getAsDouble(),
                reading.limit(),
                reading.atLeast(),
                reading.unit()));
  }

  /** The margin as a share of the limit; negative when it is not met. */
  public double share() {
    return (atLeast ? value - limit : limit - value) / whole(limit);
  }

  /** The same of a reading; as far outside as can be where it has no value. */
  static double share(Reading reading) {
    return reading.margin() / whole(reading.limit());
  }

  private static double whole(double limit) {
    return Math.max(Math.abs(limit), LEAST_LIMIT);
  }
}
