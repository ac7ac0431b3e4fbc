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
   * @param oneOrder whether it makes no difference at which end of a place the heavy ones sit,
   *     because the boat is the same on both sides and no place has a length
   */
  static List<List<Double>> of(
      Seating seating, double lightest, double heaviest, boolean oneOrder) {
    int people = seating.people();
    List<List<Double>> all = new ArrayList<>();
    all.add(Collections.nCopies(people, heaviest));
    if (people == 0 || !(heaviest > lightest)) {
      return all;
    }
    for (boolean heavyLast : oneOrder ? List.of(false) : List.of(false, true)) {
      mix(seating, lightest, heaviest, heavyLast, new ArrayList<>(), 0, all);
    }
    for (double share : List.of(1.0 / 3, 2.0 / 3)) {
      all.add(Collections.nCopies(people, lightest + share * (heaviest - lightest)));
    }
    return all;
  }

  // People at one place are alike to each other, so only their numbers count. The heavy ones sit
  // together at its starboard or aft end, the same end everywhere, and then at the other: which is
  // worse depends on the kit.
  private static void mix(
      Seating seating,
      double light,
      double heavy,
      boolean heavyLast,
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
      int first = heavyLast ? here - heavies : heavies;
      List<Double> next = new ArrayList<>(sofar);
      next.addAll(Collections.nCopies(first, heavyLast ? light : heavy));
      next.addAll(Collections.nCopies(here - first, heavyLast ? heavy : light));
      mix(seating, light, heavy, heavyLast, next, place + 1, all);
    }
  }
}
