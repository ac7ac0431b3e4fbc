package thwartwise.files.boat;

import java.util.List;
import thwartwise.boat.Assumption;
import thwartwise.json.JsonText;
import thwartwise.json.ObjectReader;
import thwartwise.json.RecordCodec;
import thwartwise.json.ValueReader;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;

/**
 * Assumptions for what nobody measured: a list of words, as people and older programs write it, and
 * of objects that identify the assumption, so that each reader sees it in the reader's units.
 */
final class AssumptionCodec {
  static final String KEY = "assumed";
  private static final String NOUN = "assumption";

  private AssumptionCodec() {}

  static List<Assumption> read(ValueReader list) {
    return list.items(NOUN).stream().map(AssumptionCodec::one).toList();
  }

  private static Assumption one(ValueReader item) {
    if (!item.isObject()) {
      return new Assumption.Stated(item.anyText());
    }
    ObjectReader object = item.object();
    return RecordCodec.read(object, Assumption.class)
        .orElseThrow(
            () ->
                object
                    .spot()
                    .fault(
                        "\"is\" names no assumption that is known. Write what nobody measured in"
                            + " words instead."));
  }

  static ArrayNode write(List<Assumption> assumptions) {
    ArrayNode list = JsonText.list();
    assumptions.forEach(each -> list.add(node(each)));
    return list;
  }

  private static JsonNode node(Assumption assumption) {
    return assumption instanceof Assumption.Stated stated
        ? JsonNodeFactory.instance.stringNode(stated.words())
        : RecordCodec.write((Record) assumption);
  }
}
