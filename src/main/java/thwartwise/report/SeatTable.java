package thwartwise.report;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thwartwise.boat.Place;
import thwartwise.crew.Recommendation;
import thwartwise.crew.Recommendation.CrewLimit;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.page.FigureText;
import thwartwise.page.Page;
import thwartwise.page.Table;

/** For each number of people the greatest mass of each, the extra weight, and their seats. */
final class SeatTable {
  /** More seatings than this are not named one by one. */
  private static final int MOST_NAMED = 6;

  /** The number of seatings that are named among those nobody may have. */
  private static final int MOST_EXCLUDED = 12;

  private static final List<Table.Column> COLUMNS =
      List.of(
          new Table.Column("Aboard", 8),
          new Table.Column("Each up to", 10),
          new Table.Column("Extra", 8),
          new Table.Column("Sitting like this", 51));

  private static final List<Table.Column> BOTH_UNITS =
      List.of(
          new Table.Column("Aboard", 8),
          new Table.Column("Each up to", 15),
          new Table.Column("Extra", 15),
          new Table.Column("Sitting like this", 39));

  private final List<Place> places;
  private final Recommendation crew;
  private final UnitFormat units;

  private final boolean bothUnits;

  private SeatTable(List<Place> places, Recommendation crew, UnitFormat units, boolean bothUnits) {
    this.bothUnits = bothUnits;
    this.places = places;
    this.crew = crew;
    this.units = units;
  }

  static void write(Page page, List<Place> places, Recommendation crew, UnitFormat units) {
    new SeatTable(places, crew, units, false).write(page);
  }

  /** The same in kilograms and in pounds. */
  static void forStrangers(Page page, List<Place> places, Recommendation crew, UnitFormat units) {
    new SeatTable(places, crew, units, true).write(page);
  }

  private void write(Page page) {
    if (places.isEmpty()) {
      page.paragraph("No place to sit was measured, so no seating could be looked at");
      return;
    }
    List<Table.Column> columns = bothUnits ? BOTH_UNITS : COLUMNS;
    page.table(Table.close(columns, crew.crewLimits().stream().map(this::row).toList()));
    page.paragraph(never(), extra());
    List<List<String>> excluded = excluded();
    if (!excluded.isEmpty()) {
      page.point(
          "Never like this: "
              + excluded.stream()
                  .limit(MOST_EXCLUDED)
                  .map(s -> (s.size() == 1 ? "alone on " : "") + one(s) + emptySide(s))
                  .collect(Collectors.joining("; "))
              + (excluded.size() > MOST_EXCLUDED ? "; or in any way not listed here" : ""));
    }
  }

  private List<String> row(CrewLimit limit) {
    return List.of(
        limit.people() + (limit.people() == 1 ? " person" : " people"),
        mass(limit.massLimit()),
        extra(limit),
        seats(limit));
  }

  /** The extra weight; blank in an older record without it for each number of people. */
  private String extra(CrewLimit limit) {
    if (Double.isNaN(limit.extraMass())) {
      return "";
    }
    return limit.extraMass() < 1 ? "nothing" : mass(limit.extraMass());
  }

  private String mass(double kilograms) {
    return bothUnits ? units.masses(kilograms, Side.DOWN) : units.mass(kilograms, Side.DOWN);
  }

  private String seats(CrewLimit limit) {
    List<List<String>> left = Seatings.left(limit, places);
    if (left.isEmpty()) {
      return "no seating will do";
    }
    if (Seatings.isAnyWay(limit, places)) {
      return "any of the places" + only(limit, left);
    }
    List<List<String>> named = left.subList(0, Math.min(MOST_NAMED, left.size()));
    int more = left.size() - named.size();
    return named.stream().map(SeatTable::one).collect(Collectors.joining("; or "))
        + (more > 0 ? "; or " + more + " other ways" : "")
        + only(limit, left);
  }

  private static String only(CrewLimit limit, List<List<String>> left) {
    return isOnlyLikeThat(limit, left)
        ? "; with that extra weight only " + one(limit.extraSeating())
        : "";
  }

  /** Whether the extra weight may be aboard in one of the seatings alone. */
  static boolean isOnlyLikeThat(CrewLimit limit, List<List<String>> left) {
    return !limit.extraSeating().isEmpty() && !left.equals(List.of(limit.extraSeating()));
  }

  static String one(List<String> seating) {
    if (seating.isEmpty()) {
      return "nobody aboard";
    }
    return Seatings.byPlace(seating).entrySet().stream()
        .map(e -> e.getKey() + (e.getValue() > 1 ? " (" + e.getValue() + ")" : ""))
        .collect(Collectors.joining(", "));
  }

  /**
   * The greatest number of people, because a limit in kilograms alone would allow a crowd of
   * children.
   */
  private String never() {
    return "Never more than "
        + FigureText.people(CrewWords.most(crew))
        + ", however light they are";
  }

  /** The extra weight, which was searched with nobody heavier than an adult. */
  private String extra() {
    boolean heavier = CrewWords.isExtraForLightPeopleOnly(crew);
    return "Extra weight: low down on the middle line"
        + (heavier ? ", and only while nobody is over " + units.mass(crew.adult(), Side.DOWN) : "");
  }

  /** Further seatings for lighter people. */
  static Page others(List<Place> places, Recommendation crew, UnitFormat units) {
    return new SeatTable(places, crew, units, false).others();
  }

  private Page others() {
    Page page = new Page();
    for (CrewLimit limit : crew.crewLimits()) {
      if (!limit.lighter().isEmpty()) {
        page.point(
            FigureText.people(limit.people())
                + (limit.extraSeating().isEmpty() ? ", without extra weight: " : ": ")
                + lighter(limit));
      }
    }
    return page;
  }

  // In an older record the figure of a seating may be above that of its row.
  private String lighter(CrewLimit limit) {
    return limit.lighter().stream()
        .map(
            l ->
                one(l.places())
                    + " up to "
                    + units.mass(limit.upTo(l.places()).orElseThrow(), Side.DOWN))
        .collect(Collectors.joining("; "));
  }

  /** Seatings that nobody may have, however light. */
  private List<List<String>> excluded() {
    List<Integer> listed = crew.crewLimits().stream().map(CrewLimit::people).toList();
    return Stream.concat(
            crew.crewLimits().stream()
                .flatMap(
                    limit ->
                        limit.excludedSeatings().stream().filter(s -> limit.upTo(s).isEmpty())),
            crew.excludedSeatings().stream().filter(s -> !listed.contains(s.size())))
        .distinct()
        .toList();
  }

  /** Names the empty side of people who sit on one side with nobody opposite. */
  private String emptySide(List<String> seating) {
    List<String> empty =
        places.stream()
            .filter(place -> !seating.contains(place.name()))
            .filter(place -> isOppositeSomebody(place, seating))
            .map(Place::name)
            .toList();
    return empty.isEmpty() ? "" : " with nobody on " + String.join(" or ", empty);
  }

  private boolean isOppositeSomebody(Place empty, List<String> seating) {
    return places.stream()
        .filter(place -> seating.contains(place.name()))
        .anyMatch(
            taken ->
                empty.isToOneSide()
                    && taken.isToOneSide()
                    && empty.across().middle() * taken.across().middle() < 0);
  }
}
