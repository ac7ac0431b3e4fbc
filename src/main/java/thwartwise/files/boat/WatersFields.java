package thwartwise.files.boat;

import java.util.Optional;
import thwartwise.boat.Beaufort;
import thwartwise.boat.Waters;
import thwartwise.json.JsonText;
import thwartwise.json.ObjectReader;
import thwartwise.json.ValueReader;
import thwartwise.measured.BoatQuantity;
import tools.jackson.databind.node.ObjectNode;

/**
 * Where the boat will be used, every key of it optional. A wind may be given by its Beaufort force
 * and counts as the upper edge of that force; it is written back in m/s.
 */
final class WatersFields {
  static final String[] KEYS = {
    "waves", "breaking", "wind", "force", "current", "weir", "wash", "celsius", "offshore"
  };
  private static final String WAVES =
      "Estimate the highest from trough to crest in metres, or leave it out.";
  private static final String WIND =
      "Write metres a second, or \"force\" instead, or leave it out.";
  private static final String FORCE = "Write the Beaufort force, 0 to 12, or leave it out.";
  private static final String CURRENT =
      "See how many metres a stick drifts in a second, or leave it out.";
  private static final String CELSIUS = "Hang a thermometer in the water, or leave it out.";
  private static final String OFFSHORE =
      "Write the farthest from the shore in metres, or leave it out.";
  private static final String TWICE =
      "\"wind\" says how it blows already. Take one of the two out.";

  private WatersFields() {}

  static Waters read(ObjectReader waters) {
    return new Waters(
        waters.optionalNumber("waves", BoatQuantity.WAVES, WAVES),
        flag(waters, "breaking"),
        wind(waters),
        waters.optionalNumber("current", BoatQuantity.CURRENT, CURRENT),
        flag(waters, "weir"),
        flag(waters, "wash"),
        waters.optionalNumber("celsius", BoatQuantity.CELSIUS, CELSIUS),
        waters.optionalNumber("offshore", BoatQuantity.OFFSHORE, OFFSHORE));
  }

  private static Optional<Double> wind(ObjectReader waters) {
    if (waters.has("wind")) {
      waters.refuse("force", TWICE);
    }
    Optional<Double> wind = waters.optionalNumber("wind", BoatQuantity.WIND, WIND);
    return wind.isPresent() ? wind : waters.optional("force").map(WatersFields::force);
  }

  private static double force(ValueReader value) {
    return Beaufort.values()[value.whole(BoatQuantity.FORCE, FORCE)].most();
  }

  private static Optional<Boolean> flag(ObjectReader waters, String key) {
    return waters.optional(key).map(ValueReader::truth);
  }

  static ObjectNode write(Waters waters) {
    ObjectNode node = JsonText.object();
    waters.waves().ifPresent(v -> node.put("waves", v));
    waters.breaking().ifPresent(v -> node.put("breaking", v));
    waters.wind().ifPresent(v -> node.put("wind", v));
    waters.current().ifPresent(v -> node.put("current", v));
    waters.weir().ifPresent(v -> node.put("weir", v));
    waters.wash().ifPresent(v -> node.put("wash", v));
    waters.temperature().ifPresent(v -> node.put("celsius", v));
    waters.offshore().ifPresent(v -> node.put("offshore", v));
    return node;
  }
}
