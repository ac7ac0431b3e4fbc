package thwartwise.json;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.OptionalDouble;
import thwartwise.measured.BoatQuantity;
import tools.jackson.databind.node.ObjectNode;

/**
 * Computed figures. A figure that does not exist or is not finite is null, so that nobody takes it
 * for a number.
 */
public final class Figures {
  // Enough digits to compare by machine; further digits come from converting units and not from the
  // boat.
  private static final MathContext DIGITS = new MathContext(13);
  private static final String REMEDY = "Take the file as it was written.";

  private Figures() {}

  public static void put(ObjectNode node, String key, double value) {
    if (!Double.isFinite(value)) {
      node.putNull(key);
      return;
    }
    double rounded = new BigDecimal(value).round(DIGITS).doubleValue();
    node.put(key, rounded == 0 ? 0 : rounded);
  }

  public static void put(ObjectNode node, String key, OptionalDouble value) {
    put(node, key, value.orElse(Double.NaN));
  }

  /** The figure; NaN where the file has null. */
  public static double read(ObjectReader fields, String key) {
    return optional(fields, key).orElse(Double.NaN);
  }

  public static OptionalDouble optional(ObjectReader fields, String key) {
    ValueReader value = fields.value(key, REMEDY);
    return fields.hasValue(key)
        ? OptionalDouble.of(value.number(BoatQuantity.ANY, REMEDY))
        : OptionalDouble.empty();
  }
}
