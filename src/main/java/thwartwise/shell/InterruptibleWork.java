package thwartwise.shell;

import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jline.utils.Signals;

/**
 * Work of some seconds or minutes that writes nothing, with a line for its progress. Ctrl-C stops
 * the work and returns to the caller instead of ending the program.
 */
final class InterruptibleWork {
  private static final String CTRL_C = "INT";
  private static final long REFRESH_MILLIS = 100;

  /**
   * Makes a thread of the pool look for work. Once, all threads of a pool slept while a part of the
   * work was waited for (Java 17); nothing in it would have woken them.
   */
  private static final Runnable WAKE = () -> {};

  private InterruptibleWork() {}

  /** The result, or the exception: a thread of another pool would wrap it. */
  private record Result<T>(T value, Throwable failure) {}

  /**
   * The result; its own exceptions pass through unchanged.
   *
   * @param what is being done, in words, for the person who waits
   * @throws CancellationException when Ctrl-C was pressed
   */
  static <T> T of(String what, Supplier<T> work) {
    return of(what, unused -> work.get());
  }

  /** The same for work that reports its progress. */
  static <T> T of(String what, Function<ProgressLine, T> work) {
    ProgressLine line = ProgressLine.withText(what);
    // Parallel streams inside the work run in the pool of the thread that starts them, so that
    // stopping the pool stops all of it.
    ForkJoinPool pool = new ForkJoinPool();
    try {
      ForkJoinTask<Result<T>> task = pool.submit(() -> result(() -> work.apply(line)));
      Object before = Signals.register(CTRL_C, () -> task.cancel(true));
      try {
        Result<T> result = awaited(task, pool, line);
        line.printWaiting();
        return value(result);
      } finally {
        Signals.unregister(CTRL_C, before);
        line.clear();
      }
    } finally {
      pool.shutdownNow();
    }
  }

  private static <T> Result<T> awaited(
      ForkJoinTask<Result<T>> task, ForkJoinPool pool, ProgressLine line) {
    while (true) {
      try {
        return task.get(REFRESH_MILLIS, TimeUnit.MILLISECONDS);
      } catch (TimeoutException stillAtIt) {
        line.refresh();
        pool.execute(WAKE);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        throw new CancellationException();
      } catch (ExecutionException e) {
        throw new IllegalStateException(e);
      }
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

  /** Finishes a moment of writing before Ctrl-C is handled. */
  static <T> T uninterrupted(Supplier<T> writing) {
    Object before = Signals.register(CTRL_C, () -> {});
    try {
      return writing.get();
    } finally {
      Signals.unregister(CTRL_C, before);
    }
  }
}
