package thwartwise.passage;

/**
 * The speed at which a hull's own wave is as long as its waterline: a line above which a timed
 * speed of such a boat is hardly right. 1.34 knots times the root of the length in feet (READ,
 * several).
 */
final class HullSpeed {
  static final double KNOT = 1852 / 3600.0;
  private static final double FOOT = 0.3048;

  private HullSpeed() {}

  /** m/s for a length in m. */
  static double of(double length) {
    return 1.34 * Math.sqrt(length / FOOT) * KNOT;
  }
}
