package thwartwise.crew;

import java.util.function.Supplier;

/** A costly answer, computed when it is first needed and then cached. */
public final class Lazy<T> implements Supplier<T> {
  private final Supplier<T> work;
  private T answer;

  private Lazy(Supplier<T> work) {
    this.work = work;
  }

  public static <T> Supplier<T> of(Supplier<T> work) {
    return new Lazy<>(work);
  }

  @Override
  public synchronized T get() {
    if (answer == null) {
      answer = work.get();
    }
    return answer;
  }
}
