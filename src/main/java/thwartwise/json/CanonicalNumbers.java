package thwartwise.json;

import java.math.BigDecimal;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.databind.util.RawValue;

/**
 * The one notation for numbers in a record: plain digits, no exponent, no trailing zero, no sign
 * before zero. The same figure then has the same text, whatever wrote it.
 */
public final class CanonicalNumbers {
  private CanonicalNumbers() {}

  public static JsonNode in(JsonNode node) {
    if (node.isObject()) {
      ObjectNode object = JsonText.object();
      node.forEachEntry((key, value) -> object.set(key, in(value)));
      return object;
    }
    if (node.isArray()) {
      ArrayNode list = JsonText.list();
      node.forEach(item -> list.add(in(item)));
      return list;
    }
    return node.isNumber() ? plain(new BigDecimal(JsonText.scalar(node))) : node;
  }

  private static JsonNode plain(BigDecimal number) {
    String text = number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    return JsonNodeFactory.instance.rawValueNode(new RawValue(text));
  }
}
