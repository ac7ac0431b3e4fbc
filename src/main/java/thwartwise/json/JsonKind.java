package thwartwise.json;

import thwartwise.measure.NumberText;
import thwartwise.measure.PrintableText;
import tools.jackson.databind.JsonNode;

/** The kind of a value in a file, in words. */
final class JsonKind {
  private JsonKind() {}

  static String of(JsonNode node) {
    if (node.isString()) {
      return "the text " + PrintableText.quoted(node.stringValue());
    }
    if (node.isNumber()) {
      return "the number " + NumberText.number(node.doubleValue());
    }
    if (node.isArray()) {
      return "a list";
    }
    return node.isObject() ? "an object" : node.toString();
  }
}
