package thwartwise.files.report;

import java.util.Collection;
import java.util.function.Function;
import thwartwise.checks.Finding;
import thwartwise.checks.Margin;
import thwartwise.inspection.Report;
import thwartwise.inspection.Report.ChamberFigures;
import thwartwise.json.Figures;
import thwartwise.json.Format;
import thwartwise.json.JsonText;
import thwartwise.json.RecordCodec;
import thwartwise.measure.UnitFormat;
import thwartwise.report.LoadCaseWords;
import thwartwise.rules.WaterStatement;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The report as a tree. */
public final class ReportTree {
  private ReportTree() {}

  /** In metric words. */
  public static ObjectNode of(Report report) {
    return of(report, UnitFormat.METRIC);
  }

  /**
   * @param words in which advice is kept, of which a record has nothing but words; figures are SI
   */
  public static ObjectNode of(Report report, UnitFormat words) {
    ObjectNode node =
        JsonText.object()
            .put("format", Format.REPORT.text())
            .put("boat", report.boat())
            .put("ruleSet", report.ruleSet());
    node.set("asLoaded", StateTree.of(report.asLoaded(), words));
    node.set("atLimit", StateTree.of(report.atLimit(), words));
    node.set("chambers", list(report.chambers(), ReportTree::chamber));
    node.set("findings", list(report.findings(), f -> finding(f, words)));
    node.set("recommendation", RecommendationTree.of(report.recommendation(), words));
    node.set("capacityFigures", list(report.capacityFigures(), CapacityTree::of));
    node.set(
        "waters", JsonText.texts(report.waters().stream().map(WaterStatement::sentence).toList()));
    if (!report.waters().isEmpty()) {
      node.set("watersAre", list(report.waters(), RecordCodec::write));
    }
    node.set("advice", AdviceTree.of(report.advice(), words));
    WordedListCodec.putAssumptions(node, "assumptions", report.assumptions(), words);
    return node;
  }

  private static ObjectNode chamber(ChamberFigures chamber) {
    ObjectNode node = JsonText.object().put("name", chamber.name());
    Figures.put(node, "litres", chamber.volume() * 1000);
    node.set("centre", ReportValues.point(chamber.centre()));
    node.put("counted", chamber.counted());
    Figures.put(node, "countedLitres", chamber.countedVolume() * 1000);
    return node.put("why", chamber.why());
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
}
