package thwartwise.files.boat;

import java.util.List;
import thwartwise.geometry.Vector3;
import thwartwise.hull.Station;
import thwartwise.json.JsonText;
import thwartwise.json.ObjectReader;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** A station: its name, its points to port, and to starboard when that side was measured too. */
final class StationFields {
  static final String[] KEYS = {"name", "points", "starboard"};
  private static final String NAME = "Name the station, as in transom, middle or stem.";
  private static final String POINTS =
      "Measure across the boat from the keel out and up to the rail.";

  private StationFields() {}

  static Station read(ObjectReader fields) {
    String name = fields.text("name", NAME);
    List<Vector3> port = points(fields, "points", "point");
    if (!fields.has("starboard")) {
      return Station.mirrored(name, port);
    }
    List<Vector3> starboard = points(fields, "starboard", "starboard point");
    StationRules.checkOneSide(fields.spot(), starboard);
    // Kept as the mirror of distances out, so that a keel at zero is the same zero on both sides.
    List<Vector3> out =
        starboard.stream().map(p -> Vector3.of(p.x(), Math.abs(p.y()), p.z())).toList();
    return new Station(name, port, out.stream().map(Vector3::mirrored).toList());
  }

  private static List<Vector3> points(ObjectReader fields, String key, String noun) {
    return fields.items(key, noun, POINTS, "x", "y", "z").stream()
        .map(Points::read)
        .map(p -> Vector3.of(p.x(), Points.unsigned(p.y()), p.z()))
        .toList();
  }

  static ObjectNode write(Station station) {
    ObjectNode node = JsonText.object().put("name", station.name());
    node.set("points", list(station.port()));
    if (!station.isSymmetric()) {
      node.set("starboard", list(station.starboard()));
    }
    return node;
  }

  private static ArrayNode list(List<Vector3> points) {
    ArrayNode list = JsonText.list();
    points.forEach(point -> list.add(Points.write(point)));
    return list;
  }
}
