package thwartwise.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import thwartwise.rules.Basis;
import thwartwise.rules.Limit;
import thwartwise.rules.RuleSet;
import thwartwise.rules.Stricter;

/**
 * A rule set as a file, {@code thwartwise/rules/1}: limits as data, each with its unit, where it
 * comes from and how well it is founded.
 */
public final class RuleSetFile {
  private static final String CAUTIOUS_DEFAULT = "/thwartwise/rules/cautious-default.json";
  private static final Choice<Basis> BASES = Choice.of(Basis::word, Basis.values());
  private static final Choice<Stricter> STRICTER = Choice.of(Stricter::word, Stricter.values());
  private static final String WAY =
      "Write which way the limit gets stricter, or leave the key out.";
  private static final String NAME = "Write what the set is called.";
  private static final String EDITION = "Write its edition or date.";
  private static final String APPLIES = "Write for which boats and waters it is meant.";
  private static final String LIMITS =
      "Write at least one, as in \"freeboard-at-rest\": { \"value\": 0.20, \"unit\": \"m\", ... }.";
  private static final String VALUE = "Write the number as the source has it.";
  private static final String UNIT = "Write the unit of the number.";
  private static final String BASIS = "Write how well the number is founded.";
  private static final String SOURCE = "Write title and section, or what the judgement leans on.";

  private RuleSetFile() {}

  /** Our own set for sheltered water. */
  public static RuleSet cautiousDefault() {
    return shipped(CAUTIOUS_DEFAULT);
  }

  static RuleSet shipped(String resource) {
    try (InputStream in = RuleSetFile.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException("The program came without its rule set " + resource);
      }
      return parse(new String(in.readAllBytes(), StandardCharsets.UTF_8), resource);
    } catch (IOException e) {
      throw new IllegalStateException("The program's rule set cannot be read: " + resource, e);
    }
  }

  public static RuleSet read(Path file) {
    String json = InputFile.text(file, Format.RULES.noun(), InputFile.BOAT_BYTES);
    return parse(json, file.toString());
  }

  /**
   * Reads a rule set from text.
   *
   * @param where what messages call the text
   */
  public static RuleSet parse(String json, String where) {
    Spot spot = Spot.whole(where);
    Fields fields =
        Fields.of(
            Format.RULES.checked(JsonText.parse(json, spot), spot),
            spot,
            "format",
            "name",
            "edition",
            "appliesTo",
            "limits");
    return new RuleSet(
        fields.text("name", NAME),
        fields.text("edition", EDITION),
        fields.text("appliesTo", APPLIES),
        limits(fields.freeObject("limits", LIMITS)));
  }

  private static Map<String, Limit> limits(Fields limits) {
    if (limits.keys().isEmpty()) {
      throw limits.spot().fault("a rule set without limits limits nothing. " + LIMITS);
    }
    Map<String, Limit> byName = new LinkedHashMap<>();
    for (String name : limits.keys()) {
      byName.put(
          name, limit(limits.object(name, LIMITS, "value", "unit", "basis", "source", "stricter")));
    }
    return byName;
  }

  private static Limit limit(Fields limit) {
    return new Limit(
        limit.number("value", Quantity.ANY, VALUE),
        limit.text("unit", UNIT),
        limit.oneOf("basis", BASES, BASIS),
        limit.text("source", SOURCE),
        limit.says("stricter") ? limit.oneOf("stricter", STRICTER, WAY) : Stricter.NEITHER);
  }
}
