package thwartwise.measure;

import static thwartwise.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RoundingTest {
  @ParameterizedTest
  @CsvSource({
    "0.219, 2, 0.21, 0.22",
    "0.29, 2, 0.29, 0.29",
    "0.2, 2, 0.20, 0.20",
    "-0.031, 2, -0.04, -0.03",
    "110.999, 0, 110, 111",
    "95, 0, 95, 95",
    "1e9, 0, 1000000000, 1000000000",
  })
  void what_there_is_rounds_down_and_what_it_takes_rounds_up(
      double value, int decimals, String down, String up) {
    assertThat(Rounding.down(value, decimals)).isEqualTo(down);
    assertThat(Rounding.up(value, decimals)).isEqualTo(up);
  }

  @Test
  void a_whole_degree_that_went_to_radians_and_back_stays_whole() {
    for (int degree = 0; degree <= 90; degree++) {
      double back = Math.toDegrees(Math.toRadians(degree));
      assertThat(Rounding.up(back, 1)).isEqualTo(degree + ".0");
      assertThat(Rounding.down(back, 1)).isEqualTo(degree + ".0");
    }
  }

  @ParameterizedTest
  @CsvSource({"NaN", "Infinity", "-Infinity"})
  void a_figure_that_is_none_is_called_unknown(double value) {
    assertThat(Rounding.up(value, 2)).isEqualTo("an unknown number of");
    assertThat(Rounding.down(value, 2)).isEqualTo("an unknown number of");
    assertThat(Rounding.plain(value)).isEqualTo("an unknown number of");
  }

  @ParameterizedTest
  @CsvSource({"61.0, 61", "17.5, 17.5", "0.006, 0.006", "-0.0, 0", "0.30000000000000004, 0.3"})
  void a_measured_figure_is_shown_as_it_was_measured(double value, String shown) {
    assertThat(Rounding.plain(value)).isEqualTo(shown);
  }

  @ParameterizedTest
  @CsvSource({
    "3.6000001, 3, 3.6",
    "0.0035, 3, 0.004",
    "-0.0001, 3, 0",
    "NaN, 1, an unknown number of"
  })
  void a_figure_to_the_nearest_has_no_zeros_at_its_end(double value, int decimals, String shown) {
    assertThat(Rounding.nearest(value, decimals)).isEqualTo(shown);
  }
}
