package thwartwise.checks;

import java.util.OptionalDouble;

/**
 * What the boat has beside what it needs, SI.
 *
 * @param value what it has; empty when there is no such state
 * @param limit what it needs
 * @param atLeast true when the value must not be below the limit, false when it must not be above
 */
public record Margin(OptionalDouble value, double limit, boolean atLeast, Unit unit) {

  /** A limit of zero has no shares; less than this (m, rad, kg) counts as this. */
  private static final double LEAST_LIMIT = 0.05;

  public static Margin atLeast(double limit, OptionalDouble value, Unit unit) {
    return new Margin(value, limit, true, unit);
  }

  public static Margin atMost(double limit, OptionalDouble value, Unit unit) {
    return new Margin(value, limit, false, unit);
  }

  /** What has no value is not met. */
  public boolean met() {
    return value.isPresent()
        && (atLeast ? value.getAsDouble() >= limit : value.getAsDouble() <= limit);
  }

  /** How far inside the limit, in SI; no value is as far outside as can be. */
  public double room() {
    if (value.isEmpty()) {
      return Double.NEGATIVE_INFINITY;
    }
    return atLeast ? value.getAsDouble() - limit : limit - value.getAsDouble();
  }

  /** The same as a share of the limit; negative when it is not met. */
  public double share() {
    return room() / Math.max(Math.abs(limit), LEAST_LIMIT);
  }

  /** Past a right angle the very figure no longer tells anybody anything. */
  public boolean turnsOver() {
    return unit == Unit.DEGREE && value.orElse(0) > Math.PI / 2;
  }

  /** The same without a value. */
  Margin without() {
    return new Margin(OptionalDouble.empty(), limit, atLeast, unit);
  }
}
