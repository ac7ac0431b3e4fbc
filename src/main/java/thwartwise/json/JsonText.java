package thwartwise.json;

import java.io.StringWriter;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import thwartwise.measured.Property;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.exc.StreamConstraintsException;
import tools.jackson.core.exc.StreamReadException;
import tools.jackson.core.exc.UnexpectedEndOfInputException;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.json.JsonReadFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.BaseJsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.MissingNode;
import tools.jackson.databind.node.ObjectNode;

/** JSON text to a tree and back. Messages about text that is not JSON give line and column. */
public final class JsonText {
  // NaN is accepted here so that the reader can name its key.
  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
          .build();

  private JsonText() {}

  public static JsonNode parse(String json, Location spot) {
    try (JsonParser parser = FACTORY.createParser(ObjectReadContext.empty(), json)) {
      return parsed(parser, spot);
    } catch (UnexpectedEndOfInputException e) {
      throw spot.in(at(e))
          .fault("the text ends too early. Close the open quote or bracket, or copy it again.");
    } catch (StreamReadException e) {
      throw spot.in(at(e)).fault(said(e));
    } catch (StreamConstraintsException e) {
      throw spot.fault(
          "brackets stand too deep inside each other, or a number or name has no end."
              + " Check that this is the right file.");
    }
  }

  private static JsonNode parsed(JsonParser parser, Location spot) {
    if (parser.nextToken() == null) {
      return MissingNode.getInstance();
    }
    JsonNode tree = JsonTree.at(parser);
    if (parser.nextToken() != null) {
      throw spot.in(at(parser.currentTokenLocation()))
          .fault("something stands after the end of the object. Take it out.");
    }
    return tree;
  }

  /** The lines, counted from 1, on which the items of a list of the outermost object begin. */
  public static List<Integer> linesOfItems(String json, String key) {
    List<Integer> lines = new ArrayList<>();
    try (JsonParser parser = FACTORY.createParser(ObjectReadContext.empty(), json)) {
      parser.nextToken();
      for (String name = parser.nextName(); name != null; name = parser.nextName()) {
        boolean wanted = parser.nextToken() == JsonToken.START_ARRAY && name.equals(key);
        while (wanted && parser.nextToken() != JsonToken.END_ARRAY) {
          lines.add(parser.currentTokenLocation().getLineNr());
          parser.skipChildren();
        }
        parser.skipChildren();
      }
    }
    return lines;
  }

  /** An empty object that keeps the order in which its keys are set. */
  public static ObjectNode object() {
    return JsonNodeFactory.instance.objectNode();
  }

  public static ArrayNode list() {
    return JsonNodeFactory.instance.arrayNode();
  }

  public static ArrayNode texts(Collection<String> texts) {
    ArrayNode list = list();
    texts.forEach(list::add);
    return list;
  }

  /** Puts a single value of an owner, if it is known. */
  public static <O> void put(ObjectNode node, Property<O, ?> property, O owner) {
    property.inFile(owner).ifPresent(value -> node.set(property.key(), scalar(value)));
  }

  private static JsonNode scalar(Object value) {
    if (value instanceof Double number) {
      return JsonNodeFactory.instance.numberNode(number);
    }
    if (value instanceof Integer whole) {
      return JsonNodeFactory.instance.numberNode(whole);
    }
    return value instanceof Boolean truth
        ? JsonNodeFactory.instance.booleanNode(truth)
        : JsonNodeFactory.instance.stringNode(value.toString());
  }

  /** A word in the notation of JSON. */
  static String quoted(String word) {
    return scalar(JsonNodeFactory.instance.stringNode(word));
  }

  /** A word, a number, a truth value or null in the notation of JSON. */
  static String scalar(JsonNode node) {
    if (node.isNull()) {
      return "null";
    }
    StringWriter text = new StringWriter();
    try (JsonGenerator generator = FACTORY.createGenerator(ObjectWriteContext.empty(), text)) {
      // Such a node does not use the context.
      ((BaseJsonNode) node).serialize(generator, null);
    }
    return text.toString();
  }

  private static String said(StreamReadException e) {
    if (e.getOriginalMessage().startsWith("Duplicate")) {
      return "the key \"" + e.processor().currentName() + "\" stands twice. Keep one of them.";
    }
    return "this is not JSON. Look for a missing comma, quote or bracket just before it.";
  }

  private static String at(JacksonException e) {
    return at(e.getLocation());
  }

  private static String at(TokenStreamLocation spot) {
    return spot == null
        ? "somewhere"
        : "line " + spot.getLineNr() + ", column " + spot.getColumnNr();
  }

  /**
   * The tree of the value at which a parser stands. It does without the mapper of the library,
   * which takes longer to build than a record to read. The parser's own limit prevents deep
   * nesting.
   */
  private static final class JsonTree {
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
}
