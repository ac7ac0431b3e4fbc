package thwartwise.crew;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The masses with which a seating is tried: everyone at the greatest, then every mixture of the
 * greatest and the least, then everyone equal at two masses between. The worst case of a state that
 * only heels, trims and sinks with the masses is at such a corner; the masses between guard against
 * a curve.
 */
public final class CrewMasses {
  private static final double LIGHT = 0;
  private static final double HEAVY = 1;

  private CrewMasses() {}

  /**
   * @param oneOrder whether the end of a place where the heavy people sit makes no difference,
   *     because the boat is symmetric and no place has a length
   */
  static List<List<Double>> of(
      Seating seating, double lightest, double heaviest, boolean oneOrder) {
    int people = seating.people();
    if (people == 0 || !(heaviest > lightest)) {
      return List.of(Collections.nCopies(people, heaviest));
    }
    List<List<Double>> shares = new ArrayList<>(growing(seating, oneOrder));
    List.of(LIGHT, 1.0 / 3, 2.0 / 3).forEach(s -> shares.add(Collections.nCopies(people, s)));
    return shares.stream().map(mixture -> masses(mixture, lightest, heaviest)).toList();
  }

  /**
   * Everyone heavy and then every mixture with a heavy person in it, as shares of the way from the
   * lightest to the heaviest.
   */
  static List<List<Double>> growing(Seating seating, boolean oneOrder) {
    List<List<Double>> all = new ArrayList<>();
    all.add(Collections.nCopies(seating.people(), HEAVY));
    for (boolean heavyLast : oneOrder ? List.of(false) : List.of(false, true)) {
      mix(seating, heavyLast, new ArrayList<>(), 0, all);
    }
    return all;
  }

  /** The masses, kg. */
  static List<Double> masses(List<Double> shares, double lightest, double heaviest) {
    return shares.stream()
        .map(s -> s == HEAVY ? heaviest : lightest + s * (heaviest - lightest))
        .toList();
  }

  // People at one place are interchangeable, so only their numbers count. The heavy ones sit
  // together at its starboard or aft end, the same end everywhere, and then at the other; which is
  // worse depends on the kit.
  private static void mix(
      Seating seating, boolean heavyLast, List<Double> sofar, int place, List<List<Double>> all) {
    if (place == seating.counts().size()) {
      if (sofar.contains(HEAVY) && !all.contains(sofar)) {
        all.add(List.copyOf(sofar));
      }
      return;
    }
    int here = seating.counts().get(place);
    for (int heavies = 0; heavies <= here; heavies++) {
      int first = heavyLast ? here - heavies : heavies;
      List<Double> next = new ArrayList<>(sofar);
      next.addAll(Collections.nCopies(first, heavyLast ? LIGHT : HEAVY));
      next.addAll(Collections.nCopies(here - first, heavyLast ? HEAVY : LIGHT));
      mix(seating, heavyLast, next, place + 1, all);
    }
  }
}
