package thwartwise.report;

import java.util.List;
import java.util.stream.Collectors;
import thwartwise.boat.Place;
import thwartwise.inspection.Recommendation;
import thwartwise.inspection.Recommendation.CrewLimit;
import thwartwise.page.FigureText;
import thwartwise.page.Page;
import thwartwise.page.Sentence;

/** Where people sit: for each number of them how heavy they may be, and which seatings fail. */
final class SeatingWords {
  /** More seatings than this are not named one by one; those that are left out are. */
  private static final int MOST_NAMED = 6;

  private SeatingWords() {}

  static void write(Page page, List<Place> places, Recommendation crew) {
    page.gap();
    if (places.isEmpty()) {
      page.paragraph("No place to sit was measured, so no seating could be looked at");
      return;
    }
    page.paragraph("Where they sit, and how heavy each of them may be");
    page.paragraph("There is room on " + Sentence.list(takes(places)));
    limits(page, places, crew);
  }

  /** The same without how much room there is. */
  static void lines(Page page, List<Place> places, Recommendation crew) {
    if (places.isEmpty()) {
      page.paragraph("No place to sit was measured, so no seating could be looked at");
      return;
    }
    page.paragraph("Where they sit, and how heavy each of them may be:");
    limits(page, places, crew);
  }

  /** For each number of people how heavy, and how they sit. */
  static void limits(Page page, List<Place> places, Recommendation crew) {
    crew.crewLimits().forEach(limit -> page.point(words(limit, places, crew.adult())));
    remaining(crew).forEach(seating -> page.point(not(List.of(seating), places)));
  }

  private static List<String> takes(List<Place> places) {
    return places.stream()
        .map(place -> place.name() + " (" + FigureText.people(place.people()) + ")")
        .toList();
  }

  private static String[] words(CrewLimit limit, List<Place> places, double adult) {
    List<List<String>> not =
        limit.excludedSeatings().stream().filter(s -> s.size() == limit.people()).toList();
    String heavy = FigureText.people(limit.people()) + ": " + upTo(limit) + besides(limit, adult);
    String so =
        limit.besidesLike().isEmpty()
            ? ""
            : "With that besides only like this: " + one(limit.besidesLike());
    if (limit.lighter().isEmpty()) {
      return new String[] {
        heavy, so, limit.people() == 1 ? alone(places, not) : together(limit.people(), places, not)
      };
    }
    return new String[] {
      heavy, so, heaviest(limit, places, not), lighter(limit), never(limit, places)
    };
  }

  /** Nothing in a record that tells it for the whole boat alone. */
  private static String besides(CrewLimit limit, double adult) {
    if (Double.isNaN(limit.extra())) {
      return "";
    }
    if (limit.extra() < 1) {
      return ", and nothing besides";
    }
    String mass = ", and " + FigureText.with(FigureText.down(limit.extra(), 0), "kg") + " besides";
    return limit.eachUpTo() > adult
        ? mass + " while nobody is over " + FigureText.with(FigureText.down(adult, 0), "kg")
        : mass;
  }

  /** How they sit as heavy as they may be. */
  private static String heaviest(CrewLimit limit, List<Place> places, List<List<String>> not) {
    List<List<String>> left = Seatings.without(Seatings.of(limit.people(), places), not);
    if (left.equals(List.of(limit.besidesLike()))) {
      return "So heavy, too, only like this";
    }
    return left.isEmpty() || left.size() > MOST_NAMED
        ? ""
        : "So heavy only like this: " + told(left);
  }

  private static String lighter(CrewLimit limit) {
    String each = limit.people() > 1 ? " each" : "";
    String bare = limit.besidesLike().isEmpty() ? ", with nothing besides: " : ": ";
    return "Lighter people also like this"
        + bare
        + limit.lighter().stream()
            .map(
                l ->
                    one(l.places())
                        + " up to "
                        + FigureText.with(FigureText.down(l.eachUpTo(), 0), "kg")
                        + each)
            .collect(Collectors.joining("; "));
  }

  private static String never(CrewLimit limit, List<Place> places) {
    List<List<String>> never =
        limit.excludedSeatings().stream().filter(s -> limit.upTo(s).isEmpty()).toList();
    return never.isEmpty() ? "" : not(never, places);
  }

  static String upTo(CrewLimit limit) {
    return "up to "
        + FigureText.with(FigureText.down(limit.eachUpTo(), 0), "kg")
        + (limit.people() > 1 ? " each" : "");
  }

  /** Somebody alone wants to know where to sit before where not to. */
  private static String alone(List<Place> places, List<List<String>> excluded) {
    List<String> not = excluded.stream().map(seating -> seating.get(0)).distinct().toList();
    List<String> on = places.stream().map(Place::name).filter(p -> !not.contains(p)).toList();
    if (not.isEmpty()) {
      return "";
    }
    return on.isEmpty() ? "No place will do" : "Sit on " + either(on) + ", not on " + either(not);
  }

  private static String either(List<String> places) {
    return String.join(" or ", places);
  }

  /** Whichever is shorter: how they may sit, or how they may not. */
  private static String together(int people, List<Place> places, List<List<String>> excluded) {
    List<List<String>> left = Seatings.without(Seatings.of(people, places), excluded);
    if (excluded.isEmpty()) {
      return "";
    }
    if (left.isEmpty()) {
      return "No seating will do";
    }
    return left.size() <= excluded.size() ? "Only like this: " + told(left) : not(excluded, places);
  }

  private static String not(List<List<String>> seatings, List<Place> places) {
    return "Not like this: "
        + seatings.stream()
            .map(seating -> one(seating) + emptySide(seating, places))
            .collect(Collectors.joining("; "));
  }

  /** Where nobody sits opposite people on one side. */
  private static String emptySide(List<String> seating, List<Place> places) {
    List<String> empty =
        places.stream()
            .filter(place -> !seating.contains(place.name()))
            .filter(place -> isOppositeSomebody(place, seating, places))
            .map(Place::name)
            .toList();
    return empty.isEmpty() ? "" : " with nobody on " + either(empty);
  }

  private static boolean isOppositeSomebody(Place empty, List<String> seating, List<Place> places) {
    return places.stream()
        .filter(place -> seating.contains(place.name()))
        .anyMatch(
            taken ->
                empty.isToOneSide()
                    && taken.isToOneSide()
                    && empty.across().middle() * taken.across().middle() < 0);
  }

  private static String told(List<List<String>> seatings) {
    return seatings.stream().map(SeatingWords::one).collect(Collectors.joining("; "));
  }

  /** Seatings of numbers for which no limit is told. */
  private static List<List<String>> remaining(Recommendation crew) {
    List<Integer> told = crew.crewLimits().stream().map(CrewLimit::people).toList();
    return crew.excludedSeatings().stream().filter(s -> !told.contains(s.size())).toList();
  }

  private static String one(List<String> seating) {
    if (seating.isEmpty()) {
      return "nobody aboard";
    }
    return Sentence.list(
        Seatings.byPlace(seating).entrySet().stream()
            .map(e -> FigureText.count(e.getValue()) + " on " + e.getKey())
            .toList());
  }
}
