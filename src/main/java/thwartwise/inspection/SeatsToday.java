package thwartwise.inspection;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Seatings that are left out, short enough to be read aloud. */
final class SeatsToday {
  private static final int MOST = 6;

  private SeatsToday() {}

  static Set<String> notLikeThis(Recommendation r) {
    Stream<List<String>> byNumber =
        r.crewLimits().stream()
            .flatMap(l -> l.excludedSeatings().stream().filter(s -> s.size() == l.people()));
    Set<String> all =
        Stream.concat(byNumber, r.excludedSeatings().stream())
            .map(SeatsToday::told)
            .collect(Collectors.toCollection(LinkedHashSet::new));
    if (all.size() <= MOST) {
      return all;
    }
    Set<String> first =
        all.stream().limit(MOST).collect(Collectors.toCollection(LinkedHashSet::new));
    first.add("nor in the " + (all.size() - MOST) + " other ways the page leaves out");
    return first;
  }

  private static String told(List<String> seating) {
    Map<String, Integer> byPlace = new LinkedHashMap<>();
    seating.forEach(place -> byPlace.merge(place, 1, Integer::sum));
    return byPlace.entrySet().stream()
        .map(e -> GoingToday.people(e.getValue()) + " on " + e.getKey())
        .collect(Collectors.joining(" and "));
  }
}
