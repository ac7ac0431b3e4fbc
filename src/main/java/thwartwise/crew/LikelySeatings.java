package thwartwise.crew;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The seating of each number of people that carried most last time, for this boat or another one
 * with the same hull. It is tried first next time; only for speed.
 */
final class LikelySeatings {
  private final Map<Integer, Seating> best = new ConcurrentHashMap<>();

  void remember(Seating seating) {
    best.put(seating.people(), seating);
  }

  /** The same seatings, of the same number of people, with the likely one first. */
  List<Seating> first(List<Seating> seatings) {
    Seating likely = seatings.isEmpty() ? null : best.get(seatings.get(0).people());
    if (likely == null || !seatings.contains(likely)) {
      return seatings;
    }
    List<Seating> sorted = new ArrayList<>(seatings);
    sorted.remove(likely);
    sorted.add(0, likely);
    return sorted;
  }
}
