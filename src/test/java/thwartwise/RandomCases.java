package thwartwise;

import java.util.List;
import java.util.Random;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Random cases for a property, the same ones at every run, so that a failure comes back. To look at
 * others change the seed.
 */
public final class RandomCases {
  public static final long SEED = 20261125;

  private RandomCases() {}

  public static <T> List<T> of(int count, Function<Random, T> maker) {
    Random random = new Random(SEED);
    return Stream.generate(() -> maker.apply(random)).limit(count).toList();
  }

  /** Fails with the first case that breaks the property, and says how many do. */
  public static <T> void each(List<T> cases, Consumer<T> property) {
    each(cases, (one, random) -> property.accept(one));
  }

  /**
   * The same of a property with more that is random, which is drawn anew from the number of the
   * case.
   */
  public static <T> void each(List<T> cases, BiConsumer<T, Random> property) {
    int broken = 0;
    Throwable first = null;
    int number = 0;
    for (int i = 0; i < cases.size(); i++) {
      try {
        property.accept(cases.get(i), new Random(i));
      } catch (AssertionError | RuntimeException failure) {
        number = broken == 0 ? i : number;
        first = broken == 0 ? failure : first;
        broken++;
      }
    }
    if (broken > 0) {
      throw new AssertionError(
          "%d of %d random cases of seed %d fail, first case %d, %s: %s"
              .formatted(broken, cases.size(), SEED, number, cases.get(number), first.getMessage()),
          first);
    }
  }
}
