package thwartwise.files.report;

import java.util.List;
import java.util.OptionalDouble;
import thwartwise.checks.Finding;
import thwartwise.checks.Margin;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.checks.Unit;
import thwartwise.geometry.Vector3;
import thwartwise.inspection.ChamberFigures;
import thwartwise.inspection.Report;
import thwartwise.json.Choice;
import thwartwise.json.Fields;
import thwartwise.json.Format;
import thwartwise.json.Spot;
import thwartwise.json.Value;
import thwartwise.loadcase.LoadCase;
import thwartwise.loadcase.LoadCase.Kind;
import tools.jackson.databind.JsonNode;

/**
 * The report, read back key by key as the program wrote it. Keys it does not know are passed over:
 * records are kept for good, and a later program may have had more to say.
 */
public final class ReportFields {
  static final String REMEDY = "Take the file as it was written.";
  static final Choice<Role> ROLES = Choice.of(Role::word, Role.values());
  static final Choice<Outcome> OUTCOMES = Choice.of(Outcome::word, Outcome.values());
  static final Choice<Unit> UNITS = Choice.of(Unit::symbol, Unit.values());

  private ReportFields() {}

  public static Report read(JsonNode tree, Spot spot) {
    Fields fields = Fields.free(Format.REPORT.checked(tree, spot), spot);
    OldLoadCases loadCases =
        new OldLoadCases(loading(fields, "asLoaded"), loading(fields, "atLimit"));
    return new Report(
        text(fields, "boat"),
        StateFields.read(fields, "asLoaded"),
        StateFields.read(fields, "atLimit"),
        list(fields, "chambers", "chamber").stream().map(ReportFields::chamber).toList(),
        list(fields, "findings", "finding").stream().map(f -> finding(f, loadCases)).toList(),
        RecommendationFields.read(fields),
        list(fields, "capacityFigures", "capacity figure").stream()
            .map(CapacityFields::read)
            .toList(),
        fields.value("assumptions", REMEDY).texts(),
        text(fields, "ruleSet"),
        fields.optional("waters").map(Value::texts).orElse(List.of()),
        AdviceFields.read(fields));
  }

  private static ChamberFigures chamber(Fields chamber) {
    return new ChamberFigures(
        text(chamber, "name"),
        Figures.read(chamber, "litres") / 1000,
        point(chamber, "centre"),
        Figures.read(chamber, "countedLitres") / 1000,
        flag(chamber, "counted"),
        text(chamber, "why"));
  }

  private static String loading(Fields report, String state) {
    return text(report.freeObject(state, REMEDY), "loading");
  }

  private static Finding finding(Fields finding, OldLoadCases loadCases) {
    LoadCase loadCase = loadCases.read(text(finding, "condition"));
    return new Finding(
        OldQuestions.of(text(finding, "check"), loadCase.kind() == Kind.AS_MEASURED),
        finding.oneOf("role", ROLES, REMEDY),
        finding.oneOf("outcome", OUTCOMES, REMEDY),
        margin(finding, "value"),
        text(finding, "source"),
        loadCase,
        text(finding, "note"));
  }

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
