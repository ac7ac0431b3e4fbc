package thwartwise.loadcase;

import static thwartwise.Assertions.assertThat;

import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.IntFunction;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import thwartwise.geometry.Vector3;
import thwartwise.loadcase.DryStepSearch.Found;
import thwartwise.loadcase.DryStepSearch.Trial;

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
    return foundOf(k -> stiff(edge.applyAsDouble(k)), nearly);
  }

  /** The same for a boat of which more than its edge is known. */
  private Found foundOf(IntFunction<Trial> boat, Optional<Found> nearly) {
    tried = 0;
    IntFunction<Trial> counted =
        k -> {
          tried++;
          return boat.apply(k);
        };
    return new DryStepSearch(boat.apply(0), counted, MOST, NEVER).from(nearly);
  }

  /** A boat that stays upright and stiff. */
  private static Trial stiff(double height) {
    return new Trial(height, Vector3.of(0, 0, 1), 1);
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
          new DryStepSearch(
                  stiff(1),
                  k -> stiff(edge.applyAsDouble(k)),
                  MOST,
                  (dry, wet) -> dry >= enough || wet <= enough)
              .from(Optional.empty())
              .step();
      assertThat(told >= enough).isEqualTo(everyStep(edge) >= enough);
    }
  }

  /**
   * A boat that heels ever faster and has no equilibrium from one step up to another, from where it
   * lies on farther over; soft near the gap.
   */
  private static IntFunction<Trial> gap(SplittableRandom random) {
    int lost = random.nextInt(5, 200);
    int found = lost + random.nextInt(1, 10);
    double least = random.nextDouble(0.02, 0.15);
    double heelBefore = Math.toRadians(random.nextDouble(8, 30));
    double jump = Math.toRadians(random.nextDouble(2.5, 20));
    double fall = random.nextDouble(0.001, 0.02);
    return k -> {
      if (k >= lost && k < found) {
        return new Trial(Double.NaN, Vector3.of(0, 0, 1), 0);
      }
      double share = (double) k / lost;
      double heel = k < lost ? heelBefore * share * share : heelBefore + jump + 0.01 * (k - found);
      double height = k < lost ? 0.5 - 0.4 * share * share : 0.05 - fall * (k - found);
      double stiffness = k < lost ? 0.5 * (1 - share) + least : least;
      return new Trial(height, Vector3.of(0, Math.sin(heel), Math.cos(heel)), stiffness);
    };
  }

  @Test
  void a_gap_without_an_equilibrium_ends_it_although_a_greater_pull_has_one() {
    SplittableRandom random = new SplittableRandom(4);
    for (int i = 0; i < 2000; i++) {
      IntFunction<Trial> boat = gap(random);
      int last = everyStep(k -> boat.apply(k).height());
      assertThat(foundOf(boat, Optional.empty()).step()).isEqualTo(last);
      Found other = new Found(random.nextInt(MOST + 1), random.nextDouble(-0.001, 0.02));
      assertThat(foundOf(boat, Optional.of(other)).step()).isEqualTo(last);
    }
  }
}
