package thwartwise.crew;

import thwartwise.checks.CheckReading;
import thwartwise.checks.Unit;

/**
 * The number of kilograms that surely cannot heel a boat past a limit. Readings other than heels
 * only sink and trim with the weight: they are worst at one end of a range of masses or the other,
 * and are checked there.
 *
 * @param mass kg; negative where a limit is not met as it is, infinitely where nothing shows by how
 *     much
 */
public record Headroom(double mass) {
  /** The headroom where nothing is asked. */
  static final Headroom UNLIMITED = new Headroom(Double.POSITIVE_INFINITY);

  private static final Headroom NOT_MET = new Headroom(Double.NEGATIVE_INFINITY);

  /**
   * The greatest change of a heel for each kilogram, as a share of its limit: judgement, twice what
   * boats of 80 to 400 kg in all were seen to do. Swamped it is more, because little of the boat
   * cuts the water and a box goes under or comes up with a few kilograms.
   */
  private static final double STEEP = 0.01;

  private static final double SWAMPED_STEEP = 0.04;

  static Headroom of(CheckReading reading, boolean swamped) {
    if (reading.margin().unit() != Unit.DEGREE || reading.value().isEmpty()) {
      return reading.met() ? UNLIMITED : NOT_MET;
    }
    return new Headroom(reading.margin().share() / (swamped ? SWAMPED_STEEP : STEEP));
  }

  Headroom and(Headroom other) {
    return new Headroom(Math.min(mass, other.mass));
  }

  boolean isMet() {
    return mass >= 0;
  }
}
