package thwartwise.report;

import java.util.OptionalInt;
import thwartwise.page.FigureText;
import thwartwise.rules.CapacityFigure;
import thwartwise.rules.Caps;
import thwartwise.rules.Standing;

/** One rule's number in sentences, kilograms first. */
final class FormulaWords {
  private FormulaWords() {}

  /**
   * @param set what becomes of the set as a whole, told above
   */
  static String[] of(CapacityFigure figure, Standing set) {
    boolean apart = set == Standing.TAKES_PART && figure.standing() == Standing.BESIDE;
    return new String[] {
      title(figure) + (figure.caps() == Caps.NOTHING ? "" : ": " + number(figure)),
      apart ? "This one stands beside the answer" : "",
      figure.caps() == Caps.LIMIT ? "" : figure.note(),
      figure.source().isBlank() ? "" : "From " + figure.source()
    };
  }

  /** A limit goes by the key it has in the files. */
  private static String title(CapacityFigure figure) {
    return figure.caps() == Caps.LIMIT ? figure.formula().replace('-', ' ') : figure.formula();
  }

  private static String number(CapacityFigure figure) {
    return switch (figure.caps()) {
      case PEOPLE -> kilograms(figure) + persons(figure.persons()) + " for the people aboard";
      case LOAD -> kilograms(figure) + persons(figure.persons()) + " for the whole load";
      case HEADS -> FigureText.people((int) figure.value());
      case PERSON -> kilograms(figure);
      case POWER ->
          beside(figure, "at most ", watts(figure.value()), FigureText.up(has(figure), 0), "W");
      case FLOTATION -> litres(figure);
      case FREEBOARD ->
          beside(figure, "at least ", metres(figure.value()), FigureText.down(has(figure), 2), "m");
      case LIMIT -> figure.note();
      case NOTHING -> "";
    };
  }

  private static String litres(CapacityFigure figure) {
    String needed = FigureText.with(FigureText.up(figure.value() * 1000, 0), "litres");
    return beside(figure, "at least ", needed, FigureText.down(has(figure) * 1000, 0), "litres");
  }

  /** What the rule wants, and what the boat has where that is known. */
  private static String beside(
      CapacityFigure figure, String wants, String rule, String boat, String unit) {
    if (figure.has().isEmpty()) {
      return wants + rule;
    }
    String verdict = figure.fallsShort() ? ": falls short" : "";
    return wants + rule + ", the boat has " + FigureText.with(boat, unit) + verdict;
  }

  private static double has(CapacityFigure figure) {
    return figure.has().orElse(Double.NaN);
  }

  private static String kilograms(CapacityFigure figure) {
    return FigureText.with(FigureText.down(figure.value(), 0), "kg");
  }

  private static String watts(double power) {
    return FigureText.with(FigureText.down(power, 0), "W");
  }

  private static String metres(double height) {
    return FigureText.with(FigureText.up(height, 2), "m");
  }

  private static String persons(OptionalInt persons) {
    return persons.isPresent() ? ", " + FigureText.people(persons.getAsInt()) + "," : "";
  }
}
