package thwartwise.shell;

import java.util.List;
import org.jline.reader.LineReader;
import org.jline.reader.impl.completer.ArgumentCompleter.ArgumentLine;
import org.jline.reader.impl.completer.StringsCompleter;
import org.jline.terminal.Terminal;

/**
 * Answers typed at a terminal. Each question has a line editor of its own, so what was typed at one
 * does not turn up at the next.
 */
record TerminalAnswers(Terminal terminal) implements LineSource {

  @Override
  public String readInput(String prompt) {
    return readInput(prompt, List.of());
  }

  /** A name of several words is completed as one. */
  @Override
  public String readInput(String prompt, List<String> likely) {
    return Terminals.editor(terminal)
        .variable(LineReader.DISABLE_HISTORY, true)
        .parser((line, cursor, context) -> new ArgumentLine(line, cursor))
        .completer(new StringsCompleter(likely))
        .build()
        .readLine(prompt);
  }
}
