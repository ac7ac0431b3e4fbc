package thwartwise.files.boat;

import thwartwise.boat.Kit;
import thwartwise.json.JsonText;
import thwartwise.json.ObjectReader;
import thwartwise.measure.PlainNumber;
import thwartwise.measured.BoatQuantity;
import tools.jackson.databind.node.ObjectNode;

/** A thing carried: its mass and middle, and its own litres when it may give lift. */
final class KitFields {
  static final String[] KEYS = {"name", "mass", "at", "litres", "fastened", "in"};
  private static final String NAME = "Name the thing, as in battery.";
  private static final String MASS = "Weigh it on bathroom or kitchen scales and write kg.";
  private static final String AT =
      "Measure where its middle is, as in { \"x\": 0.9, \"y\": 0, \"z\": 0.1 }.";
  private static final String LITRES =
      "Work out the space it takes up, in litres, or leave it out.";
  private static final String IN = "Name the chamber it is stowed in, or leave it out.";

  private KitFields() {}

  static Kit read(ObjectReader kit) {
    return new Kit(
        kit.text("name", NAME),
        kit.number("mass", BoatQuantity.KIT_MASS, MASS),
        Points.read(kit, "at", AT),
        kit.optionalNumber("litres", BoatQuantity.KIT_LITRES, LITRES)
            .map(litres -> PlainNumber.scaled(litres, -3)),
        kit.flag("fastened", false),
        kit.optional("in").map(value -> value.words(IN)));
  }

  static ObjectNode write(Kit kit) {
    ObjectNode node = JsonText.object().put("name", kit.name()).put("mass", kit.mass());
    node.set("at", Points.write(kit.at()));
    kit.volume().ifPresent(v -> node.put("litres", PlainNumber.scaled(v, 3)));
    node.put("fastened", kit.fastened());
    kit.in().ifPresent(in -> node.put("in", in));
    return node;
  }
}
