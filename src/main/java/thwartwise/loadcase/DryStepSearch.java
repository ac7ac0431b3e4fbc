package thwartwise.loadcase;

import java.util.Optional;
import java.util.function.IntToDoubleFunction;

/**
 * The search for the last of some evenly spaced pulls at which the lowest edge is above the water;
 * at zero it is assumed to be. The edge sinks as the pull grows, usually in proportion: the next
 * step tried is where a straight line between two heights meets the water, with the height of an
 * end that stays halved each time (the Illinois rule), so that both ends converge. One instance for
 * each search.
 */
final class DryStepSearch {
  /**
   * The first step tried, then twice as many and so on, because a boat far overpowered takes
   * longest to answer.
   */
  private static final int FIRST = 16;

  /** Whether it is enough to know that the answer is between one step and another. */
  @FunctionalInterface
  interface Enough {
    boolean between(int dry, int wet);
  }

  /**
   * The result.
   *
   * @param step the last one that is dry
   * @param fall of the edge to the next step, m; not a number where that has no equilibrium
   */
  record Found(int step, double fall) {}

  private final IntToDoubleFunction height;
  private final int most;
  private final Enough enough;
  private int dry = 0;
  private int wet;
  private double atDry = Double.NaN;
  private double atWet = Double.NaN;
  private double dryWeight = 1;
  private double wetWeight = 1;
  private boolean lastWasDry;

  /**
   * @param height of the edge by the number of the step, m; not a number where there is no
   *     equilibrium
   * @param most number of steps
   */
  DryStepSearch(IntToDoubleFunction height, int most, Enough enough) {
    this.height = height;
    this.most = most;
    this.enough = enough;
    this.wet = most + 1;
  }

  /**
   * @param nearly the result for the same boat with slightly different measurements
   */
  Found from(Optional<Found> nearly) {
    if (nearly.isPresent()) {
      closeInFrom(nearly.get());
    } else {
      widen();
    }
    while (wet - dry > 1 && !isEnough()) {
      trial(between());
    }
    return new Found(dry, (atDry - atWet) / (wet - dry));
  }

  private boolean isEnough() {
    return enough.between(dry, wet);
  }

  private void widen() {
    for (int step = Math.min(FIRST, most); wet > most && dry < most; step = 2 * step) {
      trial(Math.min(most, step));
      if (isEnough()) {
        return;
      }
    }
  }

  private void closeInFrom(Found nearly) {
    int step = Math.max(1, Math.min(most, nearly.step));
    for (int least = 1; !isEnough(); least *= 2) {
      double edge = trial(step);
      boolean isDry = edge >= 0;
      if (isDry ? wet <= most || step == most : dry > 0 || step == 1) {
        return;
      }
      int by = Math.max(least, nearly.fall > 0 ? (int) (Math.abs(edge) / nearly.fall) : 0);
      step = isDry ? Math.min(most, step + by) : Math.max(1, step - by);
    }
  }

  private double trial(int step) {
    double edge = height.applyAsDouble(step);
    boolean isDry = edge >= 0;
    if (isDry) {
      dry = step;
      atDry = edge;
      dryWeight = 1;
      wetWeight = lastWasDry ? wetWeight / 2 : wetWeight;
    } else {
      wet = step;
      atWet = edge;
      wetWeight = 1;
      dryWeight = lastWasDry ? dryWeight : dryWeight / 2;
    }
    lastWasDry = isDry;
    return edge;
  }

  private int between() {
    double above = dryWeight * atDry;
    double share = above / (above - wetWeight * atWet);
    double at = share > 0 && share < 1 ? dry + share * (wet - dry) : (dry + wet) / 2.0;
    return Math.max(dry + 1, Math.min(wet - 1, (int) at));
  }
}
