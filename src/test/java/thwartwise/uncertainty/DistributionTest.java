package thwartwise.uncertainty;

import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.uncertainty.Distribution.Lognormal;
import thwartwise.uncertainty.Distribution.Normal;
import thwartwise.uncertainty.Distribution.Rectangular;
import thwartwise.uncertainty.Distribution.Triangular;

class DistributionTest {

  static Stream<Distribution> all() {
    return Stream.of(
        new Normal(5, 2),
        new Rectangular(-1, 3),
        new Triangular(0, 1, 4),
        new Triangular(0, 0, 3),
        new Triangular(0, 3, 3),
        Lognormal.of(60, 9));
  }

  /**
   * Three standard errors of 200,000 draws: 0.7 % of s for the mean; the tails of each are short.
   */
  @ParameterizedTest
  @MethodSource("all")
  void draws_have_the_mean_and_spread_that_are_stated(Distribution one) {
    SampledResult drawn =
        MonteCarloPropagation.of(List.of(one), double[]::clone, 200_000, 1).get(0);
    double s = one.standardDeviation();
    assertThat(drawn.mean()).isCloseTo(one.mean(), within(0.007 * s));
    assertThat(drawn.standardDeviation()).isCloseTo(s, within(0.01 * s));
  }

  /** Closed forms: half width over root 3; over root 6; both sums of the textbook. DERIVED. */
  @Test
  void means_and_spreads_are_those_of_the_textbook() {
    assertThat(new Rectangular(-1, 3).mean()).isEqualTo(1);
    assertThat(new Rectangular(-1, 3).standardDeviation())
        .isCloseTo(2 / Math.sqrt(3), within(1e-12));
    assertThat(new Triangular(-2, 0, 2).standardDeviation())
        .isCloseTo(2 / Math.sqrt(6), within(1e-12));
    assertThat(new Triangular(0, 1, 5).mean()).isCloseTo(2, within(1e-12));
    // (a² + b² + c² - ab - ac - bc) / 18 of 0, 1, 5 is (0 + 1 + 25 - 0 - 0 - 5) / 18.
    assertThat(new Triangular(0, 1, 5).standardDeviation())
        .isCloseTo(Math.sqrt(21 / 18.0), within(1e-12));
    assertThat(Lognormal.of(60, 9).mean()).isCloseTo(60, within(1e-9));
    assertThat(Lognormal.of(60, 9).standardDeviation()).isCloseTo(9, within(1e-9));
  }

  @Test
  void a_mass_that_is_hardly_known_is_still_above_zero() {
    SampledResult drawn =
        MonteCarloPropagation.of(List.of(Lognormal.of(10, 20)), double[]::clone, 100_000, 1).get(0);
    assertThat(drawn.shareAtLeast(Double.MIN_VALUE)).isEqualTo(1);
  }

  @Test
  void refuses_what_is_no_distribution() {
    refused(() -> new Normal(0, 0), "The standard deviation must be above 0: 0.0.");
    refused(() -> new Normal(0, Double.NaN), "The standard deviation must be above 0: NaN.");
    refused(() -> new Normal(Double.NaN, 1), "The mean must be finite: NaN.");
    refused(
        () -> new Rectangular(2, 2),
        "The distance from lowest to highest value must be above 0: 0.0.");
    refused(
        () -> new Triangular(0, Double.NaN, 1),
        "The likeliest value NaN is not between 0.0 and 1.0.");
    refused(() -> Lognormal.of(0, 1), "The mean must be above 0: 0.0.");
    refused(() -> Lognormal.of(1, -1), "The standard deviation must be above 0: -1.0.");
  }

  private static void refused(ThrowingCallable wrong, String message) {
    assertThatThrownBy(wrong).isInstanceOf(IllegalArgumentException.class).hasMessage(message);
  }
}
