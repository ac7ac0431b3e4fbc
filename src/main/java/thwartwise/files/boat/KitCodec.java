package thwartwise.files.boat;

import thwartwise.boat.Kit;
import thwartwise.json.JsonText;
import thwartwise.json.ObjectReader;
import thwartwise.measured.BoatProperties;
import tools.jackson.databind.node.ObjectNode;

/** A thing carried: its mass and middle, and its own litres when it may give lift. */
final class KitCodec {
  static final String[] KEYS = {"name", "mass", "at", "litres", "fastened", "in", "workedFrom"};
  private static final String NAME = "Name the thing, as in battery.";
  private static final String AT =
      "Measure where its middle is, as in { \"x\": 0.9, \"y\": 0, \"z\": 0.1 }.";
  private static final String IN = "Name the chamber it is stowed in, or leave it out.";

  private static final String FROM = "Name the place it is steered or rowed from, or leave it out.";

  private KitCodec() {}

  static Kit read(ObjectReader kit) {
    return new Kit(
        kit.text("name", NAME),
        kit.required(BoatProperties.KIT_MASS),
        Points.read(kit, "at", AT),
        kit.optional(BoatProperties.KIT_LITRES),
        kit.flag("fastened", false),
        kit.optional("in").map(value -> value.words(IN)),
        kit.optional("workedFrom").map(value -> value.words(FROM)));
  }

  static ObjectNode write(Kit kit) {
    ObjectNode node = JsonText.object().put("name", kit.name()).put("mass", kit.mass());
    node.set("at", Points.write(kit.at()));
    JsonText.put(node, BoatProperties.KIT_LITRES, kit);
    node.put("fastened", kit.fastened());
    kit.in().ifPresent(in -> node.put("in", in));
    kit.workedFrom().ifPresent(place -> node.put("workedFrom", place));
    return node;
  }
}
