package thwartwise.report;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import thwartwise.boat.Place;
import thwartwise.crew.Recommendation.CrewLimit;

/** All seatings of a number of people on the places there are: the place of each person. */
final class Seatings {
  private Seatings() {}

  static List<List<String>> of(int people, List<Place> places) {
    List<List<String>> all = new ArrayList<>();
    fill(people, places, new ArrayList<>(), all);
    return all;
  }

  private static void fill(
      int left, List<Place> places, List<String> sofar, List<List<String>> all) {
    if (left == 0) {
      all.add(List.copyOf(sofar));
    }
    if (left == 0 || places.isEmpty()) {
      return;
    }
    Place place = places.get(0);
    for (int here = Math.min(left, place.people()); here >= 0; here--) {
      List<String> next = new ArrayList<>(sofar);
      next.addAll(Collections.nCopies(here, place.name()));
      fill(left - here, places.subList(1, places.size()), next, all);
    }
  }

  /** The allowed seatings, whatever the order of people. */
  static List<List<String>> without(List<List<String>> all, List<List<String>> excluded) {
    List<List<String>> sorted = excluded.stream().map(Seatings::sorted).toList();
    return all.stream().filter(seating -> !sorted.contains(sorted(seating))).toList();
  }

  /** The seatings allowed at the greatest mass of each person. */
  static List<List<String>> left(CrewLimit limit, List<Place> places) {
    List<List<String>> not =
        limit.excludedSeatings().stream().filter(s -> s.size() == limit.people()).toList();
    return without(of(limit.people(), places), not);
  }

  /** Whether there is more than one seating and every one is allowed. */
  static boolean isAnyWay(CrewLimit limit, List<Place> places) {
    int all = of(limit.people(), places).size();
    return all > 1 && left(limit, places).size() == all;
  }

  /** The number of people at each place, in the order of the places. */
  static Map<String, Integer> byPlace(List<String> seating) {
    Map<String, Integer> byPlace = new LinkedHashMap<>();
    seating.forEach(place -> byPlace.merge(place, 1, Integer::sum));
    return byPlace;
  }

  private static List<String> sorted(List<String> seating) {
    return seating.stream().sorted().toList();
  }
}
