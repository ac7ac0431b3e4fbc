package thwartwise.loadcase;

import static thwartwise.Assertions.assertThat;

import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import thwartwise.loadcase.DryStepSearch.Found;

/** Against trying every step, which needs no method. */
class DryStepSearchTest {
  private static final int MOST = 512;
  private static final DryStepSearch.Enough NEVER = (dry, wet) -> false;

  private int tried;

  /**
   * An edge that sinks with the pull, evenly or ever faster or slower, and is lost at some pull.
   */
  private static IntToDoubleFunction edge(SplittableRandom random) {
    double above = random.nextDouble(0.001, 0.5);
    double wetAt = random.nextDouble(0.5, 1.3 * MOST);
    double power = random.nextDouble(0.4, 3);
    double lost = wetAt * random.nextDouble(0.95, 3);
    return k -> k > lost ? Double.NaN : above * (1 - Math.pow(k / wetAt, power));
  }

  private static int everyStep(IntToDoubleFunction edge) {
    int last = 0;
    while (last < MOST && edge.applyAsDouble(last + 1) >= 0) {
      last++;
    }
    return last;
  }

  private Found found(IntToDoubleFunction edge, Optional<Found> nearly) {
    tried = 0;
    IntToDoubleFunction counted =
        k -> {
          tried++;
          return edge.applyAsDouble(k);
        };
    return new DryStepSearch(counted, MOST, NEVER).from(nearly);
  }

  @Test
  void finds_the_last_dry_step_of_any_edge_that_sinks() {
    SplittableRandom random = new SplittableRandom(1);
    for (int i = 0; i < 2000; i++) {
      IntToDoubleFunction edge = edge(random);
      assertThat(found(edge, Optional.empty()).step()).isEqualTo(everyStep(edge));
      assertThat(tried).isLessThan(25);
    }
  }

  @Test
  void finds_the_same_from_wherever_another_boat_had_it() {
    SplittableRandom random = new SplittableRandom(2);
    for (int i = 0; i < 2000; i++) {
      IntToDoubleFunction edge = edge(random);
      Found other = new Found(random.nextInt(MOST + 1), random.nextDouble(-0.001, 0.02));
      assertThat(found(edge, Optional.of(other)).step()).isEqualTo(everyStep(edge));
    }
  }

  @Test
  void from_a_boat_nearly_the_same_a_few_trials_do() {
    IntToDoubleFunction before = k -> 0.2985 - 0.003 * k;
    Found other = found(before, Optional.empty());
    assertThat(other.step()).isEqualTo(99);
    assertThat(found(k -> 0.3085 - 0.0029 * k, Optional.of(other)).step()).isEqualTo(106);
    assertThat(tried).isLessThan(5);
  }

  @Test
  void asked_for_no_more_than_some_pull_it_stops_there() {
    int enough = 40;
    SplittableRandom random = new SplittableRandom(3);
    for (int i = 0; i < 500; i++) {
      IntToDoubleFunction edge = edge(random);
      int told =
          new DryStepSearch(edge, MOST, (dry, wet) -> dry >= enough || wet <= enough)
              .from(Optional.empty())
              .step();
      assertThat(told >= enough).isEqualTo(everyStep(edge) >= enough);
    }
  }
}
