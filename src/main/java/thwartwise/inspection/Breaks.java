package thwartwise.inspection;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import thwartwise.checks.Reading;

/**
 * What a crew breaks: the readings that are not met in the seating that breaks least.
 *
 * @param readings each check's worst reading that is not met
 */
record Breaks(List<Reading> readings) {

  /** Empty when the boat has no seats for so many. */
  static Optional<Breaks> of(Judge judge, int people, double mass) {
    return Seating.of(people, judge.craft().boat().places()).parallelStream()
        .map(s -> new Breaks(judge.notMet(s, mass)))
        .filter(b -> !b.readings.isEmpty())
        .min(Comparator.comparingInt(b -> b.readings.size()));
  }

  String first() {
    return readings.get(0).check();
  }

  List<String> words() {
    return readings.stream().map(Reading::words).toList();
  }
}
