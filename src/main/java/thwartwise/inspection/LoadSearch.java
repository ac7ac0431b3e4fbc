package thwartwise.inspection;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import thwartwise.boat.Loading;
import thwartwise.geometry.Vector3;

/**
 * How much more may be aboard besides people and the kit listed: extra weight on the middle line,
 * on the floor, a seat or a box, at whichever spot along the boat is worst, with every crew from
 * nobody up, in every allowed seating and every mixture of heavy and light people.
 *
 * <p>Every weight up to the limit is carried, not only the limit itself: low weight can steady a
 * boat, and a swamped one can lose its steadiness over a stretch of a few kilograms, where the top
 * of a box goes under, and find it again. So each spot is walked up from nothing. A stride is as
 * long as the limits on heel leave room for ({@link Judge#stride}), and one kilogram where they
 * leave none.
 */
final class LoadSearch {
  private static final int MOST = 300;

  private final Judge judge;
  private final List<Seating> seatings;
  private final double each;

  /** For these seatings, nobody heavier than {@code each}. */
  LoadSearch(Judge judge, List<Seating> seatings, double each) {
    this.judge = judge;
    this.seatings = seatings;
    this.each = each;
  }

  private record Stow(Seating seating, Vector3 at) {}

  /** Whole kg. */
  int extra() {
    return extra(MOST);
  }

  /** The same, not more than so much. */
  int extra(int most) {
    List<Stow> stows = stows();
    AtomicInteger least = new AtomicInteger(most);
    // First what fails at the least found so far, because that bounds every walk after it.
    stows.forEach(stow -> least.set(failing(stow, least.get())));
    stows.parallelStream()
        .forEach(stow -> least.accumulateAndGet(walked(stow, least.get()), Math::min));
    return least.get();
  }

  private List<Stow> stows() {
    List<Vector3> spots = Surfaces.of(judge.craft());
    return seatings.stream().flatMap(s -> spots.stream().map(at -> new Stow(s, at))).toList();
  }

  /** One less than some weight that fails, or so much where that is carried. */
  private int failing(Stow stow, int most) {
    if (judge.carries(stow.seating(), each, weight(stow, most))) {
      return most;
    }
    int low = 0;
    int high = most;
    while (high - low > 1) {
      int middle = (low + high) / 2;
      if (judge.carries(stow.seating(), each, weight(stow, middle))) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /**
   * One less than the first weight that fails, or so much where all are carried up to it. Which
   * weights are tried does not depend on how far, so that the answer is the same every time.
   */
  private int walked(Stow stow, int most) {
    int at = 0;
    int fails = Integer.MAX_VALUE;
    double stride = stride(stow, 0);
    while (at < Math.min(most, fails - 1)) {
      int next =
          fails < Integer.MAX_VALUE ? at + 1 : at + (int) Math.max(1, Math.min(MOST, stride));
      stride = stride(stow, next);
      if (stride >= 0) {
        at = next;
      } else {
        fails = next;
      }
    }
    return Math.min(most, at);
  }

  private double stride(Stow stow, int mass) {
    return judge.stride(stow.seating(), each, weight(stow, mass));
  }

  private static Loading.Weight weight(Stow stow, int mass) {
    return new Loading.Weight(mass, stow.at());
  }
}
