package thwartwise.report;

import java.util.List;
import java.util.OptionalInt;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.page.FigureText;
import thwartwise.rules.CapKind;
import thwartwise.rules.CapacityFigure;
import thwartwise.rules.FigureStatus;

/** One rule's number as a row: what it is called, what it gives, what the boat has. */
final class FormulaWords {
  private FormulaWords() {}

  /**
   * @param set what becomes of the set as a whole, which stands above
   */
  static List<String> row(
      CapacityFigure figure, FigureStatus set, Sources sources, UnitFormat units) {
    boolean apart = set == FigureStatus.TAKES_PART && figure.standing() == FigureStatus.BESIDE;
    return List.of(
        title(figure) + (apart ? " (second opinion)" : "") + sources.cite(figure.source()),
        number(figure, units),
        figure.has().isPresent() ? has(figure, units) : "");
  }

  /** A limit goes by the key it has in the files. */
  static String title(CapacityFigure figure) {
    return figure.caps() == CapKind.LIMIT ? figure.formula().replace('-', ' ') : figure.formula();
  }

  private static String number(CapacityFigure figure, UnitFormat units) {
    double value = figure.value();
    return switch (figure.caps()) {
      case PEOPLE -> units.mass(value, Side.DOWN) + persons(figure.persons()) + " of people";
      case LOAD -> units.mass(value, Side.DOWN) + persons(figure.persons()) + " in all";
      case HEADS -> FigureText.people((int) value);
      case PERSON -> units.mass(value, Side.DOWN);
      case POWER -> "at most " + units.power(value, Side.DOWN);
      case FLOTATION -> "at least " + units.volume(value, Side.UP);
      case FREEBOARD -> "at least " + units.height(value, Side.UP);
      case LIMIT -> figure.note();
      case NOTHING -> "no number: " + figure.note();
    };
  }

  private static String has(CapacityFigure figure, UnitFormat units) {
    double has = figure.has().orElseThrow();
    String shown =
        switch (figure.caps()) {
          case POWER -> units.power(has, Side.UP);
          case FLOTATION -> units.volume(has, Side.DOWN);
          case FREEBOARD -> units.height(has, Side.DOWN);
          default -> units.mass(has, Side.DOWN);
        };
    return shown + (figure.fallsShort() ? ": falls short" : "");
  }

  private static String persons(OptionalInt persons) {
    return persons.isPresent() ? ", " + FigureText.people(persons.getAsInt()) + "," : "";
  }
}
