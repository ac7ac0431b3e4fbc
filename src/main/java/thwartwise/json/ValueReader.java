package thwartwise.json;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import thwartwise.measure.NumberText;
import thwartwise.measure.PrintableText;
import thwartwise.measured.BoatQuantity;
import thwartwise.measured.ValueType.ScalarSource;
import tools.jackson.databind.JsonNode;

/**
 * The value of one key, converted to what it should be or refused in one line.
 *
 * @param spot the object of the key
 */
public record ValueReader(String key, JsonNode node, Location spot) implements ScalarSource {
  @Override
  public double number(BoatQuantity quantity, String remedy) {
    if (!node.isNumber()) {
      throw fault(
          "is %s, wanted a number (%s). Write digits without quotes.",
          JsonKind.of(node), quantity.unit());
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

  @Override
  public int whole(BoatQuantity quantity, String remedy) {
    double number = number(quantity, remedy);
    if (number != Math.rint(number)) {
      throw fault("is %s, wanted a whole number. %s", NumberText.number(number), remedy);
    }
    return (int) number;
  }

  @Override
  public String words(String remedy) {
    if (!node.isString()) {
      throw fault("is %s, wanted words in quotes. %s", JsonKind.of(node), remedy);
    }
    String words = node.stringValue();
    if (words.isBlank()) {
      throw fault("is empty. %s", remedy);
    }
    OptionalInt odd = PrintableText.firstUnprintable(words);
    if (odd.isPresent()) {
      throw fault(
          "holds a character that cannot be printed (U+%04X). Take it out.", odd.getAsInt());
    }
    return words;
  }

  /** Any text, also an empty one. */
  public String anyText() {
    return node.isString() ? node.stringValue() : words("");
  }

  @Override
  public boolean bool() {
    if (!node.isBoolean()) {
      throw fault("is %s, wanted true or false without quotes.", JsonKind.of(node));
    }
    return node.booleanValue();
  }

  /** The texts of a list. */
  public List<String> texts() {
    return list().stream().map(ValueReader::anyText).toList();
  }

  public boolean isObject() {
    return node.isObject();
  }

  /** The object itself; its keys are not checked beforehand. */
  public ObjectReader object() {
    return ObjectReader.free(node, spot);
  }

  /** The items of a list, each with its own place. */
  public List<ValueReader> items(String noun) {
    List<ValueReader> items = new ArrayList<>();
    for (ValueReader item : list()) {
      items.add(new ValueReader(key, item.node(), spot.item(noun, items.size() + 1, "")));
    }
    return items;
  }

  public boolean isList() {
    return node.isArray();
  }

  public List<ValueReader> list() {
    if (!node.isArray()) {
      throw fault("is %s, wanted a list in square brackets.", JsonKind.of(node));
    }
    return node.valueStream().map(item -> new ValueReader(key, item, spot)).toList();
  }

  /** Exactly two numbers, the lesser first. */
  public double[] ends(BoatQuantity quantity, String remedy) {
    List<ValueReader> list = list();
    if (list.size() != 2) {
      throw fault("is a list of %d, wanted two numbers: from and to. %s", list.size(), remedy);
    }
    double[] ends = list.stream().mapToDouble(end -> end.number(quantity, remedy)).toArray();
    if (!(ends[0] < ends[1])) {
      throw fault(
          "runs from %s to %s. Write two different numbers, the lesser first.",
          NumberText.number(ends[0]), NumberText.number(ends[1]));
    }
    return ends;
  }

  @Override
  public LocalDate day(String remedy) {
    String typed = words(remedy);
    try {
      return LocalDate.parse(typed);
    } catch (DateTimeException e) {
      throw fault("is %s, which is not a day. %s", PrintableText.quoted(typed), remedy);
    }
  }

  @Override
  public <T> T oneOf(Map<String, T> byWord, String remedy) {
    return oneOf(new WordChoice<>(byWord), remedy);
  }

  public <T> T oneOf(WordChoice<T> choice, String remedy) {
    String typed = words(remedy);
    return choice
        .named(typed)
        .orElseThrow(
            () ->
                fault(
                    "is %s, wanted %s. %s",
                    PrintableText.quoted(typed), choice.wanted(typed), remedy));
  }

  private UnusableInput fault(String text, Object... parts) {
    return spot.faultOf(key, ('"' + key + "\" " + String.format(Locale.ROOT, text, parts)).strip());
  }
}
