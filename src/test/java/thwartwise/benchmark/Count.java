package thwartwise.benchmark;

import java.util.Optional;
import java.util.concurrent.atomic.LongAdder;

/** What {@link CountingLoader} counts: searches for a rest, and the water planes they take. */
public final class Count {
  private static final LongAdder SEARCHES = new LongAdder();
  private static final LongAdder PLANES_SEARCHED = new LongAdder();
  private static final LongAdder PLANES = new LongAdder();
  private static final ThreadLocal<int[]> DEPTH = ThreadLocal.withInitial(() -> new int[1]);

  private Count() {}

  /** A search begins, from upright or from a balance known. */
  public static void begin() {
    DEPTH.get()[0]++;
  }

  /** A search from upright ends. */
  public static void end() {
    DEPTH.get()[0]--;
    SEARCHES.increment();
  }

  /** A search from a balance known ends; where it found none, one from upright follows. */
  public static void end(Optional<?> rest) {
    DEPTH.get()[0]--;
    if (rest.isPresent()) {
      SEARCHES.increment();
    }
  }

  /** Solids are immersed under another plane. */
  public static void plane() {
    PLANES.increment();
    if (DEPTH.get()[0] > 0) {
      PLANES_SEARCHED.increment();
    }
  }

  static long searches() {
    return SEARCHES.sum();
  }

  static long planes() {
    return PLANES.sum();
  }

  static double planesOfASearch() {
    return (double) PLANES_SEARCHED.sum() / SEARCHES.sum();
  }

  static void reset() {
    SEARCHES.reset();
    PLANES_SEARCHED.reset();
    PLANES.reset();
  }
}
