package thwartwise.today;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thwartwise.crew.Recommendation;
import thwartwise.crew.Recommendation.CrewLimit;
import thwartwise.measure.QuantityText;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;

/** Seatings that are left out, short enough to be read aloud. */
final class SeatsToday {
  private static final int MOST = 6;

  private SeatsToday() {}

  static Set<String> forbiddenSeatings(Recommendation r, UnitFormat units) {
    List<Integer> told = r.crewLimits().stream().map(CrewLimit::people).toList();
    Stream<String> byNumber = r.crewLimits().stream().flatMap(l -> told(l, units));
    Stream<String> others =
        r.excludedSeatings().stream().filter(s -> !told.contains(s.size())).map(SeatsToday::told);
    Set<String> all =
        Stream.concat(byNumber, others).collect(Collectors.toCollection(LinkedHashSet::new));
    if (all.size() <= MOST) {
      return all;
    }
    Set<String> first =
        all.stream().limit(MOST).collect(Collectors.toCollection(LinkedHashSet::new));
    first.add((all.size() - MOST) + " more ways that the page names");
    return first;
  }

  /** A seating that lighter people may have is left out from their mass up. */
  private static Stream<String> told(CrewLimit limit, UnitFormat units) {
    return limit.excludedSeatings().stream()
        .filter(s -> s.size() == limit.people())
        .map(s -> told(s) + over(limit.upTo(s), units));
  }

  /** How they sit with something besides; blank where it makes no difference. */
  static String seatingNote(CrewLimit limit) {
    return limit.besidesLike().isEmpty() ? "" : " (" + told(limit.besidesLike()) + ")";
  }

  private static String over(OptionalDouble most, UnitFormat units) {
    return most.isEmpty() ? "" : " over " + units.mass(most.getAsDouble(), Side.DOWN);
  }

  private static String told(List<String> seating) {
    Map<String, Integer> byPlace = new LinkedHashMap<>();
    seating.forEach(place -> byPlace.merge(place, 1, Integer::sum));
    return byPlace.entrySet().stream()
        .map(e -> QuantityText.people(e.getValue()) + " on " + e.getKey())
        .collect(Collectors.joining(" and "));
  }
}
