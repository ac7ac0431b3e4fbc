package thwartwise.files.boat;

import java.util.Arrays;
import java.util.List;
import thwartwise.json.JsonText;
import thwartwise.measured.BoatQuantity;
import thwartwise.measured.Property;
import thwartwise.measured.ValueType;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** One object of a JSON Schema, built key by key; no other keys are allowed in it. */
final class SchemaPart {
  private final ObjectNode properties = JsonText.object();
  private final ArrayNode required = JsonText.list();
  private final ArrayNode conditions = JsonText.list();

  SchemaPart required(String key, ObjectNode value) {
    required.add(key);
    return optional(key, value);
  }

  SchemaPart optional(String key, ObjectNode value) {
    properties.set(key, value);
    return this;
  }

  SchemaPart required(Property<?, ?> property) {
    return required(property.key(), single(property));
  }

  SchemaPart optional(Property<?, ?> property) {
    return optional(property.key(), single(property));
  }

  <O> SchemaPart optional(List<Property<O, ?>> all) {
    all.stream().filter(property -> !properties.has(property.key())).forEach(this::optional);
    return this;
  }

  /** Requires at least one of these sets of keys. */
  SchemaPart anyRequired(String[]... keys) {
    ArrayNode choices = JsonText.list();
    Arrays.stream(keys).forEach(set -> choices.add(needs(set)));
    conditions.add(JsonText.object().set("anyOf", choices));
    return this;
  }

  /** Requires a key if another key has a certain word, and otherwise perhaps a third. */
  SchemaPart ifThenElse(String key, String word, String[] then, String... otherwise) {
    ObjectNode said = JsonText.object();
    said.putObject("properties").putObject(key).put("const", word);
    ObjectNode condition = JsonText.object();
    condition.set("if", said);
    condition.set("then", needs(then));
    condition.set("else", needs(otherwise));
    conditions.add(condition);
    return this;
  }

  private static ObjectNode needs(String... keys) {
    return JsonText.object().set("required", JsonText.texts(List.of(keys)));
  }

  /** Allows other keys too. */
  ObjectNode open() {
    ObjectNode node = object();
    node.remove("additionalProperties");
    return node;
  }

  ObjectNode object() {
    ObjectNode node = typed("object");
    node.set("properties", properties);
    if (!required.isEmpty()) {
      node.set("required", required);
    }
    if (!conditions.isEmpty()) {
      node.set("allOf", conditions);
    }
    return node.put("additionalProperties", false);
  }

  /** A single value of the table: its type, range and unit, how to get it and its default. */
  static ObjectNode single(Property<?, ?> property) {
    String leftOut =
        property.whenOmitted().isEmpty() ? "" : " Left out: " + property.whenOmitted() + ".";
    return value(property.type(), property.remedy() + leftOut);
  }

  private static ObjectNode value(ValueType<?> type, String meaning) {
    return switch (type.form()) {
      case NUMBER -> number(type.quantity().orElseThrow(), meaning);
      case WHOLE -> whole(type.quantity().orElseThrow(), meaning);
      case TRUTH -> flag(meaning);
      case TEXT -> text(meaning);
      case DAY -> day(meaning);
      case CHOICE -> oneOf(type.words(), meaning);
    };
  }

  static ObjectNode number(BoatQuantity quantity, String meaning) {
    return ranged("number", quantity, meaning);
  }

  static ObjectNode whole(BoatQuantity quantity, String meaning) {
    return ranged("integer", quantity, meaning);
  }

  private static ObjectNode ranged(String type, BoatQuantity quantity, String meaning) {
    return typed(type)
        .put("minimum", quantity.inFile(quantity.least()))
        .put("maximum", quantity.inFile(quantity.most()))
        .put("unit", quantity.unit())
        .put("description", meaning);
  }

  static ObjectNode text(String meaning) {
    return typed("string").put("pattern", "\\S").put("description", meaning);
  }

  static ObjectNode day(String meaning) {
    return typed("string")
        .put("pattern", "^[0-9]{4}-[0-9]{2}-[0-9]{2}$")
        .put("description", meaning);
  }

  static ObjectNode flag(String meaning) {
    return typed("boolean").put("description", meaning);
  }

  static ObjectNode oneOf(List<String> words, String meaning) {
    ObjectNode node = typed("string");
    node.set("enum", JsonText.texts(words));
    return node.put("description", meaning);
  }

  static ObjectNode list(ObjectNode item, int fewest) {
    ObjectNode node = typed("array");
    node.set("items", item);
    return fewest > 0 ? node.put("minItems", fewest) : node;
  }

  /** A pair, the lesser end first. A schema cannot express that order. */
  static ObjectNode ends(BoatQuantity quantity, String meaning) {
    return list(number(quantity, meaning), 2).put("maxItems", 2);
  }

  static ObjectNode anyOf(ObjectNode... choices) {
    ArrayNode all = JsonText.list();
    Arrays.stream(choices).forEach(all::add);
    return JsonText.object().set("anyOf", all);
  }

  static ObjectNode reference(String definition) {
    return JsonText.object().put("$ref", "#/$defs/" + definition);
  }

  private static ObjectNode typed(String type) {
    return JsonText.object().put("type", type);
  }
}
