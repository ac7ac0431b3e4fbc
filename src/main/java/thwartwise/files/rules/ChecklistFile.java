package thwartwise.files.rules;

import java.util.List;
import thwartwise.checklist.Checklist;
import thwartwise.checklist.ChecklistPoint;
import thwartwise.checklist.ChecklistPoint.Concern;
import thwartwise.json.Format;
import thwartwise.json.JsonText;
import thwartwise.json.Location;
import thwartwise.json.ObjectReader;
import thwartwise.json.WordChoice;

/** Reads checklists. */
public final class ChecklistFile {
  static final List<String> SHIPPED =
      List.of("before-each-launch", "trial-in-shallow-water", "hull-and-fastenings");
  private static final WordChoice<Concern> CONCERNS =
      WordChoice.of(Concern::word, Concern.values());
  private static final String NAME = "Write what the list is called.";
  private static final String WHEN = "Write on what occasion it is gone through.";
  private static final String SOURCE = "Write title and section, or common practice, no source.";
  private static final String POINTS =
      "Write at least one, as in { \"look\": \"The bung is in\", \"why\": \"...\","
          + " \"concerns\": \"any boat\" }.";
  private static final String LOOK = "Write what must be so.";
  private static final String WHY = "Write what goes wrong otherwise.";
  private static final String CONCERN = "Write which boats it is asked of.";

  private ChecklistFile() {}

  /** The lists that come with the program. */
  public static List<Checklist> shipped() {
    return SHIPPED.stream().map(ChecklistFile::shipped).toList();
  }

  private static Checklist shipped(String name) {
    String resource = "/thwartwise/checklists/" + name + ".json";
    return parse(ShippedFile.text(resource, "checklist"), resource);
  }

  /**
   * Reads a checklist from text.
   *
   * @param where what messages call the text
   * @throws UnusableInput one line: where in it, what is wrong, what to do
   */
  public static Checklist parse(String json, String where) {
    Location spot = Location.whole(where);
    ObjectReader fields =
        ObjectReader.of(
            Format.CHECKLIST.checked(JsonText.parse(json, spot), spot),
            spot,
            "format",
            "name",
            "when",
            "basis",
            "source",
            "points");
    List<ChecklistPoint> points =
        fields.items("points", "point", POINTS, "look", "why", "concerns").stream()
            .map(ChecklistFile::point)
            .toList();
    if (points.isEmpty()) {
      throw spot.fault("\"points\" is an empty list. " + POINTS);
    }
    return new Checklist(
        fields.text("name", NAME), fields.text("when", WHEN), source(fields), points);
  }

  private static String source(ObjectReader list) {
    String basis = list.oneOf("basis", RuleSetFile.BASES, RuleSetFile.BASIS).word();
    return list.text("source", SOURCE) + " (" + basis + ")";
  }

  private static ChecklistPoint point(ObjectReader point) {
    return new ChecklistPoint(
        point.text("look", LOOK),
        point.text("why", WHY),
        point.oneOf("concerns", CONCERNS, CONCERN));
  }
}
