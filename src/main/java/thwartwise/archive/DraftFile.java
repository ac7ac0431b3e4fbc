package thwartwise.archive;

import java.nio.file.Path;
import java.util.List;
import thwartwise.json.Format;
import thwartwise.json.InputFile;
import thwartwise.json.JsonText;
import thwartwise.json.Layout;
import thwartwise.json.Location;
import thwartwise.json.ObjectReader;
import thwartwise.json.UnusableInput;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * The answers of an unfinished walk, {@code thwartwise/draft/1}. It has a format of its own, so
 * that half a boat is never taken for a boat.
 *
 * @param name of the boat
 */
record DraftFile(String name, List<DraftAnswer> answers) {
  private static final String REMEDY = "Begin the walk again.";

  DraftFile {
    answers = List.copyOf(answers);
  }

  static DraftFile read(Path file) {
    Location spot = Location.whole(file.toString());
    String json = InputFile.text(file, Format.DRAFT.noun(), InputFile.BOAT_BYTES);
    ObjectReader fields =
        ObjectReader.of(
            Format.DRAFT.checked(JsonText.parse(json, spot), spot),
            spot,
            "format",
            "name",
            "answers");
    return new DraftFile(
        fields.value("name", REMEDY).anyText(),
        fields.items("answers", "answer", REMEDY, "question", "typed").stream()
            .map(DraftFile::answer)
            .toList());
  }

  /** Whether the file is a draft of a newer program version. */
  static boolean isOfNewerProgram(Path file) {
    try {
      String json = InputFile.text(file, Format.DRAFT.noun(), InputFile.BOAT_BYTES);
      String format = JsonText.parse(json, Location.whole("")).path("format").asString("");
      return Format.DRAFT.names(format) && !format.equals(Format.DRAFT.text());
    } catch (UnusableInput damaged) {
      return false;
    }
  }

  private static DraftAnswer answer(ObjectReader answer) {
    return new DraftAnswer(
        answer.value("question", REMEDY).anyText(), answer.value("typed", REMEDY).anyText());
  }

  String json() {
    ObjectNode node = JsonText.object().put("format", Format.DRAFT.text()).put("name", name);
    ArrayNode list = node.putArray("answers");
    for (DraftAnswer answer : answers) {
      list.addObject().put("question", answer.question()).put("typed", answer.typed());
    }
    return Layout.of(node);
  }
}
