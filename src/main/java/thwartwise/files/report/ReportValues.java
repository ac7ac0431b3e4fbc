package thwartwise.files.report;

import java.util.List;
import java.util.OptionalDouble;
import thwartwise.checks.Margin;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.checks.Unit;
import thwartwise.geometry.Vector3;
import thwartwise.json.Figures;
import thwartwise.json.JsonText;
import thwartwise.json.ObjectReader;
import thwartwise.json.WordChoice;
import tools.jackson.databind.node.ObjectNode;

/** Values that occur in many parts of a report, read back. */
final class ReportValues {
  static final String REMEDY = "Take the file as it was written.";
  static final WordChoice<Role> ROLES = WordChoice.of(Role::word, Role.values());
  static final WordChoice<Outcome> OUTCOMES = WordChoice.of(Outcome::word, Outcome.values());
  static final WordChoice<Unit> UNITS = WordChoice.of(Unit::symbol, Unit.values());

  private ReportValues() {}

  /** The value in a key, with its margin. */
  static Margin margin(ObjectReader fields, String value) {
    Unit unit = fields.oneOf("unit", UNITS, REMEDY);
    OptionalDouble shown = Figures.optional(fields, value);
    return new Margin(
        shown.isPresent()
            ? OptionalDouble.of(unit.si(shown.getAsDouble()))
            : OptionalDouble.empty(),
        unit.si(Figures.read(fields, "limit")),
        flag(fields, "atLeast"),
        unit);
  }

  static String text(ObjectReader fields, String key) {
    return fields.value(key, REMEDY).anyText();
  }

  static boolean flag(ObjectReader fields, String key) {
    return fields.value(key, REMEDY).bool();
  }

  static List<ObjectReader> list(ObjectReader fields, String key, String noun) {
    return fields.freeItems(key, noun, REMEDY);
  }

  static Vector3 point(ObjectReader parent, String key) {
    ObjectReader point = parent.freeObject(key, REMEDY);
    return Vector3.of(Figures.read(point, "x"), Figures.read(point, "y"), Figures.read(point, "z"));
  }

  static ObjectNode point(Vector3 point) {
    ObjectNode node = JsonText.object();
    Figures.put(node, "x", point.x());
    Figures.put(node, "y", point.y());
    Figures.put(node, "z", point.z());
    return node;
  }
}
