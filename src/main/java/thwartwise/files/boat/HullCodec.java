package thwartwise.files.boat;

import java.util.List;
import java.util.Optional;
import thwartwise.boat.Assumption;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.hull.HullMeasurements;
import thwartwise.hull.HullMeasurements.Skeg;
import thwartwise.hull.Material;
import thwartwise.hull.Station;
import thwartwise.json.JsonText;
import thwartwise.json.Location;
import thwartwise.json.ObjectReader;
import thwartwise.measure.NumberText;
import thwartwise.measured.BoatProperties;
import thwartwise.measured.BoatQuantity;
import thwartwise.measured.PartProperties;
import thwartwise.measured.Property;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The hull: mass, material, thickness, floor, stations, skeg, decked lengths. */
final class HullCodec {
  static final String[] KEYS =
      Property.keys(BoatProperties.OF_HULL, "centre", "stations", "decked", "skeg");
  private static final String CENTRE =
      "Find where the bare hull balances, or leave \"centre\" out and it is estimated.";
  private static final String STATIONS =
      "Measure across the boat with a tape at each end and at least once between.";
  private static final String DECKED =
      "Write from and to along the boat in metres, as in { \"x\": [2.75, 3.60] }.";

  private HullCodec() {}

  static HullMeasurements read(ObjectReader hull) {
    Optional<Material> material = hull.optional(BoatProperties.MATERIAL);
    double thickness = thickness(hull, material);
    return new HullMeasurements(
        hull.required(BoatProperties.HULL_MASS),
        hull.has("centre") ? Optional.of(Points.read(hull, "centre", CENTRE)) : Optional.empty(),
        material,
        density(hull, material),
        thickness,
        hull.optional(BoatProperties.FLOOR).orElse(thickness),
        stations(hull),
        hull.optionalItems("decked", "decked length", "x").stream().map(HullCodec::decked).toList(),
        hull.optionalObject("skeg", SkegFields.KEYS).map(SkegFields::read));
  }

  private static double density(ObjectReader hull, Optional<Material> material) {
    if (material.isEmpty() && !hull.has("density")) {
      throw hull.spot()
          .fault("the key \"material\" is missing. " + BoatProperties.MATERIAL.remedy());
    }
    return hull.optional(BoatProperties.DENSITY)
        .orElseGet(() -> material.orElseThrow().swampedDensity());
  }

  private static double thickness(ObjectReader hull, Optional<Material> material) {
    return hull.optional(BoatProperties.THICKNESS)
        .or(() -> material.map(Material::usualThickness))
        .orElseGet(() -> hull.required(BoatProperties.THICKNESS));
  }

  private static List<Station> stations(ObjectReader hull) {
    List<Station> stations =
        hull.items("stations", "station", STATIONS, StationFields.KEYS).stream()
            .map(StationFields::read)
            .toList();
    StationRules.check(hull.spot(), stations);
    return stations;
  }

  private static Span decked(ObjectReader fields) {
    return Spans.read(fields, "x", BoatQuantity.ALONG)
        .orElseThrow(() -> fields.spot().fault("the key \"x\" is missing. " + DECKED));
  }

  static ObjectNode write(HullMeasurements hull, List<Assumption> assumptions) {
    ObjectNode node = JsonText.object();
    JsonText.put(node, BoatProperties.HULL_MASS, hull);
    hull.centre().ifPresent(centre -> node.set("centre", Points.write(centre)));
    JsonText.put(node, BoatProperties.MATERIAL, hull);
    if (hull.material().map(m -> m.swampedDensity() != hull.density()).orElse(true)) {
      JsonText.put(node, BoatProperties.DENSITY, hull);
    }
    if (!DefaultValues.coverThickness(assumptions, hull)) {
      JsonText.put(node, BoatProperties.THICKNESS, hull);
    }
    if (!DefaultValues.coverFloor(assumptions, hull)) {
      JsonText.put(node, BoatProperties.FLOOR, hull);
    }
    ArrayNode stations = node.putArray("stations");
    hull.stations().forEach(station -> stations.add(StationFields.write(station)));
    writeDecked(node, hull.decked());
    hull.skeg().ifPresent(skeg -> node.set("skeg", SkegFields.write(skeg)));
    return node;
  }

  private static void writeDecked(ObjectNode node, List<Span> decked) {
    if (!decked.isEmpty()) {
      ArrayNode list = node.putArray("decked");
      decked.forEach(span -> Spans.write(list.addObject(), "x", span));
    }
  }

  /**
   * The skeg: its lower edge on the middle line from aft to forward, and its thickness. Whether the
   * edge lies under the keel is known only after the keel line is faired, so it is not checked
   * here.
   */
  private static final class SkegFields {
    static final String[] KEYS = Property.keys(PartProperties.OF_SKEG, "edge");
    private static final int FEWEST_POINTS = 2;
    private static final String EDGE =
        "Measure along its lower edge from aft to forward, as in"
            + " [ { \"x\": 0, \"z\": -0.10 }, { \"x\": 1.2, \"z\": -0.02 } ].";
    private static final String UP =
        "Measure z from the lowest point of the hull's bottom, in metres; below it z is negative.";

    private SkegFields() {}

    static Skeg read(ObjectReader skeg) {
      List<Vector3> edge =
          skeg.items("edge", "edge point", EDGE, "x", "z").stream().map(SkegFields::point).toList();
      check(skeg.spot(), edge);
      return new Skeg(edge, skeg.required(PartProperties.SKEG_THICKNESS));
    }

    private static Vector3 point(ObjectReader point) {
      return Vector3.of(Points.x(point), 0, point.number("z", BoatQuantity.HEIGHT, UP));
    }

    private static void check(Location spot, List<Vector3> edge) {
      if (edge.size() < FEWEST_POINTS) {
        throw spot.fault(
            "its edge needs at least two points and there %s. %s",
            edge.isEmpty() ? "is none" : "is one", EDGE);
      }
      for (int i = 1; i < edge.size(); i++) {
        if (!(edge.get(i).x() > edge.get(i - 1).x())) {
          throw spot.fault(
              "edge point %d is at x %s m, not forward of x %s m in edge point %d."
                  + " List them from aft to forward.",
              i + 1, NumberText.number(edge.get(i).x()), NumberText.number(edge.get(i - 1).x()), i);
        }
      }
    }

    static ObjectNode write(Skeg skeg) {
      ObjectNode node = JsonText.object();
      ArrayNode edge = node.putArray("edge");
      skeg.edge()
          .forEach(
              p ->
                  edge.addObject()
                      .put("x", Points.unsigned(p.x()))
                      .put("z", Points.unsigned(p.z())));
      JsonText.put(node, PartProperties.SKEG_THICKNESS, skeg);
      return node;
    }
  }

  /** A station: its name, its points to port, and to starboard when that side was measured too. */
  private static final class StationFields {
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
      // The mirror of distances out, so that a keel at zero is the same zero on both sides.
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
}
