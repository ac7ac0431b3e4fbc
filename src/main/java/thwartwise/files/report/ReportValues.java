package thwartwise.files.report;

import java.util.List;
import java.util.OptionalDouble;
import thwartwise.checks.Margin;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.checks.Unit;
import thwartwise.geometry.Vector3;
import thwartwise.json.Choice;
import thwartwise.json.Fields;

/** Kinds of values that stand in many parts of a report, read back. */
final class ReportValues {
  static final String REMEDY = "Take the file as it was written.";
  static final Choice<Role> ROLES = Choice.of(Role::word, Role.values());
  static final Choice<Outcome> OUTCOMES = Choice.of(Outcome::word, Outcome.values());
  static final Choice<Unit> UNITS = Choice.of(Unit::symbol, Unit.values());

  private ReportValues() {}

  /** With the value that stands under a key. */
  static Margin margin(Fields fields, String value) {
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

  static String text(Fields fields, String key) {
    return fields.value(key, REMEDY).anyText();
  }

  static boolean flag(Fields fields, String key) {
    return fields.value(key, REMEDY).truth();
  }

  static List<Fields> list(Fields fields, String key, String noun) {
    return fields.freeItems(key, noun, REMEDY);
  }

  static Vector3 point(Fields parent, String key) {
    Fields point = parent.freeObject(key, REMEDY);
    return Vector3.of(Figures.read(point, "x"), Figures.read(point, "y"), Figures.read(point, "z"));
  }
}
