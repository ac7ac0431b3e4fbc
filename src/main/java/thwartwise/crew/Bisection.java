package thwartwise.crew;

import java.util.function.DoublePredicate;

/** A search for the point at which something that is met ceases to be, in even steps. */
public final class Bisection {
  private Bisection() {}

  /** The last step that is met before one that is not, to 0.1. */
  static double last(double meets, double fails, double step, DoublePredicate isMet) {
    int low = 0;
    int high = (int) Math.round((fails - meets) / step);
    while (high - low > 1) {
      int middle = (low + high) / 2;
      if (isMet.test(meets + middle * step)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return Math.round((meets + low * step) * 10) / 10.0;
  }
}
