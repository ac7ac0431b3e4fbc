package thwartwise.files.report;

import java.util.Optional;
import thwartwise.advice.Advice;
import thwartwise.advice.AdvicePiece;
import thwartwise.advice.AdvicePiece.AdviceReading;
import thwartwise.advice.AdvicePiece.AdviceWorse;
import thwartwise.json.Figures;
import thwartwise.json.ObjectReader;
import thwartwise.json.WordChoice;
import thwartwise.measured.BoatQuantity;
import thwartwise.remedy.Deed;
import thwartwise.remedy.Effort;
import thwartwise.remedy.Prohibition;
import thwartwise.report.EffortWords;

/** The advice, read back; a report made before there was any has none. */
final class AdviceFields {
  private static final WordChoice<Effort> EFFORTS = WordChoice.of(EffortWords::of, Effort.values());

  private AdviceFields() {}

  static Advice read(ObjectReader report) {
    if (!report.says("advice")) {
      return Advice.NONE;
    }
    ObjectReader advice = report.freeObject("advice", ReportValues.REMEDY);
    return new Advice(
        ReportValues.list(advice, "pieces", "piece of advice").stream()
            .map(AdviceFields::piece)
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
        piece.says("moves")
            ? Optional.of(reading(piece.freeObject("moves", ReportValues.REMEDY)))
            : Optional.empty(),
        QuestionCodec.readAll(piece, "putsRight"),
        ReportValues.list(piece, "worsens", "worsened check").stream()
            .map(AdviceFields::worse)
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
        worse.says("before")
            ? Optional.of(worse.oneOf("before", ReportValues.OUTCOMES, ReportValues.REMEDY))
            : Optional.empty(),
        worse.oneOf("after", ReportValues.OUTCOMES, ReportValues.REMEDY));
  }
}
