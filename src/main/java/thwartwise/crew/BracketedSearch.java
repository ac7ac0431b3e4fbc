package thwartwise.crew;

import java.util.function.DoubleFunction;

/**
 * A search in even steps for the last value that is met before one that is not. The sign of a
 * headroom alone decides; its size shows which step to try next, by the secant through both ends.
 * The middle is tried where the size is unknown, and where two tries have not halved the steps.
 */
final class BracketedSearch {
  private BracketedSearch() {}

  /** The last step that is met, to 0.1. */
  static double lastMet(
      double meets, double fails, double step, DoubleFunction<Headroom> headroom) {
    int low = 0;
    int high = (int) Math.round((fails - meets) / step);
    double atLow = high > 1 ? headroom.apply(meets).mass() : 0;
    double atHigh = high > 1 ? headroom.apply(fails).mass() : 0;
    double twoAgo = Double.POSITIVE_INFINITY;
    double oneAgo = Double.POSITIVE_INFINITY;
    while (high - low > 1) {
      int steps = high - low;
      int next = low + (steps <= twoAgo / 2 ? secant(steps, atLow, atHigh) : steps / 2);
      twoAgo = oneAgo;
      oneAgo = steps;
      Headroom there = headroom.apply(meets + next * step);
      if (there.isMet()) {
        low = next;
        atLow = there.mass();
      } else {
        high = next;
        atHigh = there.mass();
      }
    }
    return Math.round((meets + low * step) * 10) / 10.0;
  }

  /** Between the ends, where the headroom seems to be used up. */
  private static int secant(int steps, double atLow, double atHigh) {
    double share = atLow / (atLow - atHigh);
    return share >= 0 && Double.isFinite(atHigh)
        ? (int) Math.max(1, Math.min(steps - 1, Math.floor(steps * share)))
        : steps / 2;
  }
}
