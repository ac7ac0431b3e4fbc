package thwartwise.files.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thwartwise.crew.Refusal;
import thwartwise.json.JsonText;
import thwartwise.json.ObjectReader;
import thwartwise.measure.UnitFormat;
import thwartwise.report.RefusalWords;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Refusals: a list of their words, and under a key of its own what each is. */
final class RefusalCodec {
  private static final String IDENTITIES = "Are";

  private RefusalCodec() {}

  static void put(ObjectNode node, String key, List<Refusal> refusals, UnitFormat units) {
    node.set(key, JsonText.texts(RefusalWords.of(refusals, units)));
    if (refusals.stream().allMatch(Refusal.Stated.class::isInstance)) {
      return;
    }
    ArrayNode list = JsonText.list();
    for (Refusal refusal : refusals) {
      list.add(RecordCodec.write((Record) refusal));
    }
    node.set(key + IDENTITIES, list);
  }

  static List<Refusal> read(ObjectReader holder, String key) {
    List<String> words = holder.value(key, ReportValues.REMEDY).texts();
    List<ObjectReader> known =
        holder.has(key + IDENTITIES)
            ? ReportValues.list(holder, key + IDENTITIES, "refusal")
            : List.of();
    List<Refusal> all = new ArrayList<>();
    for (int i = 0; i < words.size(); i++) {
      Optional<Refusal> identity =
          i < known.size() ? RecordCodec.read(known.get(i), Refusal.class) : Optional.empty();
      all.add(identity.orElse(new Refusal.Stated(words.get(i))));
    }
    return all;
  }
}
