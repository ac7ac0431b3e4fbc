package thwartwise.files.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import thwartwise.boat.Assumption;
import thwartwise.crew.Refusal;
import thwartwise.json.JsonText;
import thwartwise.json.ObjectReader;
import thwartwise.json.RecordCodec;
import thwartwise.measure.UnitFormat;
import thwartwise.report.AssumptionWords;
import thwartwise.report.RefusalWords;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Refusals and assumptions: a list of their words, and in a key of its own the identity of each.
 * Older reports have the words alone.
 */
final class WordedListCodec {
  private static final String IDENTITIES = "Are";

  private WordedListCodec() {}

  static void putRefusals(ObjectNode node, String key, List<Refusal> refusals, UnitFormat units) {
    put(node, key, refusals, RefusalWords.of(refusals, units), Refusal.Stated.class);
  }

  static List<Refusal> readRefusals(ObjectReader holder, String key) {
    return read(holder, key, Refusal.class, Refusal.Stated::new);
  }

  static void putAssumptions(
      ObjectNode node, String key, List<Assumption> assumptions, UnitFormat units) {
    put(node, key, assumptions, AssumptionWords.of(assumptions, units), Assumption.Stated.class);
  }

  static List<Assumption> readAssumptions(ObjectReader holder, String key) {
    return read(holder, key, Assumption.class, Assumption.Stated::new);
  }

  private static <T> void put(
      ObjectNode node, String key, List<T> items, List<String> words, Class<? extends T> stated) {
    node.set(key, JsonText.texts(words));
    if (items.stream().allMatch(stated::isInstance)) {
      return;
    }
    ArrayNode list = JsonText.list();
    items.forEach(item -> list.add(RecordCodec.write((Record) item)));
    node.set(key + IDENTITIES, list);
  }

  private static <T> List<T> read(
      ObjectReader holder, String key, Class<T> family, Function<String, T> stated) {
    List<String> words = holder.value(key, ReportValues.REMEDY).texts();
    List<ObjectReader> known =
        holder.has(key + IDENTITIES)
            ? ReportValues.list(holder, key + IDENTITIES, "item")
            : List.of();
    List<T> all = new ArrayList<>();
    for (int i = 0; i < words.size(); i++) {
      Optional<T> identity =
          i < known.size() ? RecordCodec.read(known.get(i), family) : Optional.empty();
      all.add(identity.orElse(stated.apply(words.get(i))));
    }
    return all;
  }
}
