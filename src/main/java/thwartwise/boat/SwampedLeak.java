package thwartwise.boat;

import thwartwise.boat.Filling.SealTest;

/**
 * The rate at which a chamber that leaked in its test fills when the boat is swamped.
 *
 * <p>Through a hole the rate grows with the root of the head of water on it (Q = C A √(2 g h), the
 * sharp-edged orifice of hydraulics textbooks), through a seep along a joint with the head itself
 * (laminar flow between plates, Q ∝ h; both FROM MEMORY). Nobody knows which it was, so the worse
 * is assumed. The place of the leak is also unknown: a leak near the top had little water over it
 * in the test and has much more when the boat is swamped. So it is assumed halfway up what was
 * under water in the test (judgement), and at the lowest point where the test was the deeper of the
 * two. Neither the water inside nor the escaping air slows the flow: the rate stays as at the
 * beginning.
 *
 * @param rate at which it fills, m³/s
 */
record SwampedLeak(double rate) {
  /** The assumed height of the leak, as a share of the height under water. */
  private static final double LEAK_HEIGHT = 0.5;

  /**
   * @param depth of the chamber, from its lowest point to its highest, m; a test without a stated
   *     head counts as one under a hand of water, since more would flatter
   * @param swamped head of water above its lowest point when the boat is swamped, m
   */
  static SwampedLeak of(SealTest test, double depth, double swamped) {
    double tested = test.head().orElse(Math.min(SealTest.LEAST_HEAD, depth));
    double rate = test.litresIn() / 1000 / (test.minutes() * 60);
    return new SwampedLeak(rate * faster(tested, swamped, depth));
  }

  /** The ratio of the rate when swamped to that of the test. */
  private static double faster(double tested, double swamped, double depth) {
    double leak = tested < swamped ? LEAK_HEIGHT * Math.min(tested, depth) : 0;
    double heads = (swamped - leak) / (tested - leak);
    return Math.max(heads, Math.sqrt(heads));
  }

  /** The share of a volume, m³, that is left after a time, 0 to 1. */
  double left(double volume, double seconds) {
    return Math.max(0, 1 - rate * seconds / volume);
  }

  /** The time in which half of a volume, m³, fills, s. */
  double halfGone(double volume) {
    return volume / 2 / rate;
  }
}
