package thwartwise.shell;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Function;
import thwartwise.walk.InterimSummary;
import thwartwise.walk.engine.ReplayResult.PartialBoat;

/**
 * Prints between two questions what the boat can do as far as it is known. A thread of its own
 * computes it: no question waits for it longer than a blink, and a late result is printed before a
 * later question.
 */
final class InterimLine implements AutoCloseable {
  private static final long BLINK_MILLIS = 200;

  private final Function<PartialBoat, Optional<String>> words;
  private final ExecutorService worker;
  private Optional<PartialBoat> asked = Optional.empty();
  private Optional<Future<Optional<String>>> pending = Optional.empty();
  private Optional<String> shown = Optional.empty();

  InterimLine(Function<PartialBoat, Optional<String>> words) {
    this.words = words;
    this.worker = Executors.newSingleThreadExecutor(InterimLine::thread);
  }

  /** The line at a terminal; without a reader nothing is computed. */
  static InterimLine atTerminal(Function<PartialBoat, Optional<String>> words) {
    return new InterimLine(System.console() == null ? nobodyWatches -> Optional.empty() : words);
  }

  private static Thread thread(Runnable work) {
    Thread thread = new Thread(work, "running line");
    thread.setDaemon(true);
    return thread;
  }

  /** Takes what is known after an answer; the same boat is not computed again. */
  void known(Optional<PartialBoat> boat) {
    if (boat.equals(asked)) {
      return;
    }
    asked = boat;
    pending.ifPresent(old -> old.cancel(true));
    pending = boat.map(b -> worker.submit(() -> words.apply(b)));
  }

  /** The lines to print now, if there is a new result. */
  List<String> due() {
    Optional<String> line = pending.flatMap(this::ready);
    if (line.isEmpty() || line.equals(shown)) {
      return List.of();
    }
    boolean first = shown.isEmpty();
    shown = line;
    return first ? List.of(InterimSummary.FIRST, line.get()) : List.of(line.get());
  }

  private Optional<String> ready(Future<Optional<String>> work) {
    try {
      Optional<String> line = work.get(BLINK_MILLIS, TimeUnit.MILLISECONDS);
      pending = Optional.empty();
      return line;
    } catch (TimeoutException notYet) {
      return Optional.empty();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return Optional.empty();
    } catch (ExecutionException | CancellationException nothingToSay) {
      // A failure here must not end the walk; whatever is wrong is reported at its end.
      pending = Optional.empty();
      return Optional.empty();
    }
  }

  @Override
  public void close() {
    worker.shutdownNow();
  }
}
