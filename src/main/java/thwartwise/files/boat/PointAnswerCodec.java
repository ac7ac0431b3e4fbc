package thwartwise.files.boat;

import thwartwise.boat.BoatFact;
import thwartwise.boat.PointAnswer;
import thwartwise.boat.PointAnswer.PointCondition;
import thwartwise.boat.PointAnswer.PointGravity;
import thwartwise.json.JsonText;
import thwartwise.json.ObjectReader;
import thwartwise.json.WordChoice;
import thwartwise.measured.BoatQuantity;
import tools.jackson.databind.node.ObjectNode;

/** The answer to a point of a checklist. */
final class PointAnswerCodec {
  static final String KEY = "lookedAt";
  static final String[] KEYS = {
    "point",
    "system",
    "thing",
    "must",
    "found",
    "grave",
    "sets",
    "againAfterDays",
    "note",
    "by",
    "date",
    "mark"
  };
  private static final WordChoice<PointCondition> FOUND =
      WordChoice.of(PointCondition::word, PointCondition.values());
  private static final WordChoice<PointGravity> GRAVE =
      WordChoice.of(PointGravity::word, PointGravity.values());
  private static final WordChoice<BoatFact> SETS = WordChoice.of(BoatFact::word, BoatFact.values());
  private static final String LOOK = "Let \"look\" write it.";
  private static final String HOW_FOUND = "Write what was found.";
  private static final String HOW_GRAVE = "Write how grave it is.";
  private static final String WHAT_FACT = "Write what is so, or leave it out.";

  private PointAnswerCodec() {}

  static PointAnswer read(ObjectReader answer) {
    return new PointAnswer(
        answer.text("point", LOOK),
        answer.text("system", LOOK),
        answer.has("thing") ? answer.text("thing", LOOK) : "",
        answer.text("must", LOOK),
        answer.oneOf("found", FOUND, HOW_FOUND),
        answer.oneOf("grave", GRAVE, HOW_GRAVE),
        answer.optional("sets").map(value -> value.oneOf(SETS, WHAT_FACT)),
        answer.has("againAfterDays")
            ? answer.whole("againAfterDays", BoatQuantity.AGAIN_AFTER_DAYS, LOOK)
            : 0,
        answer.has("note") ? answer.text("note", LOOK) : "",
        answer.text("by", LOOK),
        SealTestCodec.date(answer),
        answer.has("mark") ? answer.text("mark", LOOK) : "");
  }

  static ObjectNode write(PointAnswer answer) {
    ObjectNode node = JsonText.object().put("point", answer.point()).put("system", answer.system());
    said(node, "thing", answer.item());
    node.put("must", answer.requirement())
        .put("found", answer.condition().word())
        .put("grave", answer.gravity().word());
    answer.fact().ifPresent(fact -> node.put("sets", fact.word()));
    if (answer.repeatAfterDays() > 0) {
      node.put("againAfterDays", answer.repeatAfterDays());
    }
    said(node, "note", answer.note());
    node.put("by", answer.by()).put("date", answer.date().toString());
    said(node, "mark", answer.mark());
    return node;
  }

  private static void said(ObjectNode node, String key, String words) {
    if (!words.isBlank()) {
      node.put(key, words);
    }
  }
}
