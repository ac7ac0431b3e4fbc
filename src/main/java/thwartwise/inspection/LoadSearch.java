package thwartwise.inspection;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
 * of a box goes under, and find it again. So a weight is found that is carried everywhere, and each
 * check of each mixture is walked up to it from nothing. A stride is as long as the limits on heel
 * leave room for ({@link Judge#stride}); where one leads to what is not met, the way there is gone
 * again by single kilograms.
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
    List<Vector3> spots = spots();
    int end = carriedAnywhere(spots, most);
    AtomicInteger least = new AtomicInteger(end);
    seatings.stream()
        .flatMap(seating -> judge.asked(seating, each).stream())
        .toList()
        .parallelStream()
        .forEach(mixture -> mixture.forEach(asked -> walk(asked, spots, end, least)));
    return least.get();
  }

  /** Those at the ends first: what fails there at once spares the others a search. */
  private List<Vector3> spots() {
    double middle = judge.craft().form().length() / 2;
    return Surfaces.of(judge.craft()).stream()
        .sorted(Comparator.comparingDouble(at -> -Math.abs(at.x() - middle)))
        .toList();
  }

  /** A weight that every seating carries at every spot, and no more than so much. */
  private int carriedAnywhere(List<Vector3> spots, int most) {
    List<Stow> stows =
        spots.stream().flatMap(at -> seatings.stream().map(s -> new Stow(s, at))).toList();
    Map<Stow, Integer> carried = new HashMap<>();
    int least = most;
    while (!stows.isEmpty()) {
      for (Stow stow : stows) {
        least = carried(stow, least);
        carried.put(stow, least);
      }
      int now = least;
      stows = stows.stream().filter(stow -> carried.get(stow) > now).toList();
    }
    return least;
  }

  /** One less than some weight that fails, or so much where that is carried. */
  private int carried(Stow stow, int most) {
    if (judge.carries(stow.seating(), each, weight(stow.at(), most))) {
      return most;
    }
    int low = 0;
    int high = most;
    while (high - low > 1) {
      int middle = (low + high) / 2;
      if (judge.carries(stow.seating(), each, weight(stow.at(), middle))) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  /** From where nothing more is aboard, which is the same for every spot. */
  private void walk(Judge.Asked asked, List<Vector3> spots, int end, AtomicInteger least) {
    double stride = judge.stride(asked);
    for (Vector3 at : spots) {
      least.accumulateAndGet(walked(asked, at, stride, end, least), Math::min);
    }
  }

  /**
   * One less than the first weight that fails, or so much where all are carried up to the end,
   * which is known to be. Which weights are tried does not depend on the least found elsewhere, so
   * that the answer is the same every time.
   */
  private int walked(Judge.Asked asked, Vector3 spot, double first, int end, AtomicInteger least) {
    int at = 0;
    int fails = Integer.MAX_VALUE;
    double stride = first;
    while (at < Math.min(least.get(), fails - 1)) {
      int next = at + (fails < Integer.MAX_VALUE ? 1 : (int) Math.max(1, Math.min(MOST, stride)));
      if (next >= end) {
        return end;
      }
      stride = judge.stride(asked.with(weight(spot, next)));
      if (stride >= 0) {
        at = next;
      } else {
        fails = next;
      }
    }
    return at;
  }

  private static Loading.Weight weight(Vector3 at, int mass) {
    return new Loading.Weight(mass, at);
  }
}
