package thwartwise.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thwartwise.page.FigureText;
import thwartwise.page.Sentence;
import thwartwise.rules.CapacityFigure;
import thwartwise.rules.Caps;
import thwartwise.rules.Standing;

class FormulaWordsTest {
  // What the boat has rounds down, what it needs and its motor round up, what is allowed down.
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "PEOPLE | 121.9 | 2 | | Rule: 121 kg, two people, for the people aboard.",
        "LOAD | 423.5 | | | Rule: 423 kg for the whole load.",
        "HEADS | 4 | 4 | | Rule: four people.",
        "PERSON | 63.95 | | | Rule: 63 kg.",
        "POWER | 2237.1 | | 2237.4 | Rule: at most 2237 W, the boat has 2238 W: falls short.",
        "POWER | 2237.1 | | 500 | Rule: at most 2237 W, the boat has 500 W.",
        "FLOTATION | 0.1411 | | 0.2049 | Rule: at least 142 litres, the boat has 204 litres.",
        "FREEBOARD | 0.25 | | 0.249 | Rule: at least 0.25 m, the boat has 0.24 m: falls short.",
        "FREEBOARD | 0.25 | | | Rule: at least 0.25 m.",
        "NOTHING | NaN | | | Rule."
      })
  void a_number_is_told_with_what_it_speaks_of(
      Caps caps, double value, Integer persons, Double has, String told) {
    CapacityFigure figure =
        new CapacityFigure(
            "set",
            "rule",
            caps == Caps.NOTHING ? Standing.DOES_NOT_APPLY : Standing.TAKES_PART,
            caps,
            value,
            persons == null ? OptionalInt.empty() : OptionalInt.of(persons),
            has == null ? OptionalDouble.empty() : OptionalDouble.of(has),
            "",
            "");
    assertThat(said(figure)).isEqualTo(told);
  }

  @Test
  void a_figure_beside_in_a_set_that_takes_part_says_so() {
    CapacityFigure figure =
        new CapacityFigure(
            "set",
            "rule",
            Standing.BESIDE,
            Caps.HEADS,
            2,
            OptionalInt.of(2),
            OptionalDouble.empty(),
            "a board (READ)",
            "by the warden");
    assertThat(said(figure))
        .isEqualTo(
            "Rule: two people. This one stands beside the answer. By the warden. From a board"
                + " (READ).");
  }

  private static String said(CapacityFigure figure) {
    return Sentence.joined(List.of(FormulaWords.of(figure, Standing.TAKES_PART)))
        .replace(FigureText.TIED, ' ');
  }
}
