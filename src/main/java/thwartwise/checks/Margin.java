package thwartwise.checks;

import java.util.OptionalDouble;

/**
 * A figure of the boat with its limit, SI.
 *
 * @param value the figure; empty when there is no such state
 * @param limit the limit
 * @param atLeast true when the value must not be below the limit, false when it must not be above
 */
public record Margin(OptionalDouble value, double limit, boolean atLeast, Unit unit) {

  /** A share of a limit of zero is undefined: a smaller limit (m, rad, kg) counts as this one. */
  private static final double LEAST_LIMIT = 0.05;

  public static Margin atLeast(double limit, OptionalDouble value, Unit unit) {
    return new Margin(value, limit, true, unit);
  }

  public static Margin atMost(double limit, OptionalDouble value, Unit unit) {
    return new Margin(value, limit, false, unit);
  }

  /** False without a value. */
  public boolean met() {
    return value.isPresent()
        && (atLeast ? value.getAsDouble() >= limit : value.getAsDouble() <= limit);
  }

  /** How far the figure is inside the limit, SI; without a value it is infinitely far outside. */
  public double room() {
    if (value.isEmpty()) {
      return Double.NEGATIVE_INFINITY;
    }
    return atLeast ? value.getAsDouble() - limit : limit - value.getAsDouble();
  }

  /**
   * The room to a billionth, for comparing: sums in another order differ by less, and the two sides
   * of a boat that is alike on both are then equally bad.
   */
  public double roundedRoom() {
    return Math.rint(room() * 1e9) / 1e9;
  }

  /** The same as a share of the limit; negative when it is not met. */
  public double share() {
    return room() / Math.max(Math.abs(limit), LEAST_LIMIT);
  }

  /** Whether the heel is past 90 degrees, where the exact figure means nothing to a reader. */
  public boolean turnsOver() {
    return unit == Unit.DEGREE && value.orElse(0) > Math.PI / 2;
  }

  /** The same without a value. */
  Margin without() {
    return new Margin(OptionalDouble.empty(), limit, atLeast, unit);
  }
}
