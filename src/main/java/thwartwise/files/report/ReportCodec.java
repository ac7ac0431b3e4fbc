package thwartwise.files.report;

import java.util.Collection;
import java.util.Optional;
import java.util.function.Function;
import thwartwise.boat.BuoyancyReason;
import thwartwise.checks.Finding;
import thwartwise.checks.Margin;
import thwartwise.inspection.Report;
import thwartwise.inspection.Report.ChamberFigures;
import thwartwise.json.Figures;
import thwartwise.json.Format;
import thwartwise.json.JsonText;
import thwartwise.json.Location;
import thwartwise.json.ObjectReader;
import thwartwise.json.RecordCodec;
import thwartwise.loadcase.LoadCase;
import thwartwise.loadcase.LoadCase.Kind;
import thwartwise.measure.UnitFormat;
import thwartwise.report.BuoyancyReasonWords;
import thwartwise.report.LoadCaseWords;
import thwartwise.report.WaterWords;
import thwartwise.spread.BoatSpread;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * The report as a tree, and read back key by key as the program wrote it. Unknown keys are ignored,
 * because records are kept for good and a later program may write more.
 */
public final class ReportCodec {
  private ReportCodec() {}

  /** Writes it with metric words. */
  public static ObjectNode write(Report report) {
    return write(report, UnitFormat.METRIC);
  }

  /**
   * Writes it.
   *
   * @param words units of the advice, of which a record has only words; figures are SI
   */
  public static ObjectNode write(Report report, UnitFormat words) {
    ObjectNode node =
        JsonText.object()
            .put("format", Format.REPORT.text())
            .put("boat", report.boat())
            .put("ruleSet", report.ruleSet());
    node.set("asLoaded", StateCodec.write(report.asLoaded(), words));
    node.set("atLimit", StateCodec.write(report.atLimit(), words));
    node.set("chambers", list(report.chambers(), c -> chamber(c, words)));
    node.set("findings", list(report.findings(), f -> finding(f, words)));
    node.set("recommendation", RecommendationCodec.write(report.recommendation(), words));
    node.set("capacityFigures", list(report.capacityFigures(), f -> CapacityCodec.write(f, words)));
    node.set(
        "waters",
        JsonText.texts(report.waters().stream().map(w -> WaterWords.sentence(w, words)).toList()));
    if (!report.waters().isEmpty()) {
      node.set("watersAre", list(report.waters(), OldWaters::write));
    }
    node.set("advice", AdviceCodec.write(report.advice(), words));
    report.spread().ifPresent(spread -> node.set("spread", RecordCodec.write(spread)));
    WordedListCodec.putAssumptions(node, "assumptions", report.assumptions(), words);
    return node;
  }

  private static ObjectNode chamber(ChamberFigures chamber, UnitFormat words) {
    ObjectNode node = JsonText.object().put("name", chamber.name());
    Figures.put(node, "litres", chamber.volume() * 1000);
    node.set("centre", ReportValues.point(chamber.centre()));
    node.put("counted", chamber.counted());
    Figures.put(node, "countedLitres", chamber.countedVolume() * 1000);
    node.put("why", BuoyancyReasonWords.of(chamber.why(), words));
    if (!(chamber.why() instanceof BuoyancyReason.Stated)) {
      node.set("whyIs", RecordCodec.write((Record) chamber.why()));
    }
    return node;
  }

  private static ObjectNode finding(Finding finding, UnitFormat words) {
    ObjectNode node =
        QuestionCodec.write(finding.question())
            .put("role", finding.role().word())
            .put("outcome", finding.outcome().word());
    Margin margin = finding.margin();
    Figures.put(node, "value", margin.unit().shown(margin.value().orElse(Double.NaN)));
    Figures.put(node, "limit", margin.unit().shown(margin.limit()));
    node.put("atLeast", margin.atLeast())
        .put("unit", margin.unit().symbol())
        .put("source", finding.source())
        .put("condition", LoadCaseWords.of(finding.loadCase()))
        .set("loadCase", LoadCaseCodec.write(finding.loadCase()));
    return NoteCodec.put(node, finding.note(), words);
  }

  static <T> ArrayNode list(Collection<T> items, Function<T, ? extends JsonNode> write) {
    ArrayNode list = JsonText.list();
    items.forEach(item -> list.add(write.apply(item)));
    return list;
  }

  public static Report read(JsonNode tree, Location spot) {
    ObjectReader fields = ObjectReader.free(Format.REPORT.checked(tree, spot), spot);
    OldLoadCases loadCases =
        new OldLoadCases(loading(fields, "asLoaded"), loading(fields, "atLimit"));
    return new Report(
        ReportValues.text(fields, "boat"),
        StateCodec.read(fields, "asLoaded"),
        StateCodec.read(fields, "atLimit"),
        ReportValues.list(fields, "chambers", "chamber").stream()
            .map(ReportCodec::chamber)
            .toList(),
        ReportValues.list(fields, "findings", "finding").stream()
            .map(f -> finding(f, loadCases))
            .toList(),
        RecommendationCodec.read(fields),
        ReportValues.list(fields, "capacityFigures", "capacity figure").stream()
            .map(CapacityCodec::read)
            .toList(),
        WordedListCodec.readAssumptions(fields, "assumptions"),
        ReportValues.text(fields, "ruleSet"),
        OldWaters.read(fields),
        AdviceCodec.read(fields),
        spread(fields));
  }

  /** The spread of the answer; records of older programs have none. */
  private static Optional<BoatSpread> spread(ObjectReader fields) {
    return fields.hasValue("spread")
        ? RecordCodec.read(fields.freeObject("spread", ReportValues.REMEDY), BoatSpread.class)
        : Optional.empty();
  }

  private static ChamberFigures chamber(ObjectReader chamber) {
    return new ChamberFigures(
        ReportValues.text(chamber, "name"),
        Figures.read(chamber, "litres") / 1000,
        ReportValues.point(chamber, "centre"),
        Figures.read(chamber, "countedLitres") / 1000,
        ReportValues.flag(chamber, "counted"),
        RecordCodec.read(
            chamber,
            "whyIs",
            BuoyancyReason.class,
            () -> new BuoyancyReason.Stated(ReportValues.text(chamber, "why"))));
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
