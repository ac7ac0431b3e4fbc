package thwartwise.files.boat;

import java.util.Optional;
import thwartwise.boat.Place;
import thwartwise.boat.Place.Posture;
import thwartwise.geometry.Span;
import thwartwise.json.JsonText;
import thwartwise.json.ObjectReader;
import thwartwise.json.ValueReader;
import thwartwise.measured.BoatQuantity;
import thwartwise.measured.PartProperties;
import thwartwise.measured.Property;
import tools.jackson.databind.node.ObjectNode;

/** A place where people sit, kneel or stand. */
final class PlaceCodec {
  static final String[] KEYS = Property.keys(PartProperties.OF_PLACE, "name", "x", "y", "z");
  private static final String NAME = "Name the place, as in stern seat.";
  private static final String ALONG =
      "Write from where to where the middle of a person can be, forward of the aft end, in metres,"
          + " as in [0.6, 1.4].";
  private static final String ACROSS =
      "Write from where to where the middle of a person can be, to port of the middle line, in"
          + " metres, starboard with a minus, as in [0.35, 0.5].";

  private PlaceCodec() {}

  static Place read(ObjectReader place) {
    return new Place(
        place.text("name", NAME),
        along(place),
        across(place),
        Points.z(place),
        place.required(PartProperties.PLACE_PEOPLE),
        place.optional(PartProperties.POSTURE).orElse(Posture.SITTING));
  }

  private static Span along(ObjectReader place) {
    return stretch(place, "x", BoatQuantity.ALONG, ALONG).orElseGet(() -> point(Points.x(place)));
  }

  private static Span across(ObjectReader place) {
    if (!place.has("y")) {
      double out = place.required(PartProperties.HALF_WIDTH);
      return new Span(0.0 - out, out);
    }
    place.refuse(
        "halfWidth", "\"y\" says already from where to where people sit. Take one of the two out.");
    return stretch(place, "y", BoatQuantity.ATHWART, ACROSS)
        .orElseGet(() -> point(Points.y(place)));
  }

  private static Optional<Span> stretch(
      ObjectReader place, String axis, BoatQuantity quantity, String remedy) {
    return place
        .optional(axis)
        .filter(ValueReader::isList)
        .map(value -> value.ends(quantity, remedy))
        .map(ends -> new Span(ends[0], ends[1]));
  }

  private static Span point(double at) {
    return new Span(at, at);
  }

  static ObjectNode write(Place place) {
    ObjectNode node = JsonText.object().put("name", place.name());
    write(node, "x", place.along());
    if (!place.isAboutTheMiddle()) {
      write(node, "y", place.across());
    }
    node.put("z", place.z());
    PartProperties.OF_PLACE.forEach(each -> JsonText.put(node, each, place));
    return node;
  }

  private static void write(ObjectNode node, String axis, Span span) {
    if (span.length() > 0) {
      Spans.write(node, axis, span);
    } else {
      node.put(axis, span.from());
    }
  }
}
