package thwartwise.crew;

import thwartwise.checks.CheckReading;
import thwartwise.checks.Unit;

/**
 * How many kilograms more aboard can surely not heel a boat past a limit. Other readings than heels
 * only sink and trim with the weight: they are at their worst at one end of a stretch or the other,
 * and have to be asked there.
 *
 * @param mass kg; negative where a limit is not met as it is
 */
public record Headroom(double mass) {
  /** Where nothing is asked. */
  static final Headroom UNLIMITED = new Headroom(Double.POSITIVE_INFINITY);

  private static final Headroom NOT_MET = new Headroom(-1);

  /**
   * By what share of its limit a heel may change for a kilogram more, at the most: judgement, twice
   * what boats of 80 to 400 kg in all were seen to do. Swamped it is more, because little of the
   * boat cuts the water and a box comes and goes with a few kilograms.
   */
  private static final double STEEP = 0.01;

  private static final double SWAMPED_STEEP = 0.04;

  static Headroom of(CheckReading reading, boolean swamped) {
    if (!reading.met()) {
      return NOT_MET;
    }
    return reading.margin().unit() == Unit.DEGREE
        ? new Headroom(reading.margin().share() / (swamped ? SWAMPED_STEEP : STEEP))
        : UNLIMITED;
  }

  Headroom and(Headroom other) {
    return new Headroom(Math.min(mass, other.mass));
  }

  boolean isMet() {
    return mass >= 0;
  }
}
