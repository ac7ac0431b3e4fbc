package thwartwise.files.report;

import java.util.Optional;
import java.util.OptionalDouble;
import thwartwise.checks.Unit;
import thwartwise.inspection.Advice;
import thwartwise.inspection.AdvicePiece;
import thwartwise.inspection.AdviceReading;
import thwartwise.inspection.AdviceWorse;
import thwartwise.json.Choice;
import thwartwise.json.Fields;
import thwartwise.json.Quantity;
import thwartwise.remedy.Effort;

/** The advice, read back; a report made before there was any has none. */
final class AdviceFields {
  private static final Choice<Effort> EFFORTS = Choice.of(Effort::words, Effort.values());

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
        advice.value("never", ReportFields.REMEDY).texts());
  }

  private static AdvicePiece piece(Fields piece) {
    return new AdvicePiece(
        ReportFields.text(piece, "deed"),
        ReportFields.text(piece, "how"),
        piece.oneOf("effort", EFFORTS, ReportFields.REMEDY),
        piece.value("cautions", ReportFields.REMEDY).texts(),
        piece.whole("people", Quantity.COUNT, ReportFields.REMEDY),
        Figures.read(piece, "crewKg"),
        Figures.read(piece, "loadKg"),
        piece.says("moves")
            ? Optional.of(reading(piece.freeObject("moves", ReportFields.REMEDY)))
            : Optional.empty(),
        piece.value("putsRight", ReportFields.REMEDY).texts(),
        ReportFields.list(piece, "worsens", "worsened check").stream()
            .map(AdviceFields::worse)
            .toList(),
        piece.value("thenNobody", ReportFields.REMEDY).texts());
  }

  private static AdviceReading reading(Fields reading) {
    Unit unit = reading.oneOf("unit", ReportFields.UNITS, ReportFields.REMEDY);
    return new AdviceReading(
        ReportFields.text(reading, "check"),
        ReportFields.text(reading, "crew"),
        si(reading, "before", unit),
        si(reading, "after", unit),
        unit.si(Figures.read(reading, "limit")),
        ReportFields.flag(reading, "atLeast"),
        unit);
  }

  private static OptionalDouble si(Fields reading, String key, Unit unit) {
    OptionalDouble shown = Figures.optional(reading, key);
    return shown.isPresent()
        ? OptionalDouble.of(unit.si(shown.getAsDouble()))
        : OptionalDouble.empty();
  }

  private static AdviceWorse worse(Fields worse) {
    return new AdviceWorse(
        ReportFields.text(worse, "check"),
        worse.oneOf("role", ReportFields.ROLES, ReportFields.REMEDY),
        ReportFields.text(worse, "loading"),
        worse.says("before")
            ? Optional.of(worse.oneOf("before", ReportFields.OUTCOMES, ReportFields.REMEDY))
            : Optional.empty(),
        worse.oneOf("after", ReportFields.OUTCOMES, ReportFields.REMEDY));
  }
}
