package thwartwise.afloat;

import static thwartwise.Assertions.assertThat;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Zeros known on paper, drawn together to a tolerance in few goes. */
class BracketTest {
  private static final double TOLERANCE = 1e-7;

  private int goes;

  private double zero(DoubleUnaryOperator falling, double low, double high) {
    Bracket bracket =
        new Bracket(low, falling.applyAsDouble(low), high, falling.applyAsDouble(high));
    while (bracket.width() > TOLERANCE) {
      double at = bracket.next(TOLERANCE);
      assertThat(at).isStrictlyBetween(bracket.high() - bracket.width(), bracket.high());
      double value = falling.applyAsDouble(at);
      assertThat(bracket.cut(at, value)).isEqualTo(value >= 0);
      goes++;
    }
    return bracket.high();
  }

  private static void assertHigh(double high, double zero) {
    assertThat(high).isBetween(zero, zero + TOLERANCE);
  }

  // Halving would take 25 goes from 2 to 1e-7.
  @Test
  void a_bent_line_is_found_in_half_the_goes_that_halving_takes() {
    assertHigh(zero(x -> 2 - x * x, 0, 2), Math.sqrt(2));
    assertThat(goes).isLessThanOrEqualTo(12);
  }

  @Test
  void a_straight_line_is_found_at_once() {
    assertHigh(zero(x -> 0.3 - x, 0, 1), 0.3);
    assertThat(goes).isLessThanOrEqualTo(8);
  }

  @ParameterizedTest
  @ValueSource(doubles = {1e-9, 0.017, 0.5, 0.999999})
  void a_step_is_found_by_halving(double step) {
    assertHigh(zero(x -> x < step ? 1e-12 : -1, 0, 1), step);
    assertThat(goes).isLessThanOrEqualTo(80);
  }

  @Test
  void where_there_is_no_value_counts_as_beyond() {
    assertHigh(zero(x -> x < 0.7 ? 1 - x : Double.NaN, 0, 1), 0.7);
  }

  @Test
  void a_curve_that_starts_at_zero_is_left_behind() {
    assertHigh(zero(x -> x * (0.25 - x), 0, 1), 0.25);
    assertThat(goes).isLessThanOrEqualTo(40);
  }
}
