package thwartwise.files.boat;

import java.util.List;
import java.util.Optional;
import thwartwise.geometry.Span;
import thwartwise.hull.HullMeasurements;
import thwartwise.hull.Material;
import thwartwise.hull.Station;
import thwartwise.json.JsonText;
import thwartwise.json.ObjectReader;
import thwartwise.measured.BoatProperties;
import thwartwise.measured.BoatQuantity;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The hull: mass, stuff, thickness, floor, stations, skeg, and where the rail is decked over. */
final class HullFields {
  static final String[] KEYS = {
    "mass", "centre", "material", "density", "thickness", "floor", "stations", "decked", "skeg"
  };
  private static final String CENTRE =
      "Find where the bare hull balances, or leave \"centre\" out and it is estimated.";
  private static final String STATIONS =
      "Measure across the boat with a tape at each end and at least once between.";
  private static final String DECKED =
      "Write from and to along the boat in metres, as in { \"x\": [2.75, 3.60] }.";

  private HullFields() {}

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
        hull.optionalItems("decked", "decked length", "x").stream()
            .map(HullFields::decked)
            .toList(),
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

  static ObjectNode write(HullMeasurements hull, List<String> assumptions) {
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
}
