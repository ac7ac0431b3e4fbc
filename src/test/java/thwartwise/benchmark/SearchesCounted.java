package thwartwise.benchmark;

import java.lang.reflect.Method;
import java.util.Locale;

/** Searches for a rest and their water planes: the demo boat, with advice and without. */
final class SearchesCounted {
  private SearchesCounted() {}

  /** Prints a line for each. */
  static void print() {
    print("with advice", "withAdvice", 12_000, 8);
    print("without advice", "withoutAdvice", 4_000, 8);
  }

  private static void print(String what, String method, int most, int mostPlanes) {
    try {
      Class<?> demo = new CountingLoader().loadClass(DemoInspected.class.getName());
      Method inspect = demo.getDeclaredMethod(method);
      inspect.setAccessible(true);
      Count.reset();
      inspect.invoke(null);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
    System.out.println(
        String.format(
            Locale.ROOT,
            "demo boat %s: %d searches for a rest (at most %d), %.1f planes each (at most %d),"
                + " %d planes in all",
            what,
            Count.searches(),
            most,
            Count.planesOfASearch(),
            mostPlanes,
            Count.planes()));
  }
}
