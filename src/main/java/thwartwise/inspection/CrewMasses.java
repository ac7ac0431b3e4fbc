package thwartwise.inspection;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The masses a seating is tried with: everyone as heavy as allowed, then every mixture of the
 * heaviest and the lightest person, then everyone alike at two masses between. The worst of a state
 * that only heels, trims and sinks with the masses stands at such a corner; the masses between
 * guard against a bend.
 */
final class CrewMasses {
  private CrewMasses() {}

  static List<List<Double>> of(Seating seating, double lightest, double heaviest) {
    int people = seating.people();
    List<List<Double>> all = new ArrayList<>();
    all.add(Collections.nCopies(people, heaviest));
    if (people == 0 || !(heaviest > lightest)) {
      return all;
    }
    mix(seating, lightest, heaviest, 0, new ArrayList<>(), all);
    for (double share : List.of(1.0 / 3, 2.0 / 3)) {
      all.add(Collections.nCopies(people, lightest + share * (heaviest - lightest)));
    }
    return all;
  }

  // People at one place are alike to each other, so only their numbers count; the heavy ones sit
  // together on one side of it, which is the worse way.
  private static void mix(
      Seating seating,
      double light,
      double heavy,
      int place,
      List<Double> sofar,
      List<List<Double>> all) {
    if (place == seating.counts().size()) {
      if (sofar.contains(light)) {
        all.add(List.copyOf(sofar));
      }
      return;
    }
    int here = seating.counts().get(place);
    for (int heavies = 0; heavies <= here; heavies++) {
      List<Double> next = new ArrayList<>(sofar);
      next.addAll(Collections.nCopies(heavies, heavy));
      next.addAll(Collections.nCopies(here - heavies, light));
      mix(seating, light, heavy, place + 1, next, all);
    }
  }
}
