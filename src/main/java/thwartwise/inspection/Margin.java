package thwartwise.inspection;

import java.util.Optional;
import thwartwise.checks.Reading;
import thwartwise.checks.Unit;

/**
 * How far inside its limit a check comes out, SI.
 *
 * @param atLeast true when the value must not be below the limit
 * @param share the margin as a share of the limit; of five hundredths where the limit is less
 */
public record Margin(
    String check, double value, double limit, boolean atLeast, Unit unit, double share) {

  /** A limit of nought has no shares. */
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
                reading.unit(),
                share(reading)));
  }

  static double share(Reading reading) {
    return reading.margin() / Math.max(Math.abs(reading.limit()), LEAST_LIMIT);
  }
}
