package thwartwise.shell;

import java.io.PrintStream;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.LongSupplier;
import org.jline.terminal.Terminal;
import thwartwise.advice.Progress;
import thwartwise.page.FigureText;
import thwartwise.page.Sentence;

/**
 * One line with the progress of some work, rewritten in place and removed at the end. It shows
 * after a second, at a terminal that can return to the start of a line; a pipe or a file never sees
 * it.
 */
final class ProgressLine implements Progress {
  private static final long QUIET_NANOS = 1_000_000_000;
  private static final String FURTHER = "Working out the rest";
  private static final String STOP = " (Ctrl-C stops it)";

  private final Optional<PrintStream> screen;
  private final LongSupplier nanos;
  private final long startedAt;
  private final AtomicReference<Runnable> waiting = new AtomicReference<>();
  private volatile String words;

  /** The crew that is known, in words; blank while it is not. */
  private volatile String crew = "";

  private String shown = "";

  ProgressLine(String words, Optional<PrintStream> screen, LongSupplier nanos) {
    this.words = words;
    this.screen = screen;
    this.nanos = nanos;
    this.startedAt = nanos.getAsLong();
  }

  static ProgressLine withText(String words) {
    return new ProgressLine(words, screen(), System::nanoTime);
  }

  private static Optional<PrintStream> screen() {
    boolean rewrites =
        System.console() != null
            && !Optional.ofNullable(System.getenv("TERM"))
                .orElse("")
                .startsWith(Terminal.TYPE_DUMB);
    return rewrites ? Optional.of(System.out) : Optional.empty();
  }

  /** Shows the number of adults that is sure, until the whole answer is printed. */
  void showAdults(int adults) {
    if (adults > 0) {
      crew = Sentence.capital(FigureText.adults(adults)) + "; now the kilograms";
      words = crew;
    }
  }

  @Override
  public void at(Stage stage, int done, int of) {
    if (stage != Stage.SPREAD) {
      crew = "";
    }
    words =
        switch (stage) {
          case CREW -> "Trying how many people and how much weight it carries";
          case CHANGES -> "Trying changes to the boat: " + done + " of " + of;
          case GAINS -> "Working out what each change gains: " + done + " of " + of;
          case COSTS -> "Working out what each change makes worse: " + done + " of " + of;
          case SPREAD ->
              (crew.isEmpty() ? "Moving each measurement by its spread" : crew)
                  + ": "
                  + done
                  + " of "
                  + of;
        };
  }

  /**
   * Prints an answer by the waiting thread, where this line is not in the way.
   *
   * @param printing run once, soon
   */
  void printBetween(Runnable printing) {
    crew = "";
    words = FURTHER;
    waiting.set(printing);
  }

  /** Prints it, if there is any; only the waiting thread calls this. */
  void printWaiting() {
    Runnable printing = waiting.getAndSet(null);
    if (printing != null) {
      clear();
      printing.run();
    }
  }

  /** Shows the latest progress; only the waiting thread calls this. */
  void refresh() {
    printWaiting();
    if (nanos.getAsLong() - startedAt >= QUIET_NANOS) {
      show(words + STOP);
    }
  }

  /** Clears the line; the terminal may have added "^C" to it. */
  void clear() {
    if (!shown.isEmpty()) {
      shown += "^C";
      show("");
    }
  }

  /** Blanks instead of control sequences, because they do the same on every terminal. */
  private void show(String line) {
    if (!line.equals(shown)) {
      String rest = " ".repeat(Math.max(0, shown.length() - line.length()));
      screen.ifPresent(
          s -> {
            s.print("\r" + line + rest + (line.isEmpty() ? "\r" : ""));
            s.flush();
          });
      shown = line;
    }
  }
}
