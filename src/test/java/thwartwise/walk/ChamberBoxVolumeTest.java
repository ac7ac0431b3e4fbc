package thwartwise.walk;

import static thwartwise.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;

/** Litres poured into a chamber are set beside its box at once. */
class ChamberBoxVolumeTest {
  private static final Sheet FULL = Sheet.full(true);
  private static final String THWART = "chamber.2.litres";

  @Test
  void the_box_named_is_the_one_the_boat_is_worked_out_with() {
    Boat boat = FULL.boat();
    double drawn = BoatModel.of(boat, Sheet.TODAY).spaces().get(1).solid().volume() * 1000;
    String said = FULL.accepted(THWART, "60");
    assertThat(Double.parseDouble(said.replaceAll(".*by its box ([0-9.]+) l.*", "$1")))
        .isEqualTo(Math.floor(drawn));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
      88.78 | 88.78 l (by its box 88 l)
      86  | 86 l (by its box 88 l, so 3 % less; the smaller counts)
      100 | 100 l (by its box 88 l, so 13 % more; the smaller counts)
      50  | 50 l (by its box 88 l, so 44 % less; the smaller counts; one of the two is wrong: measure the box and pour again)
      """)
  void how_far_apart_they_are_is_said(String typed, String said) {
    assertThat(FULL.accepted(THWART, typed)).endsWith("it holds: " + said);
  }

  @Test
  void nothing_is_said_where_nothing_was_poured() {
    assertThat(FULL.accepted(THWART, "")).endsWith("it holds: not measured");
  }
}
