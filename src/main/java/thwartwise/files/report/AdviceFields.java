package thwartwise.files.report;

import java.util.Optional;
import thwartwise.inspection.Advice;
import thwartwise.inspection.AdvicePiece;
import thwartwise.inspection.AdviceReading;
import thwartwise.inspection.AdviceWorse;
import thwartwise.json.Choice;
import thwartwise.json.Fields;
import thwartwise.json.Quantity;
import thwartwise.remedy.Deed;
import thwartwise.remedy.Effort;
import thwartwise.remedy.Prohibition;
import thwartwise.report.EffortWords;

/** The advice, read back; a report made before there was any has none. */
final class AdviceFields {
  private static final Choice<Effort> EFFORTS = Choice.of(EffortWords::of, Effort.values());

  private AdviceFields() {}

  static Advice read(Fields report) {
    if (!report.says("advice")) {
      return Advice.NONE;
    }
    Fields advice = report.freeObject("advice", ReportFields.REMEDY);
    return new Advice(
        ReportFields.list(advice, "pieces", "piece of advice").stream()
            .map(AdviceFields::piece)
            .toList(),
        advice.value("never", ReportFields.REMEDY).texts().stream()
            .<Prohibition>map(Prohibition.AsRecorded::new)
            .toList());
  }

  private static AdvicePiece piece(Fields piece) {
    return new AdvicePiece(
        new Deed.AsRecorded(
            ReportFields.text(piece, "deed"),
            ReportFields.text(piece, "how"),
            piece.value("cautions", ReportFields.REMEDY).texts()),
        piece.oneOf("effort", EFFORTS, ReportFields.REMEDY),
        piece.whole("people", Quantity.COUNT, ReportFields.REMEDY),
        Figures.read(piece, "crewKg"),
        Figures.read(piece, "loadKg"),
        piece.says("moves")
            ? Optional.of(reading(piece.freeObject("moves", ReportFields.REMEDY)))
            : Optional.empty(),
        piece.value("putsRight", ReportFields.REMEDY).texts().stream()
            .map(OldQuestions::of)
            .toList(),
        ReportFields.list(piece, "worsens", "worsened check").stream()
            .map(AdviceFields::worse)
            .toList(),
        piece.value("thenNobody", ReportFields.REMEDY).texts().stream()
            .map(OldQuestions::subject)
            .toList());
  }

  private static AdviceReading reading(Fields reading) {
    return new AdviceReading(
        OldQuestions.of(ReportFields.text(reading, "check")),
        OldLoadCases.crew(ReportFields.text(reading, "crew")),
        ReportFields.margin(reading, "before"),
        ReportFields.margin(reading, "after").value());
  }

  private static AdviceWorse worse(Fields worse) {
    return new AdviceWorse(
        OldQuestions.of(ReportFields.text(worse, "check")),
        worse.oneOf("role", ReportFields.ROLES, ReportFields.REMEDY),
        OldLoadCases.of(ReportFields.text(worse, "loading")).kind(),
        worse.says("before")
            ? Optional.of(worse.oneOf("before", ReportFields.OUTCOMES, ReportFields.REMEDY))
            : Optional.empty(),
        worse.oneOf("after", ReportFields.OUTCOMES, ReportFields.REMEDY));
  }
}
