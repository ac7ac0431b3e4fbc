package thwartwise.files.report;

import java.util.Optional;
import thwartwise.advice.Advice;
import thwartwise.advice.AdvicePiece;
import thwartwise.advice.AdvicePiece.AdviceReading;
import thwartwise.advice.AdvicePiece.AdviceWorse;
import thwartwise.checks.Margin;
import thwartwise.checks.Outcome;
import thwartwise.checks.Unit;
import thwartwise.json.Figures;
import thwartwise.json.JsonText;
import thwartwise.json.ObjectReader;
import thwartwise.json.WordChoice;
import thwartwise.measure.UnitFormat;
import thwartwise.measured.BoatQuantity;
import thwartwise.remedy.Change.Effort;
import thwartwise.remedy.Changes.Prohibition;
import thwartwise.remedy.Deed;
import thwartwise.report.DeedWords;
import thwartwise.report.EffortWords;
import thwartwise.report.LoadCaseWords;
import thwartwise.report.ProhibitionWords;
import tools.jackson.databind.node.ObjectNode;

/** The advice as a tree, and read back. A report older than advice has none. */
final class AdviceCodec {
  private static final WordChoice<Effort> EFFORTS = WordChoice.of(EffortWords::of, Effort.values());

  private AdviceCodec() {}

  static ObjectNode write(Advice advice, UnitFormat units) {
    ObjectNode node = JsonText.object();
    node.set("pieces", ReportCodec.list(advice.pieces(), piece -> piece(piece, units)));
    node.set(
        "never", JsonText.texts(advice.prohibitions().stream().map(ProhibitionWords::of).toList()));
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
    node.set("putsRight", ReportCodec.list(piece.corrects(), QuestionCodec::write));
    node.set("worsens", ReportCodec.list(piece.worse(), AdviceCodec::worse));
    node.set("thenNobody", ReportCodec.list(piece.forbiddenAfterwards(), QuestionCodec::write));
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

  static Advice read(ObjectReader report) {
    if (!report.hasValue("advice")) {
      return Advice.NONE;
    }
    ObjectReader advice = report.freeObject("advice", ReportValues.REMEDY);
    return new Advice(
        ReportValues.list(advice, "pieces", "piece of advice").stream()
            .map(AdviceCodec::piece)
            .toList(),
        advice.value("never", ReportValues.REMEDY).texts().stream()
            .<Prohibition>map(Prohibition.AsRecorded::new)
            .toList());
  }

  private static AdvicePiece piece(ObjectReader piece) {
    return new AdvicePiece(
        new Deed.AsRecorded(
            ReportValues.text(piece, "deed"),
            ReportValues.text(piece, "how"),
            piece.value("cautions", ReportValues.REMEDY).texts()),
        piece.oneOf("effort", EFFORTS, ReportValues.REMEDY),
        piece.whole("people", BoatQuantity.COUNT, ReportValues.REMEDY),
        Figures.read(piece, "crewKg"),
        Figures.read(piece, "loadKg"),
        piece.hasValue("moves")
            ? Optional.of(reading(piece.freeObject("moves", ReportValues.REMEDY)))
            : Optional.empty(),
        QuestionCodec.readAll(piece, "putsRight"),
        ReportValues.list(piece, "worsens", "worsened check").stream()
            .map(AdviceCodec::worse)
            .toList(),
        QuestionCodec.readSubjects(piece, "thenNobody"));
  }

  private static AdviceReading reading(ObjectReader reading) {
    return new AdviceReading(
        QuestionCodec.read(reading),
        reading.has("crewAboard")
            ? LoadCaseCodec.readCrew(reading.freeObject("crewAboard", ReportValues.REMEDY))
            : OldLoadCases.crew(ReportValues.text(reading, "crew")),
        ReportValues.margin(reading, "before"),
        ReportValues.margin(reading, "after").value());
  }

  private static AdviceWorse worse(ObjectReader worse) {
    return new AdviceWorse(
        QuestionCodec.read(worse),
        worse.oneOf("role", ReportValues.ROLES, ReportValues.REMEDY),
        worse.has("loadCaseKind")
            ? LoadCaseCodec.readKind(worse, "loadCaseKind")
            : OldLoadCases.of(ReportValues.text(worse, "loading")).kind(),
        worse.hasValue("before")
            ? Optional.of(worse.oneOf("before", ReportValues.OUTCOMES, ReportValues.REMEDY))
            : Optional.empty(),
        worse.oneOf("after", ReportValues.OUTCOMES, ReportValues.REMEDY));
  }
}
