package thwartwise.files.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.OptionalDouble;
import thwartwise.files.boat.Points;
import thwartwise.geometry.Vector3;
import thwartwise.json.JsonText;
import thwartwise.json.ObjectReader;
import thwartwise.json.ValueReader;
import thwartwise.measured.BoatQuantity;
import tools.jackson.databind.node.ObjectNode;

/**
 * Figures of a report. A figure that does not exist or is not finite is null: nobody may take it
 * for a number.
 */
final class Figures {
  // Enough to compare by machine; the digits beyond come from changing units, not from the boat.
  private static final MathContext DIGITS = new MathContext(13);
  private static final String REMEDY = "Take the file as it was written.";

  private Figures() {}

  static void put(ObjectNode node, String key, double value) {
    if (!Double.isFinite(value)) {
      node.putNull(key);
      return;
    }
    double rounded = new BigDecimal(value).round(DIGITS).doubleValue();
    node.put(key, Points.unsigned(rounded));
  }

  static void put(ObjectNode node, String key, OptionalDouble value) {
    put(node, key, value.orElse(Double.NaN));
  }

  static ObjectNode point(Vector3 point) {
    ObjectNode node = JsonText.object();
    put(node, "x", point.x());
    put(node, "y", point.y());
    put(node, "z", point.z());
    return node;
  }

  /** NaN where the report says null. */
  static double read(ObjectReader fields, String key) {
    return optional(fields, key).orElse(Double.NaN);
  }

  static OptionalDouble optional(ObjectReader fields, String key) {
    ValueReader value = fields.value(key, REMEDY);
    return fields.says(key)
        ? OptionalDouble.of(value.number(BoatQuantity.ANY, REMEDY))
        : OptionalDouble.empty();
  }
}
