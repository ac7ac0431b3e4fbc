package thwartwise.uncertainty;

import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import thwartwise.uncertainty.Distribution.Normal;
import thwartwise.uncertainty.Distribution.Rectangular;

class PropagationTest {
  private static final List<Distribution> TAPE_AND_ENDS =
      List.of(new Normal(1, 0.002), new Normal(3, 0.01), new Normal(1, 0.01));

  /** Two lengths read from one tape that is off by a share. */
  private static double[] sumAndDifference(double[] x) {
    double longer = x[0] * x[1];
    double shorter = x[0] * x[2];
    return new double[] {longer + shorter, longer - shorter};
  }

  /** u² = (0.002 L)² + 2 · 0.01², with L the sum 4 m or the difference 2 m. DERIVED. */
  @Test
  void one_tape_adds_up_in_a_sum_and_cancels_in_a_difference() {
    List<PropagatedResult> found =
        FirstOrderPropagation.of(TAPE_AND_ENDS, PropagationTest::sumAndDifference, 1);
    assertThat(found.get(0).standardUncertainty())
        .isCloseTo(Math.sqrt(0.008 * 0.008 + 2e-4), within(1e-9));
    assertThat(found.get(1).standardUncertainty())
        .isCloseTo(Math.sqrt(0.004 * 0.004 + 2e-4), within(1e-9));
    assertThat(found.get(0).share(0)).isCloseTo(64 / 264.0, within(1e-9));
    assertThat(found.get(1).contribution(2)).isCloseTo(-0.01, within(1e-12));
  }

  @Test
  void every_result_shares_two_evaluations_an_input() {
    AtomicInteger model = new AtomicInteger();
    AtomicInteger heard = new AtomicInteger();
    FirstOrderPropagation.of(
        TAPE_AND_ENDS,
        x -> {
          model.incrementAndGet();
          return sumAndDifference(x);
        },
        1,
        heard::incrementAndGet);
    assertThat(model).hasValue(7);
    assertThat(heard).hasValue(7);
  }

  /**
   * x² at 3 with u 2: half the second difference is u², so the parabola is met exactly. DERIVED.
   */
  @Test
  void a_parabola_is_followed_to_its_second_order() {
    PropagatedResult square =
        FirstOrderPropagation.of(List.of(new Normal(3, 2)), x -> new double[] {x[0] * x[0]}, 1)
            .get(0);
    double[] found = square.at(new double[][] {{1.5, -1.5}}, 2);
    assertThat(found).hasSize(2);
    assertThat(found[0]).isCloseTo(36, within(1e-12));
    assertThat(found[1]).isCloseTo(0, within(1e-12));
  }

  @Test
  void the_same_seed_gives_the_same_draws_whatever_the_threads() throws Exception {
    assertThat(inPoolOf(1)).isEqualTo(inPoolOf(7));
  }

  private static List<Double> inPoolOf(int threads) throws Exception {
    ForkJoinPool pool = new ForkJoinPool(threads);
    try {
      return pool.submit(() -> figures(4321, 11)).get();
    } finally {
      pool.shutdown();
    }
  }

  private static List<Double> figures(int draws, long seed) {
    SampledResult sum =
        MonteCarloPropagation.of(TAPE_AND_ENDS, PropagationTest::sumAndDifference, draws, seed)
            .get(0);
    CoverageInterval most = sum.shortestInterval(0.95);
    return List.of(sum.mean(), sum.standardDeviation(), most.low(), most.high());
  }

  @Test
  void another_seed_gives_other_draws() {
    assertThat(figures(100, 1)).isNotEqualTo(figures(100, 2));
  }

  /** An input is drawn anew for every draw, and no two blocks of draws are the same. */
  @Test
  void no_draw_comes_twice() {
    SampledResult drawn =
        MonteCarloPropagation.of(List.of(new Rectangular(0, 1)), double[]::clone, 10_000, 5).get(0);
    CoverageInterval all = drawn.symmetricInterval(0.999999);
    assertThat(all.length()).isBetween(0.999, 1.0);
    // A part of 0.3 of 10,000 draws scatters by 0.0046; four times that.
    assertThat(drawn.shareAtLeast(0.7)).isCloseTo(0.3, within(0.018));
  }

  @Test
  void a_draw_without_a_result_counts_against_the_share_and_enters_no_mean() {
    SampledResult drawn =
        MonteCarloPropagation.of(
                List.of(new Rectangular(0, 1)),
                x -> new double[] {x[0] < 0.5 ? Double.NaN : 1},
                10_000,
                5)
            .get(0);
    assertThat(drawn.draws()).isEqualTo(10_000);
    assertThat(drawn.mean()).isEqualTo(1);
    assertThat(drawn.shareAtLeast(1)).isEqualTo((10_000 - drawn.missing()) / 10_000.0);
    assertThat(drawn.missing()).isBetween(4800, 5200);
  }

  @Test
  void a_coverage_interval_contains_its_ends() {
    CoverageInterval interval = new CoverageInterval(1, 2);
    assertThat(interval.contains(1)).isTrue();
    assertThat(interval.contains(2)).isTrue();
    assertThat(interval.contains(Double.NaN)).isFalse();
    assertThat(interval.with(new CoverageInterval(0, 1.5))).isEqualTo(new CoverageInterval(0, 2));
    assertThat(interval.with(new CoverageInterval(1.5, 3))).isEqualTo(new CoverageInterval(1, 3));
  }

  @Test
  void refuses_no_draws_no_step_and_no_probability() {
    assertThatThrownBy(() -> MonteCarloPropagation.of(TAPE_AND_ENDS, double[]::clone, 0, 1))
        .hasMessage("The number of draws must be above 0: 0.");
    assertThatThrownBy(() -> FirstOrderPropagation.of(TAPE_AND_ENDS, double[]::clone, Double.NaN))
        .hasMessage("The step must be above 0: NaN.");
    SampledResult drawn = MonteCarloPropagation.of(TAPE_AND_ENDS, double[]::clone, 10, 1).get(0);
    assertThatThrownBy(() -> drawn.symmetricInterval(Double.NaN))
        .hasMessage("The coverage probability must be between 0 and 1: NaN.");
    SampledResult none =
        MonteCarloPropagation.of(TAPE_AND_ENDS, x -> new double[] {Double.NaN}, 10, 1).get(0);
    assertThatThrownBy(() -> none.shortestInterval(0.95))
        .hasMessage("No draw had a result: there is no coverage interval.");
  }
}
