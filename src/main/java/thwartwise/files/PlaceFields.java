package thwartwise.files;

import thwartwise.boat.Place;
import tools.jackson.databind.node.ObjectNode;

/** Where people sit. */
final class PlaceFields {
  static final String[] KEYS = {"name", "x", "z", "halfWidth", "people"};
  private static final String NAME = "Name the place, as in stern seat.";
  private static final String HALF_WIDTH =
      "Measure from the middle line to the middle of somebody sitting as far out as they can.";
  private static final String PEOPLE = "Write how many people fit there.";

  private PlaceFields() {}

  static Place read(Fields place) {
    return new Place(
        place.text("name", NAME),
        Points.x(place),
        Points.z(place),
        place.number("halfWidth", Quantity.HALF_WIDTH, HALF_WIDTH),
        place.whole("people", Quantity.PEOPLE, PEOPLE));
  }

  static ObjectNode write(Place place) {
    return JsonText.object()
        .put("name", place.name())
        .put("x", place.x())
        .put("z", place.z())
        .put("halfWidth", place.halfWidth())
        .put("people", place.people());
  }
}
