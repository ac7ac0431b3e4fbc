package thwartwise.files.report;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import thwartwise.json.Figures;
import thwartwise.json.JsonText;
import thwartwise.json.ObjectReader;
import thwartwise.json.RecordCodec;
import thwartwise.json.WordChoice;
import thwartwise.measure.UnitFormat;
import thwartwise.measured.BoatQuantity;
import thwartwise.report.FormulaNoteWords;
import thwartwise.rules.CapKind;
import thwartwise.rules.CapacityFigure;
import thwartwise.rules.CapacityFigure.FigureStatus;
import thwartwise.rules.FormulaNote;
import tools.jackson.databind.node.ObjectNode;

/**
 * The result of a rule as a tree, and read back. {@code applies} is true only for a figure that
 * takes part in the answer, so that a reader who takes the least of these never takes a second
 * opinion for a limit. Older records name neither rule set nor standing; they hold kilograms of
 * people or load that took part or did not apply.
 */
final class CapacityCodec {
  private static final WordChoice<FigureStatus> STANDINGS =
      WordChoice.of(FigureStatus::word, FigureStatus.values());
  private static final WordChoice<CapKind> CAPS = WordChoice.of(CapKind::word, CapKind.values());

  private CapacityCodec() {}

  static ObjectNode write(CapacityFigure figure, UnitFormat words) {
    ObjectNode node =
        JsonText.object().put("ruleSet", figure.ruleSet()).put("formula", figure.formula());
    if (figure.namesRegulation()) {
      node.put("namesRegulation", true);
    }
    node.put("standing", figure.standing().word())
        .put("applies", figure.takesPart())
        .put("caps", figure.caps().word())
        .put("capsPeople", figure.caps() == CapKind.PEOPLE);
    Figures.put(node, "massKg", figure.mass());
    Figures.put(node, "value", figure.value());
    node.put("unit", figure.caps().unit());
    Figures.put(node, "has", figure.has());
    if (figure.persons().isPresent()) {
      node.put("persons", figure.persons().getAsInt());
    } else {
      node.putNull("persons");
    }
    node.put("source", figure.source()).put("note", FormulaNoteWords.of(figure.note(), words));
    if (!figure.note().isNone() && !(figure.note() instanceof FormulaNote.Stated)) {
      node.set("noteIs", RecordCodec.write((Record) figure.note()));
    }
    return node;
  }

  static CapacityFigure read(ObjectReader figure) {
    boolean older = !figure.has("standing");
    return new CapacityFigure(
        figure.has("ruleSet") ? ReportValues.text(figure, "ruleSet") : "",
        ReportValues.text(figure, "formula"),
        figure.flag("namesRegulation", false),
        older ? olderStanding(figure) : figure.oneOf("standing", STANDINGS, ReportValues.REMEDY),
        older ? olderCaps(figure) : figure.oneOf("caps", CAPS, ReportValues.REMEDY),
        Figures.read(figure, older ? "massKg" : "value"),
        figure.hasValue("persons")
            ? OptionalInt.of(figure.whole("persons", BoatQuantity.COUNT, ReportValues.REMEDY))
            : OptionalInt.empty(),
        figure.has("has") ? Figures.optional(figure, "has") : OptionalDouble.empty(),
        ReportValues.text(figure, "source"),
        RecordCodec.read(
            figure,
            "noteIs",
            FormulaNote.class,
            () -> FormulaNote.stated(ReportValues.text(figure, "note"))));
  }

  private static FigureStatus olderStanding(ObjectReader figure) {
    return ReportValues.flag(figure, "applies")
        ? FigureStatus.TAKES_PART
        : FigureStatus.DOES_NOT_APPLY;
  }

  private static CapKind olderCaps(ObjectReader figure) {
    return ReportValues.flag(figure, "capsPeople") ? CapKind.PEOPLE : CapKind.LOAD;
  }
}
