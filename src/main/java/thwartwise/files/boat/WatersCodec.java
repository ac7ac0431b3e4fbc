package thwartwise.files.boat;

import java.util.Optional;
import thwartwise.boat.Beaufort;
import thwartwise.boat.Waters;
import thwartwise.json.JsonText;
import thwartwise.json.ObjectReader;
import thwartwise.json.ValueReader;
import thwartwise.measured.BoatProperties;
import thwartwise.measured.BoatQuantity;
import thwartwise.measured.Property;
import tools.jackson.databind.node.ObjectNode;

/**
 * The waters where the boat will be used; every key is optional. A wind may be given as a Beaufort
 * force and counts as its upper edge; it is written back in m/s.
 */
final class WatersCodec {
  static final String[] KEYS = Property.keys(BoatProperties.OF_WATERS, "force");
  private static final String FORCE = "Write the Beaufort force, 0 to 12, or leave it out.";
  private static final String TWICE =
      "\"wind\" says how it blows already. Take one of the two out.";

  private WatersCodec() {}

  static Waters read(ObjectReader waters) {
    return new Waters(
        waters.optional(BoatProperties.WAVES),
        waters.optional(BoatProperties.BREAKING),
        wind(waters),
        waters.optional(BoatProperties.CURRENT),
        waters.optional(BoatProperties.WEIR),
        waters.optional(BoatProperties.WASH),
        waters.optional(BoatProperties.CELSIUS),
        waters.optional(BoatProperties.OFFSHORE));
  }

  private static Optional<Double> wind(ObjectReader waters) {
    if (waters.has("wind")) {
      waters.refuse("force", TWICE);
    }
    Optional<Double> wind = waters.optional(BoatProperties.WIND);
    return wind.isPresent() ? wind : waters.optional("force").map(WatersCodec::force);
  }

  private static double force(ValueReader value) {
    return Beaufort.values()[value.whole(BoatQuantity.FORCE, FORCE)].most();
  }

  static ObjectNode write(Waters waters) {
    ObjectNode node = JsonText.object();
    BoatProperties.OF_WATERS.forEach(property -> JsonText.put(node, property, waters));
    return node;
  }
}
