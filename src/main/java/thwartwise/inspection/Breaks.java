package thwartwise.inspection;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What a crew breaks: the readings that are not met in the seating that breaks least.
 *
 * @param breaches each check's worst reading that is not met
 */
record Breaks(List<Breach> breaches) {

  /** Empty when the boat has no seats for so many. */
  static Optional<Breaks> of(Judge judge, int people, double mass) {
    return Seating.of(people, judge.craft().boat().places()).parallelStream()
        .map(s -> new Breaks(judge.notMet(s, mass)))
        .filter(b -> !b.breaches.isEmpty())
        .min(Comparator.comparingInt(b -> b.breaches.size()));
  }

  String first() {
    return breaches.get(0).reading().check();
  }

  List<String> words() {
    return breaches.stream().map(Breach::words).toList();
  }
}
