package thwartwise.files.rules;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import thwartwise.boat.BoatFact;
import thwartwise.boat.PointAnswer.PointGravity;
import thwartwise.checklist.Checklist;
import thwartwise.checklist.Checklist.ChecklistUse;
import thwartwise.checklist.ChecklistPoint;
import thwartwise.checklist.Concern;
import thwartwise.json.Format;
import thwartwise.json.InputFile;
import thwartwise.json.JsonText;
import thwartwise.json.Location;
import thwartwise.json.ObjectReader;
import thwartwise.json.WordChoice;
import thwartwise.measure.PrintableText;
import thwartwise.measured.BoatQuantity;

/** Reads checklists. */
public final class ChecklistFile {
  static final List<String> BUNDLED =
      List.of(
          "before-each-launch",
          "trial-in-shallow-water",
          "hull-and-fastenings",
          "sealed-chambers",
          "equipment-boxes",
          "battery",
          "electric-charging",
          "electric-motor",
          "solar-panel",
          "lamps-and-wires",
          "oars-and-paddles",
          "cleats-anchor-and-lines",
          "carrying-and-road",
          "first-launch-and-bailing",
          "people-and-dusk");
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
  private static final WordChoice<ChecklistUse> USES =
      WordChoice.of(ChecklistUse::word, ChecklistUse.values());
  private static final WordChoice<PointGravity> GRAVITIES =
      WordChoice.of(PointGravity::word, PointGravity.values());
  private static final WordChoice<BoatFact> FACTS =
      WordChoice.of(BoatFact::word, BoatFact.values());
  private static final String USE = "Write what is done with the list, or leave it out.";
  private static final String ID = "Write a short name of the point that stays the same.";
  private static final String HOW = "Write how to look, or leave it out.";
  private static final String GRAVE = "Write how grave it is when it is not so, or leave it out.";
  private static final String SETS = "Write what is so of the boat then, or leave it out.";
  private static final String AGAIN = "Write after how many days it is asked again.";
  private static final String[] POINT_KEYS = {
    "id", "look", "how", "why", "concerns", "grave", "sets", "againAfterDays"
  };

  private ChecklistFile() {}

  /** The bundled lists. */
  public static List<Checklist> bundled() {
    return BUNDLED.stream().map(ChecklistFile::bundled).toList();
  }

  /** The bundled lists that are printed to be ticked. */
  public static List<Checklist> onPaper() {
    return bundled().stream().filter(list -> list.use().isPrinted()).toList();
  }

  /** The bundled lists, with those in these files added or in their place. */
  public static List<Checklist> bundledWith(List<Path> files) {
    return Checklist.replaced(bundled(), checked(files));
  }

  /**
   * The lists in these files.
   *
   * @throws UnusableInput where one of them is wrong, or two of them hold the same point
   */
  public static List<Checklist> checked(List<Path> files) {
    List<Checklist> own = new ArrayList<>();
    Map<String, Path> firstIn = new HashMap<>();
    for (Path file : files) {
      Checklist list = asked(read(file), file);
      list.points().forEach(point -> refuseTwice(point.id(), file, firstIn));
      own.add(list);
    }
    return own;
  }

  /**
   * Refuses a list to be printed: only bundled lists are printed, so it would be lost without a
   * word.
   */
  private static Checklist asked(Checklist list, Path file) {
    if (!list.use().isAsked()) {
      throw Location.whole(file.toString())
          .fault(
              "\"use\" is \"%s\", and a list of your own is only asked. Write \"%s\".",
              list.use().word(), ChecklistUse.ASKED.word());
    }
    return list;
  }

  /** Refuses a point that two files hold; which one counts would depend on their file names. */
  private static void refuseTwice(String id, Path file, Map<String, Path> firstIn) {
    Path other = firstIn.putIfAbsent(id, file);
    if (other != null) {
      throw Location.whole(file.toString())
          .fault(
              "the point %s stands in %s, too. Take it out of one of the two files, or give it"
                  + " another \"id\" there.",
              PrintableText.quoted(id), other);
    }
  }

  /**
   * Reads a checklist from a file.
   *
   * @throws UnusableInput one line: where in it, what is wrong, what to do
   */
  public static Checklist read(Path file) {
    String json = InputFile.text(file, Format.CHECKLIST.noun(), InputFile.BOAT_BYTES);
    return parse(json, file.toString());
  }

  private static Checklist bundled(String name) {
    String resource = "/thwartwise/checklists/" + name + ".json";
    return parse(BundledFile.text(resource, "checklist"), resource);
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
            "use",
            "basis",
            "source",
            "points");
    List<Integer> lines = JsonText.linesOfItems(json, "points");
    List<ChecklistPoint> points =
        fields.items("points", "point", POINTS, lines, POINT_KEYS).stream()
            .map(ChecklistFile::point)
            .toList();
    if (points.isEmpty()) {
      throw spot.fault("\"points\" is an empty list. " + POINTS);
    }
    return new Checklist(
        fields.text("name", NAME),
        fields.text("when", WHEN),
        source(fields),
        fields.optional("use").map(u -> u.oneOf(USES, USE)).orElse(ChecklistUse.BOTH),
        unlike(points, lines, spot));
  }

  private static String source(ObjectReader list) {
    String basis = list.oneOf("basis", RuleSetFile.BASES, RuleSetFile.BASIS).word();
    return list.text("source", SOURCE) + " (" + basis + ")";
  }

  private static List<ChecklistPoint> unlike(
      List<ChecklistPoint> points, List<Integer> lines, Location spot) {
    Map<String, Integer> seen = new HashMap<>();
    for (int i = 0; i < points.size(); i++) {
      String id = points.get(i).id();
      Integer first = seen.putIfAbsent(id, lines.get(i));
      if (first != null) {
        throw spot.in("line " + lines.get(i))
            .item("point", i + 1, "")
            .fault(
                "the point on line %d has the id %s, too. Give each its own.",
                first, PrintableText.quoted(id));
      }
    }
    return points;
  }

  private static ChecklistPoint point(ObjectReader point) {
    String look = point.text("look", LOOK);
    Concern concerns = point.oneOf("concerns", CONCERNS, CONCERN);
    return new ChecklistPoint(
        point.has("id") ? point.text("id", ID) : look,
        look,
        point.has("how") ? point.text("how", HOW) : "",
        point.text("why", WHY),
        concerns,
        point.optional("grave").map(g -> g.oneOf(GRAVITIES, GRAVE)).orElse(PointGravity.ADVICE),
        point.optional("sets").map(f -> suiting(f.oneOf(FACTS, SETS), concerns, point.spot())),
        point.has("againAfterDays")
            ? point.whole("againAfterDays", BoatQuantity.AGAIN_AFTER_DAYS, AGAIN)
            : 0);
  }

  /** Refuses a fact about a thing that the point does not name; it would be lost without a word. */
  private static BoatFact suiting(BoatFact fact, Concern concerns, Location spot) {
    if (!concerns.names(fact.about())) {
      throw spot.fault(
          "\"sets\" is \"%s\", which cannot be said of %s. Let the point concern %s.",
          fact.word(), concerns.word(), Concern.naming(fact.about()));
    }
    return fact;
  }
}
