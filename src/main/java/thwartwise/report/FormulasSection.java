package thwartwise.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.Stream;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.page.FigureText;
import thwartwise.page.Page;
import thwartwise.page.Sentence;
import thwartwise.page.Table;
import thwartwise.rules.CapKind;
import thwartwise.rules.CapacityFigure;
import thwartwise.rules.CapacityFigure.FigureStatus;

/** What other rules give for this boat, set by set, and how it enters the answer. */
final class FormulasSection {
  private static final List<Table.Column> COLUMNS =
      List.of(
          new Table.Column("Rule", 38),
          new Table.Column("Gives", 26),
          new Table.Column("This boat has", 14));

  private FormulasSection() {}

  static void write(Page page, List<CapacityFigure> figures, Sources sources, UnitFormat units) {
    if (figures.isEmpty()) {
      return;
    }
    Map<String, List<CapacityFigure>> bySet = new LinkedHashMap<>();
    figures.forEach(f -> bySet.computeIfAbsent(f.ruleSet(), s -> new ArrayList<>()).add(f));
    List<List<CapacityFigure>> sets =
        bySet.values().stream().sorted((a, b) -> standing(a).compareTo(standing(b))).toList();
    List<List<String>> rows = new ArrayList<>();
    for (List<CapacityFigure> set : sets) {
      rows.add(List.of(head(set, units)));
      numbers(set).map(f -> row(f, standing(set), sources, units)).forEach(rows::add);
    }
    page.folded("Published rules for comparison", new Page().table(Table.close(COLUMNS, rows)));
    Page notes = new Page();
    sets.stream()
        .flatMap(FormulasSection::numbers)
        .filter(f -> f.caps() != CapKind.LIMIT && !f.note().isNone())
        .forEach(f -> notes.point(title(f) + ": " + FormulaNoteWords.of(f.note(), units)));
    if (!notes.blocks().isEmpty()) {
      page.screenOnly("What these rules rest on", notes);
    }
  }

  private static Stream<CapacityFigure> numbers(List<CapacityFigure> set) {
    return set.stream().filter(figure -> !figure.formula().isBlank());
  }

  private static String head(List<CapacityFigure> set, UnitFormat units) {
    String name = set.get(0).ruleSet();
    String heading = heading(standing(set), set, units);
    return name.isBlank() ? Sentence.capital(heading) : name + ": " + heading;
  }

  /** The standing of a set, which is that of its best figure. */
  private static FigureStatus standing(List<CapacityFigure> set) {
    return set.stream().map(CapacityFigure::standing).sorted().findFirst().orElseThrow();
  }

  private static String heading(FigureStatus standing, List<CapacityFigure> set, UnitFormat units) {
    return switch (standing) {
      case TAKES_PART -> "part of the answer; the lowest figure counts";
      case BESIDE -> "a second opinion; changes nothing";
      case DOES_NOT_APPLY ->
          set.get(0).formula().isBlank()
              ? FormulaNoteWords.of(set.get(0).note(), units)
              : "gives no number for this boat";
    };
  }

  // One rule's number as a row: its name, the number, the boat's own figure.

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

  /** The title of a limit, by its key in the files. */
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
      case LIMIT -> FormulaNoteWords.of(figure.note(), units);
      case NOTHING -> "no number: " + FormulaNoteWords.of(figure.note(), units);
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
