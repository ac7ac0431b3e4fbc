package thwartwise.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import thwartwise.boat.Place;

/** Where people sit, and which seatings fail by themselves. */
final class SeatingWords {
  private SeatingWords() {}

  static void write(Page page, List<Place> places, List<List<String>> excluded) {
    page.gap();
    if (places.isEmpty()) {
      page.paragraph("No place to sit was measured, so no seating could be looked at");
      return;
    }
    page.paragraph("Where they sit: " + Sentence.list(takes(places)));
    alone(page, places, excluded);
    excluded.stream().filter(seating -> seating.size() != 1).forEach(s -> page.point(not(s)));
  }

  private static List<String> takes(List<Place> places) {
    return places.stream()
        .map(place -> place.name() + " (" + Shown.people(place.people()) + ")")
        .toList();
  }

  /** Somebody alone wants to know where to sit before where not to. */
  private static void alone(Page page, List<Place> places, List<List<String>> excluded) {
    List<String> not =
        excluded.stream()
            .filter(seating -> seating.size() == 1)
            .map(seating -> seating.get(0))
            .distinct()
            .toList();
    List<String> on = places.stream().map(Place::name).filter(p -> !not.contains(p)).toList();
    if (!not.isEmpty()) {
      page.point(
          on.isEmpty()
              ? "Alone: no place will do"
              : "Alone: sit on " + either(on) + ", not on " + either(not));
    }
  }

  private static String either(List<String> places) {
    return String.join(" or ", places);
  }

  private static String not(List<String> seating) {
    if (seating.isEmpty()) {
      return "Not without anybody aboard";
    }
    Map<String, Long> byPlace =
        seating.stream()
            .collect(Collectors.groupingBy(p -> p, LinkedHashMap::new, Collectors.counting()));
    List<String> parts =
        byPlace.entrySet().stream()
            .map(e -> Shown.people(e.getValue().intValue()) + " on " + e.getKey())
            .toList();
    return "Not like this: " + Sentence.list(parts);
  }
}
