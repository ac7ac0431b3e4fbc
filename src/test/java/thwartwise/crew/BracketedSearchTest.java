package thwartwise.crew;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

class BracketedSearchTest {
  private static final List<DoubleUnaryOperator> SHAPES =
      List.of(
          x -> x,
          x -> x * x * x,
          Math::cbrt,
          x -> x < 0 ? 100 * x : x / 100,
          x -> x < 0 ? Double.NEGATIVE_INFINITY : x,
          x -> x < 0 ? x : Double.POSITIVE_INFINITY,
          x -> x < 0 ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY);

  /** Every step from the lower end up to the first that is not met. */
  private static double byForce(
      double meets, double step, int steps, DoubleFunction<Headroom> headroom) {
    int last = 0;
    while (last + 1 < steps && headroom.apply(meets + (last + 1) * step).isMet()) {
      last++;
    }
    return meets + last * step;
  }

  @Test
  void the_last_step_met_is_the_one_found_by_trying_all() {
    Random random = new Random(20261127);
    for (int i = 0; i < 2000; i++) {
      double step = i % 2 == 0 ? 1 : 0.1;
      int steps = 1 + random.nextInt(60);
      double meets = 15 + random.nextInt(80);
      double limit = meets + step * steps * random.nextDouble();
      DoubleUnaryOperator shape = SHAPES.get(i % SHAPES.size());
      DoubleFunction<Headroom> headroom = mass -> new Headroom(shape.applyAsDouble(limit - mass));
      assertThat(BracketedSearch.lastMet(meets, meets + steps * step, step, headroom))
          .isCloseTo(byForce(meets, step, steps, headroom), within(1e-9));
    }
  }

  @Test
  void two_tries_are_enough_where_the_headroom_shrinks_evenly() {
    AtomicInteger tries = new AtomicInteger();
    double last =
        BracketedSearch.lastMet(
            15,
            65,
            1,
            mass -> {
              tries.incrementAndGet();
              return new Headroom(3 * (42.4 - mass));
            });
    assertThat(last).isEqualTo(42);
    assertThat(tries.get() - 2).isEqualTo(2);
  }

  @Test
  void no_step_takes_more_tries_than_twice_the_halvings() {
    AtomicInteger tries = new AtomicInteger();
    BracketedSearch.lastMet(
        0,
        64,
        1,
        mass -> {
          tries.incrementAndGet();
          return new Headroom(mass > 62.5 ? -1e-6 : 1e6);
        });
    assertThat(tries.get() - 2).isLessThanOrEqualTo(12);
  }
}
