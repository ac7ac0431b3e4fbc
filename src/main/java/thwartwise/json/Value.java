package thwartwise.json;

import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import thwartwise.measure.Printable;
import tools.jackson.databind.JsonNode;

/**
 * What stands at one key of a file: taken for what it should be, or refused in one line.
 *
 * @param spot the object the key stands in
 */
public record Value(String key, JsonNode node, Spot spot) {
  public double number(Quantity quantity, String remedy) {
    if (!node.isNumber()) {
      throw fault(
          "is %s, wanted a number (%s). Write digits without quotes.",
          Kind.of(node), quantity.unit());
    }
    double number = node.doubleValue();
    if (!Double.isFinite(number)) {
      throw fault("is %s, which nobody measured. %s", number, remedy);
    }
    if (!quantity.believes(number)) {
      throw fault("is %s", quantity.doubt(number, remedy));
    }
    return number;
  }

  public int whole(Quantity quantity, String remedy) {
    double number = number(quantity, remedy);
    if (number != Math.rint(number)) {
      throw fault("is %s, wanted a whole number. %s", Typed.number(number), remedy);
    }
    return (int) number;
  }

  public String words(String remedy) {
    if (!node.isString()) {
      throw fault("is %s, wanted words in quotes. %s", Kind.of(node), remedy);
    }
    String words = node.stringValue();
    if (words.isBlank()) {
      throw fault("is empty. %s", remedy);
    }
    OptionalInt odd = Printable.firstUnprintable(words);
    if (odd.isPresent()) {
      throw fault(
          "holds a character that cannot be printed (U+%04X). Take it out.", odd.getAsInt());
    }
    return words;
  }

  /** Words as they were kept: they may be none, and hold whatever somebody typed. */
  public String anyText() {
    return node.isString() ? node.stringValue() : words("");
  }

  public boolean truth() {
    if (!node.isBoolean()) {
      throw fault("is %s, wanted true or false without quotes.", Kind.of(node));
    }
    return node.booleanValue();
  }

  /** The words of a list, as they were kept. */
  public List<String> texts() {
    return list().stream().map(Value::anyText).toList();
  }

  public boolean isList() {
    return node.isArray();
  }

  public List<Value> list() {
    if (!node.isArray()) {
      throw fault("is %s, wanted a list in square brackets.", Kind.of(node));
    }
    return node.valueStream().map(item -> new Value(key, item, spot)).toList();
  }

  /** Exactly two numbers, the lesser first. */
  public double[] ends(Quantity quantity, String remedy) {
    List<Value> list = list();
    if (list.size() != 2) {
      throw fault("is a list of %d, wanted two numbers: from and to. %s", list.size(), remedy);
    }
    double[] ends = list.stream().mapToDouble(end -> end.number(quantity, remedy)).toArray();
    if (!(ends[0] < ends[1])) {
      throw fault(
          "runs from %s to %s. Write two different numbers, the lesser first.",
          Typed.number(ends[0]), Typed.number(ends[1]));
    }
    return ends;
  }

  public <T> T oneOf(Choice<T> choice, String remedy) {
    String typed = words(remedy);
    return choice
        .named(typed)
        .orElseThrow(
            () ->
                fault(
                    "is %s, wanted %s. %s", Printable.quoted(typed), choice.wanted(typed), remedy));
  }

  private UnusableInput fault(String text, Object... parts) {
    return spot.fault(('"' + key + "\" " + String.format(Locale.ROOT, text, parts)).strip());
  }
}
