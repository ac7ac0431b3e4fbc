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

  /**
   * @param symmetric whether the boat is the same on both sides, so that one side will do
   */
  static List<List<Double>> of(
      Seating seating, double lightest, double heaviest, boolean symmetric) {
    int people = seating.people();
    List<List<Double>> all = new ArrayList<>();
    all.add(Collections.nCopies(people, heaviest));
    if (people == 0 || !(heaviest > lightest)) {
      return all;
    }
    for (boolean heavyToPort : symmetric ? List.of(false) : List.of(false, true)) {
      mix(seating, lightest, heaviest, heavyToPort, new ArrayList<>(), 0, all);
    }
    for (double share : List.of(1.0 / 3, 2.0 / 3)) {
      all.add(Collections.nCopies(people, lightest + share * (heaviest - lightest)));
    }
    return all;
  }

  // People at one place are alike to each other, so only their numbers count. The heavy ones sit
  // together on one side of it, the same side everywhere, and then on the other: which is worse
  // depends on the kit.
  private static void mix(
      Seating seating,
      double light,
      double heavy,
      boolean heavyToPort,
      List<Double> sofar,
      int place,
      List<List<Double>> all) {
    if (place == seating.counts().size()) {
      if (sofar.contains(light) && !all.contains(sofar)) {
        all.add(List.copyOf(sofar));
      }
      return;
    }
    int here = seating.counts().get(place);
    for (int heavies = 0; heavies <= here; heavies++) {
      int starboard = heavyToPort ? here - heavies : heavies;
      List<Double> next = new ArrayList<>(sofar);
      next.addAll(Collections.nCopies(starboard, heavyToPort ? light : heavy));
      next.addAll(Collections.nCopies(here - starboard, heavyToPort ? heavy : light));
      mix(seating, light, heavy, heavyToPort, next, place + 1, all);
    }
  }
}
