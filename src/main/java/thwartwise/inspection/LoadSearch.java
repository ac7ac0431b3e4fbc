package thwartwise.inspection;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import thwartwise.boat.Boat;
import thwartwise.boat.HullForm;
import thwartwise.boat.Loading;
import thwartwise.boat.Place;
import thwartwise.geometry.Vector3;

/**
 * How much more may be aboard besides people and the kit listed: extra weight on the floor on the
 * middle line, at whichever spot along the boat is worst, with every crew from nobody up, in every
 * allowed seating and every mixture of heavy and light people.
 */
final class LoadSearch {
  private static final int MOST = 300;

  /** Steps in which the floor is looked for beside a chamber, m. */
  private static final double STEP = 0.02;

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

  /**
   * Whole kg. Each stowing is tried at the least found so far and brings it down if it must; one
   * after the other, because low weight can steady a boat and then the order has a say.
   */
  double extra() {
    int least = MOST;
    for (Stow stow : stowings()) {
      if (!carried(stow, least)) {
        least = most(stow, least);
      }
    }
    return least;
  }

  private List<Stow> stowings() {
    List<Vector3> spots = spots();
    return seatings.stream().flatMap(s -> spots.stream().map(at -> new Stow(s, at))).toList();
  }

  private int most(Stow stow, int tooMuch) {
    int low = 0;
    int high = tooMuch;
    while (high - low > 1) {
      int middle = (low + high) / 2;
      if (carried(stow, middle)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  // Low weight can steady a boat, so half of it is not always easier to carry than all of it.
  private boolean carried(Stow stow, int mass) {
    return Stream.of(mass, mass / 2)
        .allMatch(m -> judge.carries(stow.seating(), each, new Loading.Weight(m, stow.at())));
  }

  private List<Vector3> spots() {
    Boat boat = judge.craft().boat();
    HullForm form = judge.craft().form();
    double aft = form.outside().extent(Vector3.of(1, 0, 0)).from();
    List<Double> along = new ArrayList<>();
    for (double share : List.of(0.08, 0.5, 0.92)) {
      along.add(aft + share * form.length());
    }
    boat.places().stream()
        .map(Place::along)
        .flatMap(a -> Stream.of(a.from(), a.middle(), a.to()))
        .distinct()
        .forEach(along::add);
    double middle = aft + form.length() / 2;
    return along.stream().map(x -> onFloor(x, middle)).distinct().toList();
  }

  /** The spot itself or, where a chamber stands, the nearest floor toward the middle. */
  private Vector3 onFloor(double x, double middle) {
    double floor = judge.craft().boat().hull().floor();
    double at = x;
    while (Math.abs(at - middle) > STEP && taken(at, floor)) {
      at += at < middle ? STEP : -STEP;
    }
    return Vector3.of(at, 0, floor);
  }

  private boolean taken(double x, double floor) {
    Vector3 justAbove = Vector3.of(x, 0, floor + 0.05);
    return judge.craft().spaces().stream().anyMatch(s -> s.box().contains(justAbove));
  }
}
