package thwartwise.files.rules;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import thwartwise.json.Format;
import thwartwise.json.InputFile;
import thwartwise.json.JsonText;
import thwartwise.json.Location;
import thwartwise.json.ObjectReader;
import thwartwise.json.WordChoice;
import thwartwise.measured.BoatQuantity;
import thwartwise.rules.Basis;
import thwartwise.rules.Limit;
import thwartwise.rules.RuleBook;
import thwartwise.rules.RuleSet;
import thwartwise.rules.StrictDirection;

/**
 * A rule set as a file, {@code thwartwise/rules/1}: to which boats it applies, limits as data and
 * formulas by name, each with where it comes from and how well it is founded.
 */
public final class RuleSetFile {
  private static final String CAUTIOUS_DEFAULT = "/thwartwise/rules/cautious-default.json";
  private static final List<String> BESIDE =
      List.of(
          "us-33-cfr-183",
          "iso-12217-3-style",
          "uk-inland-small-passenger",
          "persons-by-length",
          "a-person-elsewhere");
  private static final String[] KEYS = {
    "format",
    "name",
    "edition",
    "source",
    "basis",
    "appliesTo",
    "applies",
    "takesPart",
    "limits",
    "formulas"
  };
  static final WordChoice<Basis> BASES = WordChoice.of(Basis::word, Basis.values());
  private static final WordChoice<StrictDirection> STRICTER =
      WordChoice.of(StrictDirection::word, StrictDirection.values());
  private static final String WAY =
      "Write which way the limit gets stricter, or leave the key out.";
  private static final String NAME = "Write what the set is called.";
  private static final String EDITION = "Write its edition or date.";
  private static final String APPLIES = "Write for which boats and waters it is meant.";
  private static final String SET_SOURCE = "Write title, section and edition of the rule.";
  private static final String LIMITS =
      "Write at least one, as in \"freeboard-at-rest\": { \"value\": 0.20, \"unit\": \"m\", ... }.";
  private static final String VALUE = "Write the number as the source has it.";
  private static final String UNIT = "Write the unit of the number.";
  static final String BASIS = "Write how well the number is founded.";
  static final String SOURCE = "Write title and section, or what the judgement leans on.";

  private RuleSetFile() {}

  /** Our own set for sheltered water. */
  public static RuleSet cautiousDefault() {
    return shipped(CAUTIOUS_DEFAULT);
  }

  static RuleSet shipped(String resource) {
    return parse(ShippedFile.text(resource, "rule set"), resource);
  }

  /** Sets that come with the program and stand beside our own. */
  public static List<RuleSet> shippedBeside() {
    RuleSet own = cautiousDefault();
    return BESIDE.stream()
        .map(name -> "/thwartwise/rules/" + name + ".json")
        .map(resource -> LimitRules.checked(shipped(resource), own, Location.whole(resource)))
        .toList();
  }

  /** Our own set and all that come with the program. */
  public static RuleBook shippedBook() {
    return new RuleBook(cautiousDefault(), shippedBeside());
  }

  /**
   * A set somebody wrote to stand beside our own.
   *
   * @throws UnusableInput one line: file, where in it, what is wrong, what to do
   */
  public static RuleSet read(Path file, RuleSet own) {
    String json = InputFile.text(file, Format.RULES.noun(), InputFile.BOAT_BYTES);
    return beside(json, file.toString(), own);
  }

  /** The same from text. */
  public static RuleSet beside(String json, String where, RuleSet own) {
    return LimitRules.checked(parse(json, where), own, Location.whole(where));
  }

  /**
   * Reads a rule set from text, without asking whether its limits are ours.
   *
   * @param where what messages call the text
   */
  public static RuleSet parse(String json, String where) {
    Location spot = Location.whole(where);
    ObjectReader fields =
        ObjectReader.of(Format.RULES.checked(JsonText.parse(json, spot), spot), spot, KEYS);
    boolean takesPart = fields.flag("takesPart", true);
    RuleSet set =
        new RuleSet(
            fields.text("name", NAME),
            fields.text("edition", EDITION),
            source(fields),
            fields.text("appliesTo", APPLIES),
            AppliesFields.read(fields),
            takesPart,
            fields.has("limits") ? limits(fields.freeObject("limits", LIMITS)) : Map.of(),
            FormulaFields.read(fields, takesPart));
    if (set.limits().isEmpty() && set.formulas().isEmpty()) {
      throw spot.fault("a rule set without limits and formulas says nothing. " + LIMITS);
    }
    return set;
  }

  private static String source(ObjectReader set) {
    String source = set.has("source") ? set.text("source", SET_SOURCE) : "";
    String basis = set.has("basis") ? " (" + set.oneOf("basis", BASES, BASIS).word() + ")" : "";
    return source.isEmpty() ? "" : source + basis;
  }

  private static Map<String, Limit> limits(ObjectReader limits) {
    Map<String, Limit> byName = new LinkedHashMap<>();
    for (String name : limits.keys()) {
      byName.put(
          name, limit(limits.object(name, LIMITS, "value", "unit", "basis", "source", "stricter")));
    }
    return byName;
  }

  private static Limit limit(ObjectReader limit) {
    return new Limit(
        limit.number("value", BoatQuantity.ANY, VALUE),
        limit.text("unit", UNIT),
        limit.oneOf("basis", BASES, BASIS),
        limit.text("source", SOURCE),
        limit.says("stricter") ? limit.oneOf("stricter", STRICTER, WAY) : StrictDirection.NEITHER);
  }
}
