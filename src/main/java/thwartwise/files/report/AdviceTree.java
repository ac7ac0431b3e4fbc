package thwartwise.files.report;

import thwartwise.advice.Advice;
import thwartwise.advice.AdvicePiece;
import thwartwise.advice.AdvicePiece.AdviceReading;
import thwartwise.advice.AdvicePiece.AdviceWorse;
import thwartwise.checks.Margin;
import thwartwise.checks.Outcome;
import thwartwise.checks.Unit;
import thwartwise.json.Figures;
import thwartwise.json.JsonText;
import thwartwise.measure.UnitFormat;
import thwartwise.report.DeedWords;
import thwartwise.report.EffortWords;
import thwartwise.report.LoadCaseWords;
import thwartwise.report.ProhibitionWords;
import tools.jackson.databind.node.ObjectNode;

/** The advice as a tree. */
final class AdviceTree {
  private AdviceTree() {}

  static ObjectNode of(Advice advice, UnitFormat units) {
    ObjectNode node = JsonText.object();
    node.set("pieces", ReportTree.list(advice.pieces(), piece -> piece(piece, units)));
    node.set("never", JsonText.texts(advice.never().stream().map(ProhibitionWords::of).toList()));
    return node;
  }

  private static ObjectNode piece(AdvicePiece piece, UnitFormat units) {
    DeedWords words = DeedWords.of(piece.deed(), units);
    ObjectNode node =
        JsonText.object()
            .put("deed", words.deed())
            .put("how", words.how())
            .put("effort", EffortWords.of(piece.effort()));
    node.set("cautions", JsonText.texts(words.cautions()));
    node.put("people", piece.people());
    Figures.put(node, "crewKg", piece.crew());
    Figures.put(node, "loadKg", piece.load());
    piece.moved().ifPresent(reading -> node.set("moves", reading(reading)));
    node.set("putsRight", ReportTree.list(piece.putsRight(), QuestionCodec::write));
    node.set("worsens", ReportTree.list(piece.worse(), AdviceTree::worse));
    node.set("thenNobody", ReportTree.list(piece.thenNobody(), QuestionCodec::write));
    return node;
  }

  private static ObjectNode reading(AdviceReading reading) {
    Margin before = reading.before();
    Unit unit = before.unit();
    ObjectNode node =
        QuestionCodec.write(reading.question()).put("crew", LoadCaseWords.crew(reading.crew()));
    node.set("crewAboard", LoadCaseCodec.write(reading.crew()));
    Figures.put(node, "before", unit.shown(before.value().orElse(Double.NaN)));
    Figures.put(node, "after", unit.shown(reading.changed().orElse(Double.NaN)));
    Figures.put(node, "limit", unit.shown(before.limit()));
    return node.put("atLeast", before.atLeast()).put("unit", unit.symbol());
  }

  private static ObjectNode worse(AdviceWorse worse) {
    ObjectNode node =
        QuestionCodec.write(worse.question())
            .put("role", worse.role().word())
            .put("loading", LoadCaseWords.kind(worse.loading()))
            .put("loadCaseKind", worse.loading().name());
    worse.before().map(Outcome::word).ifPresent(word -> node.put("before", word));
    return node.put("after", worse.after().word());
  }
}
