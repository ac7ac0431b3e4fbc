package thwartwise.files.report;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import thwartwise.json.Figures;
import thwartwise.json.ObjectReader;
import thwartwise.json.WordChoice;
import thwartwise.measured.BoatQuantity;
import thwartwise.rules.CapKind;
import thwartwise.rules.CapacityFigure;
import thwartwise.rules.CapacityFigure.FigureStatus;

/**
 * What a rule gave, read back. Older records name neither rule set nor standing: all they held was
 * kilograms of people or load that took part or did not apply.
 */
final class CapacityFields {
  private static final WordChoice<FigureStatus> STANDINGS =
      WordChoice.of(FigureStatus::word, FigureStatus.values());
  private static final WordChoice<CapKind> CAPS = WordChoice.of(CapKind::word, CapKind.values());

  private CapacityFields() {}

  static CapacityFigure read(ObjectReader figure) {
    boolean older = !figure.has("standing");
    return new CapacityFigure(
        figure.has("ruleSet") ? ReportValues.text(figure, "ruleSet") : "",
        ReportValues.text(figure, "formula"),
        figure.flag("namesRegulation", false),
        older ? olderStanding(figure) : figure.oneOf("standing", STANDINGS, ReportValues.REMEDY),
        older ? olderCaps(figure) : figure.oneOf("caps", CAPS, ReportValues.REMEDY),
        Figures.read(figure, older ? "massKg" : "value"),
        figure.says("persons")
            ? OptionalInt.of(figure.whole("persons", BoatQuantity.COUNT, ReportValues.REMEDY))
            : OptionalInt.empty(),
        figure.has("has") ? Figures.optional(figure, "has") : OptionalDouble.empty(),
        ReportValues.text(figure, "source"),
        ReportValues.text(figure, "note"));
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
