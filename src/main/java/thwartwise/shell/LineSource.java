package thwartwise.shell;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.Reference;
import org.jline.reader.impl.completer.ArgumentCompleter.ArgumentLine;
import org.jline.reader.impl.completer.StringsCompleter;
import org.jline.terminal.Terminal;
import org.springframework.shell.core.InputReader;

/** A source of typed lines. */
interface LineSource extends InputReader {

  /**
   * The next line, as typed.
   *
   * @throws org.jline.reader.UserInterruptException on Ctrl-C
   * @throws org.jline.reader.EndOfFileException on Ctrl-D or when there are no more lines
   */
  @Override
  String readInput(String prompt);

  /** The same with likely lines, which a terminal completes. */
  default String readInput(String prompt, List<String> likely) {
    return readInput(prompt);
  }

  /** Whether somebody types each line after seeing the question. */
  default boolean isTerminal() {
    return false;
  }

  /**
   * Opens the terminal or the pipe when the first answer is needed, because most one-shot commands
   * ask nothing.
   */
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
      return opened().readInput(prompt, likely);
    }

    @Override
    public boolean isTerminal() {
      return opened().isTerminal();
    }

    private LineSource opened() {
      if (lines.isEmpty()) {
        lines = Optional.of(open());
      }
      return lines.orElseThrow();
    }

    private LineSource open() {
      terminal = Terminals.open();
      return terminal
          .<LineSource>map(TerminalAnswers::new)
          .orElseGet(() -> PipedLines.standardInput(out));
    }

    /** Restores the terminal as it was found. */
    @Override
    public void close() {
      terminal.ifPresent(Terminals::close);
    }
  }

  /**
   * Lines from a pipe or a file, always UTF-8. Each is repeated after its prompt, so that the
   * output reads like the conversation.
   */
  record PipedLines(BufferedReader in, PrintWriter out) implements LineSource {

    static PipedLines standardInput(PrintWriter out) {
      return new PipedLines(
          new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8)), out);
    }

    @Override
    public String readInput(String prompt) {
      out.print(prompt);
      out.flush();
      Optional<String> line = next();
      out.println(line.orElse(""));
      out.flush();
      return line.orElseThrow(EndOfFileException::new);
    }

    private Optional<String> next() {
      try {
        return Optional.ofNullable(in.readLine());
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  /**
   * Answers typed at a terminal. Each question has a line editor of its own, so that what was typed
   * at one does not appear at the next.
   */
  record TerminalAnswers(Terminal terminal) implements LineSource {
    private static final String TAB = "complete-or-tab";

    @Override
    public boolean isTerminal() {
      return true;
    }

    @Override
    public String readInput(String prompt) {
      return readInput(prompt, List.of());
    }

    /** A name of several words is completed as one. */
    @Override
    public String readInput(String prompt, List<String> likely) {
      LineReader reader =
          Terminals.editor(terminal)
              .variable(LineReader.DISABLE_HISTORY, true)
              .parser((line, cursor, context) -> new ArgumentLine(line, cursor))
              .completer(new StringsCompleter(likely))
              .build();
      reader.getWidgets().put(TAB, () -> tab(reader, likely));
      reader.getKeyMaps().get(LineReader.MAIN).bind(new Reference(TAB), "\t");
      return reader.readLine(prompt);
    }

    /**
     * A tab is kept where nothing can be completed, because rows of a spreadsheet are pasted with
     * tabs.
     */
    private static boolean tab(LineReader reader, List<String> likely) {
      String typed = reader.getBuffer().upToCursor();
      boolean hasCompletion = likely.stream().anyMatch(word -> word.startsWith(typed));
      reader.callWidget(hasCompletion ? LineReader.EXPAND_OR_COMPLETE : LineReader.SELF_INSERT);
      return true;
    }
  }
}
