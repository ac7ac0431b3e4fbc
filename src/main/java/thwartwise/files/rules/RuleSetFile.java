package thwartwise.files.rules;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import thwartwise.geometry.Span;
import thwartwise.json.Format;
import thwartwise.json.InputFile;
import thwartwise.json.JsonText;
import thwartwise.json.Location;
import thwartwise.json.ObjectReader;
import thwartwise.json.ValueReader;
import thwartwise.json.WordChoice;
import thwartwise.measure.NearestWord;
import thwartwise.measure.PrintableText;
import thwartwise.measured.BoatQuantity;
import thwartwise.rules.Applicability;
import thwartwise.rules.DriveKind;
import thwartwise.rules.Limit;
import thwartwise.rules.Limit.Basis;
import thwartwise.rules.Limit.StrictDirection;
import thwartwise.rules.RatedBoat.HullKind;
import thwartwise.rules.RuleBook;
import thwartwise.rules.RuleSet;

/**
 * A rule set as a file, {@code thwartwise/rules/1}: the boats to which it applies, limits as data
 * and formulas by name, each with its source and how well it is founded.
 */
public final class RuleSetFile {
  private static final String CAUTIOUS_DEFAULT = "/thwartwise/rules/cautious-default.json";
  private static final String MEASURING_SPREADS = "/thwartwise/rules/measuring-spreads.json";
  private static final List<String> ALTERNATIVES =
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
    return bundled(CAUTIOUS_DEFAULT);
  }

  /** The spreads of measurements, by method. */
  public static RuleSet measuringSpreads() {
    return bundled(MEASURING_SPREADS);
  }

  static RuleSet bundled(String resource) {
    return parse(BundledFile.text(resource, "rule set"), resource);
  }

  /** Bundled sets next to our own. */
  public static List<RuleSet> bundledAlternatives() {
    RuleSet own = cautiousDefault();
    return ALTERNATIVES.stream()
        .map(name -> "/thwartwise/rules/" + name + ".json")
        .map(resource -> LimitRules.checked(bundled(resource), own, Location.whole(resource)))
        .toList();
  }

  /** Our own set and all bundled sets. */
  public static RuleBook bundledRuleBook() {
    return new RuleBook(cautiousDefault(), bundledAlternatives());
  }

  /**
   * A set written by a user, to stand next to our own.
   *
   * @throws UnusableInput one line: file, where in it, what is wrong, what to do
   */
  public static RuleSet read(Path file, RuleSet own) {
    String json = InputFile.text(file, Format.RULES.noun(), InputFile.BOAT_BYTES);
    return alternative(json, file.toString(), own);
  }

  /** The same from text. */
  public static RuleSet alternative(String json, String where, RuleSet own) {
    return LimitRules.checked(parse(json, where), own, Location.whole(where));
  }

  /**
   * Reads a rule set from text, without comparing its limits with ours.
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
            FormulaReader.read(fields, takesPart));
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
        limit.hasValue("stricter")
            ? limit.oneOf("stricter", STRICTER, WAY)
            : StrictDirection.NEITHER);
  }

  /**
   * The rules for limits of another set: only those limits of ours that have a stricter side, in
   * our own unit. So a file can tighten an answer and never loosen one.
   */
  private static final class LimitRules {
    private LimitRules() {}

    static RuleSet checked(RuleSet set, RuleSet own, Location spot) {
      set.limits().keySet().stream().sorted().forEach(name -> check(name, set, own, spot));
      return set;
    }

    private static void check(String name, RuleSet set, RuleSet own, Location whole) {
      Location spot = whole.in("limits");
      if (!own.limits().containsKey(name)) {
        throw spot.fault(
            "there is no limit %s; the nearest is \"%s\". Correct the name or take the limit out.",
            PrintableText.quoted(name), NearestWord.to(name, own.limits().keySet()).orElseThrow());
      }
      check(set.limit(name), own.limit(name), spot.in(name));
    }

    private static void check(Limit limit, Limit ours, Location spot) {
      if (ours.stricter() == StrictDirection.NEITHER) {
        throw spot.fault(
            "this figure has no stricter side, so no other set may state it. Take it out.");
      }
      if (!limit.unit().equals(ours.unit())) {
        throw spot.fault(
            "\"unit\" is %s, wanted \"%s\". Turn the value into that unit.",
            PrintableText.quoted(limit.unit()), ours.unit());
      }
      if (limit.stricter() != StrictDirection.NEITHER && limit.stricter() != ours.stricter()) {
        throw spot.fault(
            "\"stricter\" is \"%s\", but this limit gets stricter the other way: \"%s\"."
                + " Correct it or leave the key out.",
            limit.stricter().word(), ours.stricter().word());
      }
    }
  }

  /**
   * The boats to which a rule set applies, as far as the program can tell; every key is optional.
   */
  private static final class AppliesFields {
    private static final WordChoice<HullKind> HULLS =
        WordChoice.of(HullKind::word, HullKind.values());
    private static final WordChoice<DriveKind> DRIVES =
        WordChoice.of(DriveKind::word, DriveKind.values());
    private static final String LENGTH = "Write two lengths in metres, as in [0, 6.096].";
    private static final String BEAM = "Write two breadths in metres, as in [1.1, 3].";
    private static final String POWER = "Write two powers in watts, as in [0, 3000].";
    private static final String KIND = "Write the kinds of hull, or leave the key out.";
    private static final String DRIVE = "Write how such boats are driven, or leave the key out.";

    private AppliesFields() {}

    static Applicability read(ObjectReader set) {
      return set.optionalObject("applies", "length", "beam", "hull", "propulsion", "power")
          .map(AppliesFields::conditions)
          .orElse(Applicability.TO_ALL);
    }

    private static Applicability conditions(ObjectReader applies) {
      return new Applicability(
          span(applies, "length", BoatQuantity.RULE_METRES, LENGTH),
          span(applies, "beam", BoatQuantity.RULE_METRES, BEAM),
          kinds(applies.optional("hull"), HULLS, KIND),
          kinds(applies.optional("propulsion"), DRIVES, DRIVE),
          span(applies, "power", BoatQuantity.RULE_WATTS, POWER));
    }

    private static Span span(
        ObjectReader applies, String key, BoatQuantity quantity, String remedy) {
      return applies
          .optional(key)
          .map(value -> value.ends(quantity, remedy))
          .map(ends -> new Span(ends[0], ends[1]))
          .orElse(Span.ALL);
    }

    private static <T> Set<T> kinds(
        Optional<ValueReader> value, WordChoice<T> choice, String remedy) {
      return value
          .map(v -> v.list().stream().map(k -> k.oneOf(choice, remedy)).collect(Collectors.toSet()))
          .orElse(Set.of());
    }
  }
}
