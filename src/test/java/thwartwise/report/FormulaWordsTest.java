package thwartwise.report;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitSystem;
import thwartwise.rules.CapKind;
import thwartwise.rules.CapacityFigure;
import thwartwise.rules.CapacityFigure.FigureStatus;
import thwartwise.rules.FormulaNote;

class FormulaWordsTest {
  // What the boat has rounds down, what it needs and its motor round up, what is allowed down.
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "PEOPLE | 121.9 | 2 | | 121 kg, two people, of people;",
        "LOAD | 423.5 | | | 423 kg in all;",
        "HEADS | 4 | 4 | | four people;",
        "PERSON | 63.95 | | | 63 kg;",
        "POWER | 2237.1 | | 2237.4 | at most 2237 W; 2238 W: falls short",
        "POWER | 2237.1 | | 500 | at most 2237 W; 500 W",
        "FLOTATION | 0.1411 | | 0.2049 | at least 142 litres; 204 litres",
        "FREEBOARD | 0.25 | | 0.249 | at least 0.25 m; 0.24 m: falls short",
        "FREEBOARD | 0.25 | | | at least 0.25 m;",
        "NOTHING | NaN | | | no number: why;"
      })
  void a_number_is_told_with_what_it_speaks_of(
      CapKind caps, double value, Integer persons, Double has, String told) {
    CapacityFigure figure =
        new CapacityFigure(
            "set",
            "rule",
            caps == CapKind.NOTHING ? FigureStatus.DOES_NOT_APPLY : FigureStatus.TAKES_PART,
            caps,
            value,
            persons == null ? OptionalInt.empty() : OptionalInt.of(persons),
            has == null ? OptionalDouble.empty() : OptionalDouble.of(has),
            "",
            FormulaNote.stated("why"));
    List<String> row = row(figure);
    assertThat(row.get(0)).isEqualTo("rule");
    assertThat((row.get(1) + "; " + row.get(2)).strip()).isEqualTo(told);
  }

  @Test
  void a_figure_beside_in_a_set_that_takes_part_says_so() {
    CapacityFigure figure =
        new CapacityFigure(
            "set",
            "rule",
            FigureStatus.BESIDE,
            CapKind.HEADS,
            2,
            OptionalInt.of(2),
            OptionalDouble.empty(),
            "a board (READ)",
            FormulaNote.stated("by the warden"));
    assertThat(row(figure).subList(0, 2))
        .containsExactly("rule (second opinion) [1]", "two people");
  }

  private static List<String> row(CapacityFigure figure) {
    UnitFormat metric = new UnitFormat(UnitSystem.METRIC);
    return FormulasSection.row(figure, FigureStatus.TAKES_PART, new Sources(), metric).stream()
        .map(cell -> cell.replace(UnitFormat.TIED, " "))
        .toList();
  }
}
