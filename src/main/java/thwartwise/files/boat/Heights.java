package thwartwise.files.boat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.BiFunction;
import thwartwise.json.JsonText;
import thwartwise.json.Location;
import thwartwise.json.UnusableInput;
import thwartwise.json.ValueReader;
import thwartwise.json.WordChoice;
import thwartwise.measure.NumberText;
import thwartwise.measured.BoatQuantity;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * The direction of the heights in a boat file: up from the lowest point of the bottom, or down from
 * a level line stretched over the boat, which is easier for a boat on trestles.
 *
 * <p>A file that measures down is converted here, once, before anything else is read: every {@code
 * z}, and the floor, becomes the greatest z of any station less itself, so that the lowest point of
 * the bottom is zero; the limits of a box change ends. No other code knows of this, and a boat is
 * always written with its heights up. Distances are checked as typed before the conversion, so that
 * a message about one names the figure in the file. Later faults are reported in heights up, with
 * the rule for finding the figure in the file.
 */
final class Heights {
  static final String KEY = "heights";

  /** Keys that hold heights. */
  private static final Set<String> TURNED = Set.of("z", "floor");

  private static final WordChoice<Boolean> WAYS =
      WordChoice.of(down -> down ? "down from a line" : "up from the bottom", false, true);
  private static final String WAY =
      "Write how heights were measured, or leave \"heights\" out when it was up.";
  private static final String DOWN = "Measure z down from the line, in metres.";

  /** The words for an entry of a list in messages. */
  private static final Map<String, String> NOUNS =
      Map.of(
          "stations", "station",
          "points", "point",
          "starboard", "starboard point",
          "edge", "edge point",
          "chambers", "chamber",
          "openings", "opening",
          "places", "place",
          "aboard", "person",
          "cleats", "cleat",
          "kit", "kit");

  private final double line;

  /** The values of the key. */
  static List<String> words() {
    return WAYS.words();
  }

  private Heights(double line) {
    this.line = line;
  }

  /**
   * Reads a boat from the tree or the converted tree.
   *
   * @param reader reads a tree whose heights are up from the bottom
   */
  static <T> T read(JsonNode tree, Location spot, BiFunction<JsonNode, Location, T> reader) {
    boolean down = tree.has(KEY) && new ValueReader(KEY, tree.get(KEY), spot).oneOf(WAYS, WAY);
    OptionalDouble line = down ? lowestOfBottom(tree) : OptionalDouble.empty();
    // If a station has no height at all, the reader's own message is the best.
    if (line.isEmpty()) {
      return reader.apply(tree, spot);
    }
    Heights heights = new Heights(line.getAsDouble());
    JsonNode up = heights.turned((ObjectNode) tree, spot);
    try {
      return reader.apply(up, spot);
    } catch (UnusableInput e) {
      throw heights.explained(e);
    }
  }

  /** The distance from the line down to the lowest point of any station. */
  private static OptionalDouble lowestOfBottom(JsonNode tree) {
    return tree.path("hull").path("stations").findValues("z").stream()
        .filter(JsonNode::isNumber)
        .mapToDouble(JsonNode::doubleValue)
        .filter(BoatQuantity.DEPTH::believes)
        .max();
  }

  private ObjectNode turned(ObjectNode node, Location spot) {
    ObjectNode turned = JsonText.object();
    node.forEachEntry((key, value) -> turned.set(key, turned(key, value, spot)));
    return turned;
  }

  private JsonNode turned(String key, JsonNode value, Location spot) {
    if (TURNED.contains(key)) {
      return value.isArray() ? ends(key, (ArrayNode) value, spot) : height(key, value, spot);
    }
    if (value.isObject()) {
      return turned((ObjectNode) value, spot.in(key));
    }
    return value.isArray() ? items(key, (ArrayNode) value, spot) : value;
  }

  private JsonNode items(String key, ArrayNode list, Location spot) {
    ArrayNode items = JsonText.list();
    for (JsonNode item : list) {
      Location at = spot.item(NOUNS.getOrDefault(key, key), items.size() + 1, nameOf(item));
      items.add(item.isObject() ? turned((ObjectNode) item, at) : item);
    }
    return items;
  }

  /** The upper end of a stretch is the one nearer to the line. */
  private ArrayNode ends(String key, ArrayNode ends, Location spot) {
    ArrayNode turned = JsonText.list();
    for (int i = ends.size() - 1; i >= 0; i--) {
      turned.add(height(key, ends.get(i), spot));
    }
    return turned;
  }

  /** The height in the digits that were typed, so that 1.10 less 0.63 is exactly 0.47. */
  private JsonNode height(String key, JsonNode typed, Location spot) {
    if (!typed.isNumber() || !Double.isFinite(typed.doubleValue())) {
      return typed;
    }
    double down = new ValueReader(key, typed, spot).number(BoatQuantity.DEPTH, DOWN);
    return JsonText.list().add(less(down)).get(0);
  }

  private double less(double down) {
    return BigDecimal.valueOf(line).subtract(BigDecimal.valueOf(down)).doubleValue();
  }

  private UnusableInput explained(UnusableInput e) {
    return TURNED.contains(e.key())
        ? new UnusableInput(
            e.getMessage()
                + " (Heights here are up from the lowest point of the bottom; the file measures"
                + " down from a line, so take each from "
                + NumberText.number(line)
                + " m to find it.)",
            e)
        : e;
  }

  private static String nameOf(JsonNode item) {
    JsonNode name = item.path("name");
    return name.isString() ? name.stringValue() : "";
  }
}
