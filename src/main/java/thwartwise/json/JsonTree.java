package thwartwise.json;

import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * The tree of the value a parser stands at. Nothing here needs the mapper of the library, which
 * takes longer to build than a record to read; the parser's own limit keeps the brackets from
 * standing too deep.
 */
final class JsonTree {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private JsonTree() {}

  static JsonNode at(JsonParser parser) {
    return switch (parser.currentToken()) {
      case START_OBJECT -> object(parser);
      case START_ARRAY -> list(parser);
      case VALUE_STRING -> NODES.stringNode(parser.getString());
      case VALUE_NUMBER_INT -> whole(parser);
      case VALUE_NUMBER_FLOAT -> NODES.numberNode(parser.getDoubleValue());
      case VALUE_TRUE -> NODES.booleanNode(true);
      case VALUE_FALSE -> NODES.booleanNode(false);
      default -> NODES.nullNode();
    };
  }

  private static ObjectNode object(JsonParser parser) {
    ObjectNode object = NODES.objectNode();
    for (String key = parser.nextName(); key != null; key = parser.nextName()) {
      parser.nextToken();
      object.set(key, at(parser));
    }
    return object;
  }

  private static ArrayNode list(JsonParser parser) {
    ArrayNode list = NODES.arrayNode();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      list.add(at(parser));
    }
    return list;
  }

  private static JsonNode whole(JsonParser parser) {
    return switch (parser.getNumberType()) {
      case INT -> NODES.numberNode(parser.getIntValue());
      case LONG -> NODES.numberNode(parser.getLongValue());
      default -> NODES.numberNode(parser.getBigIntegerValue());
    };
  }
}
