package thwartwise.files.boat;

import thwartwise.boat.Boat;
import thwartwise.boat.Outfit.Rowlocks;
import thwartwise.boat.Outfit.SeamLeak;
import thwartwise.json.JsonText;
import thwartwise.json.ObjectReader;
import thwartwise.measured.BoatQuantity;
import thwartwise.measured.OutfitProperties;
import thwartwise.measured.Property;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Rowlocks and leaks. The anchor line consists of three single values of the boat. */
final class OutfitCodec {
  static final String ROWLOCKS = "rowlocks";
  static final String LEAKS = "leaks";
  static final String[] ROWLOCK_KEYS = {"x"};
  static final String[] LEAK_KEYS = Property.keys(OutfitProperties.OF_LEAK, "seam");
  private static final String X = "Measure from the aft end to the pins of the pair, in metres.";
  private static final String SEAM = "Name where the water came in, as in port chine.";

  private OutfitCodec() {}

  static Boat read(ObjectReader fields, Boat boat) {
    return boat.withOutfit(
        boat.outfit()
            .withRowlocks(
                fields.optionalItems(ROWLOCKS, "pair of rowlocks", ROWLOCK_KEYS).stream()
                    .map(pair -> new Rowlocks(pair.number("x", BoatQuantity.ALONG, X)))
                    .toList())
            .withLeaks(
                fields.optionalItems(LEAKS, "leak", LEAK_KEYS).stream()
                    .map(OutfitCodec::leak)
                    .toList()));
  }

  private static SeamLeak leak(ObjectReader leak) {
    return new SeamLeak(
        leak.text("seam", SEAM),
        leak.required(OutfitProperties.LEAK_LITRES),
        leak.required(OutfitProperties.LEAK_TIME));
  }

  static void write(Boat boat, ObjectNode node) {
    if (!boat.outfit().rowlocks().isEmpty()) {
      ArrayNode pairs = node.putArray(ROWLOCKS);
      boat.outfit().rowlocks().forEach(pair -> pairs.addObject().put("x", pair.x()));
    }
    if (!boat.outfit().leaks().isEmpty()) {
      ArrayNode leaks = node.putArray(LEAKS);
      boat.outfit().leaks().forEach(leak -> leaks.add(written(leak)));
    }
  }

  private static ObjectNode written(SeamLeak leak) {
    ObjectNode node = JsonText.object().put("seam", leak.seam());
    OutfitProperties.OF_LEAK.forEach(property -> JsonText.put(node, property, leak));
    return node;
  }
}
