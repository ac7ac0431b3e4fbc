package thwartwise.loadcase;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.function.IntFunction;
import thwartwise.geometry.Vector3;

/**
 * The search for the last of some evenly spaced pulls at which the lowest edge is above the water
 * and was so at every lesser pull; at zero it is assumed to be. The edge sinks as the pull grows,
 * usually in proportion: the next step tried is where a straight line between two heights meets the
 * water, with the height of an end that stays halved each time (the Illinois rule), so that both
 * ends converge. One instance for each search.
 *
 * <p>A boat may have no stable equilibrium at one pull and have one at a greater pull, farther
 * over. It is soft on both sides of such a gap: so no two dry steps are left that are far apart, or
 * a few degrees apart in a soft boat, without a trial between them.
 */
final class DryStepSearch {
  /**
   * The first step tried, then twice as many and so on, because a boat far overpowered takes
   * longest to answer.
   */
  private static final int FIRST = 16;

  /**
   * A metacentric height, m, with which a boat is not about to lose its equilibrium (judgement).
   */
  private static final double STIFF = 0.2;

  /** The longest turn between two dry steps, rad, and the same where the boat is less stiff. */
  private static final double LONGEST_TURN = Math.toRadians(20);

  private static final double LONGEST_SOFT_TURN = Math.toRadians(1);

  /** Whether it is enough to know that the answer is between one step and another. */
  @FunctionalInterface
  interface Enough {
    boolean between(int dry, int wet);
  }

  /**
   * The boat at one of the steps.
   *
   * @param height of the edge, m; not a number where there is no equilibrium
   * @param up the vertical in the boat's axes
   * @param stiffness the least metacentric height, m
   */
  record Trial(double height, Vector3 up, double stiffness) {
    boolean isFarFrom(Trial other) {
      boolean stiff = Math.min(stiffness, other.stiffness) > STIFF;
      return up.minus(other.up).norm() > (stiff ? LONGEST_TURN : LONGEST_SOFT_TURN);
    }
  }

  /**
   * The result.
   *
   * @param step the last one that is dry
   * @param fall of the edge to the next step, m; not a number where that has no equilibrium
   */
  record Found(int step, double fall) {}

  private final IntFunction<Trial> pulled;
  private final int most;
  private final Enough enough;
  private final TreeMap<Integer, Trial> dryTrials = new TreeMap<>();
  private int dry = 0;
  private int wet;
  private double atDry = Double.NaN;
  private double atWet = Double.NaN;
  private double dryWeight = 1;
  private double wetWeight = 1;
  private boolean lastWasDry;

  /**
   * @param rest the boat without a pull
   * @param pulled the boat by the number of the step
   * @param most number of steps
   */
  DryStepSearch(Trial rest, IntFunction<Trial> pulled, int most, Enough enough) {
    this.pulled = pulled;
    this.most = most;
    this.enough = enough;
    this.wet = most + 1;
    dryTrials.put(0, rest);
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
    closeIn();
    for (OptionalInt step = unsure(); step.isPresent(); step = unsure()) {
      trial(step.getAsInt());
      closeIn();
    }
    return new Found(dry, (atDry - atWet) / (wet - dry));
  }

  private void closeIn() {
    while (wet - dry > 1 && !isEnough()) {
      trial(between());
    }
  }

  private boolean isEnough() {
    return enough.between(dry, wet);
  }

  /** A step between the first two dry ones that are too far from each other. */
  private OptionalInt unsure() {
    Map.Entry<Integer, Trial> before = dryTrials.firstEntry();
    for (Map.Entry<Integer, Trial> next : dryTrials.entrySet()) {
      if (next.getKey() - before.getKey() > 1 && next.getValue().isFarFrom(before.getValue())) {
        return OptionalInt.of((before.getKey() + next.getKey()) / 2);
      }
      before = next;
    }
    return OptionalInt.empty();
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
    Trial trial = pulled.apply(step);
    double edge = trial.height();
    boolean isDry = edge >= 0;
    if (isDry) {
      dryTrials.put(step, trial);
    }
    if (isDry && step > dry) {
      dry = step;
      atDry = edge;
      dryWeight = 1;
      wetWeight = lastWasDry ? wetWeight / 2 : wetWeight;
    } else if (!isDry) {
      wet = step;
      atWet = edge;
      wetWeight = 1;
      dryWeight = lastWasDry ? dryWeight : dryWeight / 2;
      forgetBeyond(step);
    }
    lastWasDry = isDry;
    return edge;
  }

  /** Leaves out what is dry at a greater pull than a wet one. */
  private void forgetBeyond(int step) {
    if (dry > step) {
      dryTrials.tailMap(step).clear();
      dry = dryTrials.lastKey();
      atDry = dryTrials.lastEntry().getValue().height();
      dryWeight = 1;
    }
  }

  private int between() {
    double above = dryWeight * atDry;
    double share = above / (above - wetWeight * atWet);
    double at = share > 0 && share < 1 ? dry + share * (wet - dry) : (dry + wet) / 2.0;
    return Math.max(dry + 1, Math.min(wet - 1, (int) at));
  }
}
