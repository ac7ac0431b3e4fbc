package thwartwise.json;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thwartwise.measure.NearestWord;
import thwartwise.measure.PrintableText;
import thwartwise.measured.BoatQuantity;
import thwartwise.measured.Property;
import thwartwise.measured.Property.Settable;
import tools.jackson.databind.JsonNode;

/**
 * One object of a file, read key by key. Every value that cannot be used is refused in one line:
 * where, what was there, what was wanted, what to do.
 *
 * <p>Unknown keys are refused first, because a missing key is most often a misspelt one.
 */
public final class ObjectReader {
  private final JsonNode node;
  private final Location spot;

  private ObjectReader(JsonNode node, Location spot) {
    this.node = node;
    this.spot = spot;
  }

  /** The node as an object with no other keys than these. */
  public static ObjectReader of(JsonNode node, Location spot, String... known) {
    return free(node, spot).allow(List.of(known));
  }

  /** The node as an object whose keys are names chosen by the writer. */
  public static ObjectReader free(JsonNode node, Location spot) {
    if (!node.isObject()) {
      throw spot.fault("this is " + JsonKind.of(node) + ", wanted an object in braces.");
    }
    return new ObjectReader(node, spot);
  }

  /** The same object, refused when it has any other key. */
  public ObjectReader allow(List<String> known) {
    for (String key : node.propertyNames()) {
      if (!known.contains(key)) {
        throw spot.fault(
            "the key %s is not known here; the nearest known one is \"%s\"."
                + " Correct it or take it out.",
            PrintableText.quoted(key), NearestWord.to(key, known).orElseThrow());
      }
    }
    return this;
  }

  public Location spot() {
    return spot;
  }

  public List<String> keys() {
    return List.copyOf(node.propertyNames());
  }

  public boolean has(String key) {
    return node.has(key);
  }

  /** Whether the key has a value; it has none if it is missing or null. */
  public boolean hasValue(String key) {
    return has(key) && !node.get(key).isNull();
  }

  /** Refuses a known key that has no meaning together with the other keys here. */
  public void refuse(String key, String why) {
    if (has(key)) {
      throw spot.fault("\"" + key + "\" does not belong here: " + why);
    }
  }

  public ValueReader value(String key, String remedy) {
    return optional(key)
        .orElseThrow(() -> spot.faultOf(key, "the key \"" + key + "\" is missing. " + remedy));
  }

  public Optional<ValueReader> optional(String key) {
    return has(key) ? Optional.of(new ValueReader(key, node.get(key), spot)) : Optional.empty();
  }

  public double number(String key, BoatQuantity quantity, String remedy) {
    return value(key, remedy).number(quantity, remedy);
  }

  public Optional<Double> optionalNumber(String key, BoatQuantity quantity, String remedy) {
    return optional(key).map(value -> value.number(quantity, remedy));
  }

  /** A required property. */
  public <V> V required(Property<?, V> property) {
    return property
        .type()
        .reader()
        .apply(value(property.key(), property.remedy()), property.remedy());
  }

  /** An optional property. */
  public <V> Optional<V> optional(Property<?, V> property) {
    return optional(property.key())
        .map(value -> property.type().reader().apply(value, property.remedy()));
  }

  /** The owner with those of these properties that have values here. */
  public <O> O into(O owner, List<Settable<O, ?>> properties) {
    O whole = owner;
    for (Settable<O, ?> each : properties) {
      Optional<ValueReader> said = optional(each.property().key());
      whole = said.isPresent() ? each.read(whole, said.get()) : whole;
    }
    return whole;
  }

  public int whole(String key, BoatQuantity quantity, String remedy) {
    return value(key, remedy).whole(quantity, remedy);
  }

  public String text(String key, String remedy) {
    return value(key, remedy).words(remedy);
  }

  public boolean flag(String key, boolean whenLeftOut) {
    return optional(key).map(ValueReader::bool).orElse(whenLeftOut);
  }

  public <T> T oneOf(String key, WordChoice<T> choice, String remedy) {
    return value(key, remedy).oneOf(choice, remedy);
  }

  public ObjectReader object(String key, String remedy, String... known) {
    return of(value(key, remedy).node(), spot.in(key), known);
  }

  public Optional<ObjectReader> optionalObject(String key, String... known) {
    return optional(key).map(value -> of(value.node(), spot.in(key), known));
  }

  public ObjectReader freeObject(String key, String remedy) {
    return free(value(key, remedy).node(), spot.in(key));
  }

  /** The objects of a list whose keys are not checked beforehand. */
  public List<ObjectReader> freeItems(String key, String noun, String remedy) {
    List<ObjectReader> items = new ArrayList<>();
    for (ValueReader item : value(key, remedy).list()) {
      items.add(free(item.node(), spot.item(noun, items.size() + 1, nameOf(item.node()))));
    }
    return items;
  }

  public List<ObjectReader> items(String key, String noun, String remedy, String... known) {
    return items(value(key, remedy), noun, known);
  }

  /** The objects of a list, each with the line on which it begins. */
  public List<ObjectReader> items(
      String key, String noun, String remedy, List<Integer> lines, String... known) {
    List<ObjectReader> items = new ArrayList<>();
    for (ValueReader item : value(key, remedy).list()) {
      int number = items.size() + 1;
      Location onLine = spot.in("line " + lines.get(number - 1)).item(noun, number, "");
      items.add(of(item.node(), onLine, known));
    }
    return items;
  }

  /** The objects of a list; none when it is missing. */
  public List<ObjectReader> optionalItems(String key, String noun, String... known) {
    return optional(key).map(value -> items(value, noun, known)).orElse(List.of());
  }

  private List<ObjectReader> items(ValueReader list, String noun, String... known) {
    List<ObjectReader> items = new ArrayList<>();
    for (ValueReader item : list.list()) {
      items.add(of(item.node(), spot.item(noun, items.size() + 1, nameOf(item.node())), known));
    }
    return items;
  }

  private static String nameOf(JsonNode item) {
    JsonNode name = item.path("name");
    return name.isString() ? name.stringValue() : "";
  }
}
