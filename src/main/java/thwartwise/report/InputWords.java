package thwartwise.report;

import thwartwise.boat.Boat;
import thwartwise.boat.Filling;
import thwartwise.spread.InputKind;
import thwartwise.spread.Remeasurement;

/** What to measure again, and how. */
public final class InputWords {
  private InputWords() {}

  /** A kind of measurement that was taken with more care, in two words. */
  public static String name(InputKind kind) {
    return switch (kind) {
      case HULL_MASS -> "hull weight";
      case KIT_MASS -> "kit weights";
      case PERSON_MASS -> "people's weights";
      case SCALES -> "scales";
      case HULL_CENTRE_ALONG -> "hull balance";
      case HULL_CENTRE_HEIGHT -> "hull inclined";
      case HALF_BREADTHS -> "half-breadths";
      case TAPE -> "tape";
      case BOTTOM_HEIGHTS -> "bottom heights";
      case EDGE_HEIGHTS -> "edge heights";
      case SHELL_THICKNESS -> "shell thickness";
      case SWAMPED_DENSITY -> "soaked density";
      case CHAMBER_VOLUME -> "chamber litres";
      case SEAT_HEIGHT -> "seat heights";
      case PERSON_ALONG, PERSON_ACROSS -> "where people sat";
      case MOVED_WEIGHT -> "weight moved";
      case FREEBOARD_READ -> "rail heights read";
      case HEEL_READ, HEEL_ZERO -> "heel read";
    };
  }

  static String betterWay(Remeasurement again, Boat boat) {
    String thing = again.item();
    return switch (again.kind()) {
      case HULL_MASS ->
          "weigh the bare hull, one end after the other on bathroom scales on hard ground";
      case KIT_MASS -> "weigh the " + thing + " on a luggage scale";
      case PERSON_MASS -> "weigh everybody dressed, on bathroom scales on hard ground";
      case SCALES -> "weigh everything again on other scales";
      case HULL_CENTRE_ALONG -> "balance the bare hull on a roller and measure where";
      case HULL_CENTRE_HEIGHT ->
          "find how high the hull's weight lies: afloat, by a known weight moved across";
      case HALF_BREADTHS ->
          "measure the half-breadths of station \"" + thing + "\" again with a steel tape";
      case TAPE -> "measure the greatest breadth again with a steel tape";
      case BOTTOM_HEIGHTS ->
          "measure the heights of station \"" + thing + "\" again from a taut line";
      case EDGE_HEIGHTS ->
          boat.openings().isEmpty()
              ? "measure the height of the rail over the bottom again, from a taut line"
              : "measure the heights of rail and openings again, from a taut line";
      case SHELL_THICKNESS -> "measure the thickness of the shell with callipers";
      case SWAMPED_DENSITY -> "weigh a soaked offcut of the hull and measure it";
      case CHAMBER_VOLUME ->
          isFoam(boat, thing)
              ? "measure the " + thing + " again, the block and not the space it fills"
              : "fill the " + thing + " from a litre jug and count";
      case SEAT_HEIGHT -> "measure the height of the " + thing + " with a steel tape";
      case PERSON_ALONG, PERSON_ACROSS -> "measure where " + thing + " sits";
      case MOVED_WEIGHT -> "weigh the weight moved across again";
      case FREEBOARD_READ -> "read the height of the rail above the water again";
      case HEEL_READ, HEEL_ZERO -> "read the heel again";
    };
  }

  /** Whether it is foam; no jug measures a block of foam. */
  private static boolean isFoam(Boat boat, String part) {
    return boat.chambers().stream()
        .flatMap(chamber -> chamber.parts().stream())
        .filter(each -> each.filling().kind() == Filling.Kind.FOAM)
        .anyMatch(each -> each.isNamedBy(part));
  }
}
