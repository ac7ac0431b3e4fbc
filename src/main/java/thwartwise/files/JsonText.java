package thwartwise.files;

import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.exc.StreamConstraintsException;
import tools.jackson.core.exc.StreamReadException;
import tools.jackson.core.exc.UnexpectedEndOfInputException;
import tools.jackson.core.json.JsonReadFeature;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** JSON text to a tree and back. What is not JSON is said with line and column. */
final class JsonText {
  // NaN is let through here so that the reader can name the key it stands at.
  private static final JsonMapper MAPPER =
      JsonMapper.builder()
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build();

  private JsonText() {}

  static JsonNode parse(String json, Spot spot) {
    try {
      return MAPPER.readTree(json);
    } catch (UnexpectedEndOfInputException e) {
      throw spot.in(at(e))
          .fault("the text ends too early. Close the open quote or bracket, or copy it again.");
    } catch (StreamReadException e) {
      throw spot.in(at(e)).fault(said(e));
    } catch (StreamConstraintsException e) {
      throw spot.fault(
          "brackets stand too deep inside each other, or a number or name has no end."
              + " Check that this is the right file.");
    } catch (JacksonException e) {
      throw spot.in(at(e)).fault("something stands after the end of the object. Take it out.");
    }
  }

  /** An empty object to be filled in the order in which it is to be read. */
  static ObjectNode object() {
    return MAPPER.createObjectNode();
  }

  static ArrayNode list() {
    return MAPPER.createArrayNode();
  }

  /** A word as JSON writes it. */
  static String quoted(String word) {
    return MAPPER.writeValueAsString(word);
  }

  private static String said(StreamReadException e) {
    if (e.getOriginalMessage().startsWith("Duplicate")) {
      return "the key \"" + e.processor().currentName() + "\" stands twice. Keep one of them.";
    }
    return "this is not JSON. Look for a missing comma, quote or bracket just before it.";
  }

  private static String at(JacksonException e) {
    TokenStreamLocation spot = e.getLocation();
    return spot == null
        ? "somewhere"
        : "line " + spot.getLineNr() + ", column " + spot.getColumnNr();
  }
}
