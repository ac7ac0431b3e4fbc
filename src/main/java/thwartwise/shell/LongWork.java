package thwartwise.shell;

import java.util.concurrent.CancellationException;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.function.Supplier;
import org.jline.utils.Signals;

/**
 * Work of some seconds or minutes that writes nothing. Ctrl-C gives it up and leads back to whoever
 * asked for it, instead of ending the program.
 */
final class LongWork {
  private static final String CTRL_C = "INT";

  private LongWork() {}

  /** What came of it, or why nothing did: a thread of another pool would wrap the exception. */
  private record Result<T>(T value, Throwable failure) {}

  /**
   * The result; its own exceptions come through as they are.
   *
   * @throws CancellationException when Ctrl-C was pressed
   */
  static <T> T of(Supplier<T> work) {
    // Parallel streams inside the work run in the pool of the thread that starts them, so that
    // giving up the pool gives up all of it.
    ForkJoinPool pool = new ForkJoinPool();
    try {
      ForkJoinTask<Result<T>> task = pool.submit(() -> result(work));
      Object before = Signals.register(CTRL_C, () -> task.cancel(true));
      try {
        return value(task.join());
      } finally {
        Signals.unregister(CTRL_C, before);
      }
    } finally {
      pool.shutdownNow();
    }
  }

  private static <T> Result<T> result(Supplier<T> work) {
    try {
      return new Result<>(work.get(), null);
    } catch (Throwable e) {
      return new Result<>(null, e);
    }
  }

  private static <T> T value(Result<T> result) {
    if (result.failure() instanceof RuntimeException e) {
      throw e;
    }
    if (result.failure() instanceof Error e) {
      throw e;
    }
    return result.value();
  }

  /** Lets a moment of writing come to its end before Ctrl-C is heard. */
  static <T> T uninterrupted(Supplier<T> writing) {
    Object before = Signals.register(CTRL_C, () -> {});
    try {
      return writing.get();
    } finally {
      Signals.unregister(CTRL_C, before);
    }
  }
}
