package thwartwise.files.report;

import thwartwise.checks.Finding;
import thwartwise.inspection.Report;
import thwartwise.inspection.Report.ChamberFigures;
import thwartwise.json.Figures;
import thwartwise.json.Format;
import thwartwise.json.Location;
import thwartwise.json.ObjectReader;
import thwartwise.loadcase.LoadCase;
import thwartwise.loadcase.LoadCase.Kind;
import tools.jackson.databind.JsonNode;

/**
 * The report, read back key by key as the program wrote it. Keys it does not know are passed over:
 * records are kept for good, and a later program may have had more to say.
 */
public final class ReportFields {
  private ReportFields() {}

  public static Report read(JsonNode tree, Location spot) {
    ObjectReader fields = ObjectReader.free(Format.REPORT.checked(tree, spot), spot);
    OldLoadCases loadCases =
        new OldLoadCases(loading(fields, "asLoaded"), loading(fields, "atLimit"));
    return new Report(
        ReportValues.text(fields, "boat"),
        StateFields.read(fields, "asLoaded"),
        StateFields.read(fields, "atLimit"),
        ReportValues.list(fields, "chambers", "chamber").stream()
            .map(ReportFields::chamber)
            .toList(),
        ReportValues.list(fields, "findings", "finding").stream()
            .map(f -> finding(f, loadCases))
            .toList(),
        RecommendationFields.read(fields),
        ReportValues.list(fields, "capacityFigures", "capacity figure").stream()
            .map(CapacityFields::read)
            .toList(),
        WordedListCodec.readAssumptions(fields, "assumptions"),
        ReportValues.text(fields, "ruleSet"),
        OldWaters.read(fields),
        AdviceFields.read(fields));
  }

  private static ChamberFigures chamber(ObjectReader chamber) {
    return new ChamberFigures(
        ReportValues.text(chamber, "name"),
        Figures.read(chamber, "litres") / 1000,
        ReportValues.point(chamber, "centre"),
        Figures.read(chamber, "countedLitres") / 1000,
        ReportValues.flag(chamber, "counted"),
        ReportValues.text(chamber, "why"));
  }

  private static String loading(ObjectReader report, String state) {
    return ReportValues.text(report.freeObject(state, ReportValues.REMEDY), "loading");
  }

  private static Finding finding(ObjectReader finding, OldLoadCases loadCases) {
    LoadCase loadCase =
        finding.has("loadCase")
            ? LoadCaseCodec.read(finding.freeObject("loadCase", ReportValues.REMEDY))
            : loadCases.read(ReportValues.text(finding, "condition"));
    return new Finding(
        QuestionCodec.read(finding, loadCase.kind() == Kind.AS_MEASURED),
        finding.oneOf("role", ReportValues.ROLES, ReportValues.REMEDY),
        finding.oneOf("outcome", ReportValues.OUTCOMES, ReportValues.REMEDY),
        ReportValues.margin(finding, "value"),
        ReportValues.text(finding, "source"),
        loadCase,
        NoteCodec.read(finding));
  }
}
