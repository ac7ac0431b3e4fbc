package thwartwise.shell;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import org.jline.terminal.Terminal;
import org.springframework.shell.core.InputReader;

/** Where typed lines come from. */
interface LineSource extends InputReader {

  /**
   * The next line, as typed.
   *
   * @throws org.jline.reader.UserInterruptException on Ctrl-C
   * @throws org.jline.reader.EndOfFileException on Ctrl-D or when there are no more lines
   */
  @Override
  String readInput(String prompt);

  /** The same, where some lines are likely; a terminal completes them. */
  default String readInput(String prompt, List<String> likely) {
    return readInput(prompt);
  }

  /** Finds out who answers when the first answer is wanted: most one-shot commands ask nothing. */
  final class LazyLineSource implements LineSource, AutoCloseable {
    private final PrintWriter out;
    private Optional<Terminal> terminal = Optional.empty();
    private Optional<LineSource> lines = Optional.empty();

    LazyLineSource(PrintWriter out) {
      this.out = out;
    }

    @Override
    public String readInput(String prompt) {
      return readInput(prompt, List.of());
    }

    @Override
    public String readInput(String prompt, List<String> likely) {
      if (lines.isEmpty()) {
        lines = Optional.of(open());
      }
      return lines.orElseThrow().readInput(prompt, likely);
    }

    private LineSource open() {
      terminal = Terminals.open();
      return terminal
          .<LineSource>map(TerminalAnswers::new)
          .orElseGet(() -> PipedLines.standardInput(out));
    }

    /** Gives the terminal back as it was found. */
    @Override
    public void close() {
      terminal.ifPresent(Terminals::close);
    }
  }
}
