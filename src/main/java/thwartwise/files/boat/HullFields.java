package thwartwise.files.boat;

import java.util.List;
import java.util.Optional;
import thwartwise.boat.HullMeasurements;
import thwartwise.boat.Material;
import thwartwise.boat.Station;
import thwartwise.geometry.Span;
import thwartwise.json.JsonText;
import thwartwise.json.ObjectReader;
import thwartwise.json.WordChoice;
import thwartwise.measured.BoatQuantity;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The hull: mass, stuff, thickness, floor, stations, skeg, and where the rail is decked over. */
final class HullFields {
  static final String[] KEYS = {
    "mass", "centre", "material", "density", "thickness", "floor", "stations", "decked", "skeg"
  };
  private static final WordChoice<Material> MATERIALS =
      WordChoice.of(Material::word, Material.values());
  private static final String MASS =
      "Weigh the bare hull on bathroom scales, one end after the other, and write the sum in kg.";
  private static final String CENTRE =
      "Find where the bare hull balances, or leave \"centre\" out and it is estimated.";
  private static final String MATERIAL =
      "Write what the hull is made of, or its swamped density in kg/m3 as \"density\".";
  private static final String DENSITY = "Weigh a soaked offcut of known size and write kg/m3.";
  private static final String THICKNESS =
      "Measure the shell with callipers at an edge or a drain hole and write metres.";
  private static final String FLOOR =
      "Measure with a tape from the lowest point of the bottom up to what people stand on.";
  private static final String STATIONS =
      "Measure across the boat with a tape at each end and at least once between.";
  private static final String DECKED =
      "Write from and to along the boat in metres, as in { \"x\": [2.75, 3.60] }.";

  private HullFields() {}

  static HullMeasurements read(ObjectReader hull) {
    Optional<Material> material =
        hull.optional("material").map(value -> value.oneOf(MATERIALS, MATERIAL));
    double thickness = thickness(hull, material);
    return new HullMeasurements(
        hull.number("mass", BoatQuantity.HULL_MASS, MASS),
        hull.has("centre") ? Optional.of(Points.read(hull, "centre", CENTRE)) : Optional.empty(),
        material,
        density(hull, material),
        thickness,
        hull.optionalNumber("floor", BoatQuantity.HEIGHT, FLOOR).orElse(thickness),
        stations(hull),
        hull.optionalItems("decked", "decked length", "x").stream()
            .map(HullFields::decked)
            .toList(),
        hull.optionalObject("skeg", SkegFields.KEYS).map(SkegFields::read));
  }

  private static double density(ObjectReader hull, Optional<Material> material) {
    if (material.isEmpty() && !hull.has("density")) {
      throw hull.spot().fault("the key \"material\" is missing. " + MATERIAL);
    }
    return hull.optionalNumber("density", BoatQuantity.DENSITY, DENSITY)
        .orElseGet(() -> material.orElseThrow().swampedDensity());
  }

  private static double thickness(ObjectReader hull, Optional<Material> material) {
    return hull.optionalNumber("thickness", BoatQuantity.THICKNESS, THICKNESS)
        .or(() -> material.map(Material::usualThickness))
        .orElseGet(() -> hull.number("thickness", BoatQuantity.THICKNESS, THICKNESS));
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
    ObjectNode node = JsonText.object().put("mass", hull.mass());
    hull.centre().ifPresent(centre -> node.set("centre", Points.write(centre)));
    hull.material().ifPresent(material -> node.put("material", material.word()));
    if (hull.material().map(m -> m.swampedDensity() != hull.density()).orElse(true)) {
      node.put("density", hull.density());
    }
    if (!Assumptions.coverThickness(assumptions, hull)) {
      node.put("thickness", hull.thickness());
    }
    if (!Assumptions.coverFloor(assumptions, hull)) {
      node.put("floor", hull.floor());
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
