package thwartwise.files.boat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.StreamSupport;
import tools.jackson.databind.JsonNode;

/**
 * Holds a file against a JSON Schema, draft 2020-12, of the few words that ours uses; a word it
 * does not know is a fault of the schema, so that nothing in it goes unchecked.
 */
final class SchemaCheck {
  private final JsonNode schema;

  SchemaCheck(JsonNode schema) {
    this.schema = schema;
  }

  /** What is wrong, with where; nothing when the file fits. */
  List<String> faults(JsonNode file) {
    return faults(schema, file, "");
  }

  private List<String> faults(JsonNode rule, JsonNode value, String at) {
    List<String> all = new ArrayList<>();
    rule.forEachEntry((word, says) -> all.addAll(faults(word, says, rule, value, at)));
    return all;
  }

  private List<String> faults(
      String word, JsonNode says, JsonNode rule, JsonNode value, String at) {
    return switch (word) {
      case "$schema", "$defs", "title", "description", "unit", "then", "else" -> List.of();
      case "$ref" -> faults(schema.at(says.stringValue().substring(1)), value, at);
      case "type" -> fault(isOf(says.stringValue(), value), at + " is no " + says);
      case "const" -> fault(says.equals(value), at + " is not " + says);
      case "enum" -> fault(says.valueStream().anyMatch(value::equals), at + " is none of " + says);
      case "minimum" ->
          fault(!value.isNumber() || number(value).compareTo(number(says)) >= 0, at + " < " + says);
      case "maximum" ->
          fault(!value.isNumber() || number(value).compareTo(number(says)) <= 0, at + " > " + says);
      case "pattern" ->
          fault(
              !value.isString()
                  || Pattern.compile(says.stringValue()).matcher(value.stringValue()).find(),
              at + " is not like " + says);
      case "minItems" ->
          fault(!value.isArray() || value.size() >= says.intValue(), at + " is too short");
      case "maxItems" ->
          fault(!value.isArray() || value.size() <= says.intValue(), at + " is too long");
      case "items" -> value.isArray() ? items(says, value, at) : List.of();
      case "properties" -> value.isObject() ? properties(says, value, at) : List.of();
      case "required" ->
          says.valueStream()
              .map(JsonNode::stringValue)
              .filter(key -> value.isObject() && !value.has(key))
              .map(key -> at + " lacks " + key)
              .toList();
      case "additionalProperties" ->
          value.propertyNames().stream()
              .filter(key -> !rule.path("properties").has(key))
              .map(key -> at + " may not have " + key)
              .toList();
      case "allOf" -> says.valueStream().flatMap(each -> faults(each, value, at).stream()).toList();
      case "anyOf" ->
          fault(
              says.valueStream().anyMatch(each -> faults(each, value, at).isEmpty()),
              at + " fits none of " + says);
      case "if" ->
          faults(rule.path(faults(says, value, at).isEmpty() ? "then" : "else"), value, at);
      default -> throw new IllegalStateException("A word of no schema checked here: " + word);
    };
  }

  private List<String> items(JsonNode rule, JsonNode list, String at) {
    List<String> all = new ArrayList<>();
    for (int i = 0; i < list.size(); i++) {
      all.addAll(faults(rule, list.get(i), at + "/" + i));
    }
    return all;
  }

  private List<String> properties(JsonNode rules, JsonNode object, String at) {
    return StreamSupport.stream(object.propertyNames().spliterator(), false)
        .filter(rules::has)
        .flatMap(key -> faults(rules.get(key), object.get(key), at + "/" + key).stream())
        .toList();
  }

  private static boolean isOf(String type, JsonNode value) {
    return switch (type) {
      case "object" -> value.isObject();
      case "array" -> value.isArray();
      case "string" -> value.isString();
      case "boolean" -> value.isBoolean();
      case "number" -> value.isNumber();
      case "integer" -> value.isNumber() && number(value).stripTrailingZeros().scale() <= 0;
      default -> throw new IllegalStateException("No type of JSON Schema: " + type);
    };
  }

  private static BigDecimal number(JsonNode value) {
    return new BigDecimal(value.asString());
  }

  private static List<String> fault(boolean fits, String fault) {
    return fits ? List.of() : List.of(fault);
  }
}
