package thwartwise.report;

import java.util.ArrayList;
import java.util.List;
import thwartwise.boat.Boat;
import thwartwise.boat.Place;
import thwartwise.crew.Recommendation;
import thwartwise.crew.Recommendation.CrewLimit;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.page.LineWrap;
import thwartwise.page.Sentence;
import thwartwise.report.Screen.ScreenDetail;
import thwartwise.report.Screen.ScreenLines;

/** For each number of people the greatest mass of each and their seats, one row each. */
final class ScreenSeats {
  private static final String ON_THE_PAGE = "see the page";

  private ScreenSeats() {}

  static void write(
      ScreenLines lines, Boat boat, Recommendation crew, ScreenDetail detail, UnitFormat units) {
    List<Place> places = boat.places();
    if (places.isEmpty()) {
      lines.add("Seats:", "No place to sit was measured, so no seating could be looked at.");
      return;
    }
    List<CrewLimit> shown = shown(crew, detail.seatRows());
    for (CrewLimit limit : shown) {
      lines.add(limit.equals(shown.get(0)) ? "Seats:" : "", "", row(limit, places, detail, units));
    }
    String others = shown.size() < crew.crewLimits().size() ? "Other numbers: page." : "";
    String helm = EmptyHelmWords.brief(boat, crew).map(Sentence::of).orElse("");
    lines.add("", (others + " " + besidesLight(crew, units) + " " + helm).strip());
  }

  /** The rows around the number recommended, which is always among them. */
  private static List<CrewLimit> shown(Recommendation crew, int rows) {
    List<CrewLimit> all = crew.crewLimits();
    int last = Math.max(rows, Math.min(all.size(), crew.people() + 1));
    return all.size() <= rows ? all : all.subList(last - rows, last);
  }

  private static String besidesLight(Recommendation crew, UnitFormat units) {
    return CrewWords.isExtraForLightPeopleOnly(crew)
        ? "Extra: low down, only while nobody is over " + units.mass(crew.adult(), Side.DOWN) + "."
        : "";
  }

  /**
   * One row. Extra weight that may be aboard in one seating alone is given with that seating, or
   * not at all.
   */
  private static String row(
      CrewLimit limit, List<Place> places, ScreenDetail detail, UnitFormat units) {
    List<List<String>> left = Seatings.left(limit, places);
    String start = limit.people() + " " + CrewWords.upTo(limit, units);
    if (Double.isNaN(limit.extraMass())) {
      return start + ": " + seats(limit, left, start + ": ", places, detail);
    }
    String extraMass = units.mass(limit.extraMass(), Side.DOWN) + " extra";
    if (!(limit.extraMass() >= 1) || !SeatTable.isOnlyLikeThat(limit, left)) {
      String head = start + ", " + extraMass + ": ";
      return head + seats(limit, left, head, places, detail);
    }
    String only = "; with " + extraMass + " only " + SeatTable.one(limit.extraSeating());
    String seats = seats(limit, left, start + ": " + only, places, detail);
    return start + ": " + seats + (seats.equals(ON_THE_PAGE) ? "" : only);
  }

  private static String seats(
      CrewLimit limit,
      List<List<String>> left,
      String start,
      List<Place> places,
      ScreenDetail detail) {
    if (left.isEmpty() || detail.seatLines() == 0) {
      return ON_THE_PAGE;
    }
    if (Seatings.isAnyWay(limit, places)) {
      return "any of the places";
    }
    int width = detail.seatLines() * (Screen.COLUMNS - ScreenLines.LABEL) - LineWrap.columns(start);
    return fitting(left, width);
  }

  /** As many seatings as there is room for, and the number of the others. */
  private static String fitting(List<List<String>> ways, int width) {
    List<String> listed = new ArrayList<>();
    for (List<String> way : ways) {
      listed.add(SeatTable.one(way));
      if (LineWrap.columns(words(listed, ways.size())) > width) {
        listed.remove(listed.size() - 1);
        break;
      }
    }
    return listed.isEmpty() ? ON_THE_PAGE : words(listed, ways.size());
  }

  private static String words(List<String> listed, int ways) {
    int more = ways - listed.size();
    return String.join("; or ", listed) + (more > 0 ? "; " + more + " more (page)" : "");
  }
}
