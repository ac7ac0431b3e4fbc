package thwartwise.files.boat;

import thwartwise.boat.Kit;
import thwartwise.json.JsonText;
import thwartwise.json.ObjectReader;
import thwartwise.measured.BoatProperties;
import thwartwise.measured.Property;
import tools.jackson.databind.node.ObjectNode;

/** A piece of kit: its mass and middle, and its own litres when it may give lift. */
final class KitCodec {
  static final String[] KEYS = Property.keys(BoatProperties.OF_KIT, "name", "at");
  private static final String NAME = "Name the thing, as in battery.";
  private static final String AT =
      "Measure where its middle is, as in { \"x\": 0.9, \"y\": 0, \"z\": 0.1 }.";

  private KitCodec() {}

  static Kit read(ObjectReader kit) {
    return new Kit(
        kit.text("name", NAME),
        kit.required(BoatProperties.KIT_MASS),
        Points.read(kit, "at", AT),
        kit.optional(BoatProperties.KIT_LITRES),
        kit.optional(BoatProperties.KIT_FASTENED).orElse(false),
        kit.optional(BoatProperties.KIT_IN),
        kit.optional(BoatProperties.WORKED_FROM));
  }

  static ObjectNode write(Kit kit) {
    ObjectNode node = JsonText.object().put("name", kit.name());
    JsonText.put(node, BoatProperties.KIT_MASS, kit);
    node.set("at", Points.write(kit.at()));
    BoatProperties.OF_KIT.forEach(property -> JsonText.put(node, property, kit));
    return node;
  }
}
