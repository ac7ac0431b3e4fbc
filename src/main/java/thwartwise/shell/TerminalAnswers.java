package thwartwise.shell;

import org.jline.reader.LineReader;
import org.jline.terminal.Terminal;

/**
 * Answers typed at a terminal. Each question has a line editor of its own, so what was typed at one
 * does not turn up at the next.
 */
record TerminalAnswers(Terminal terminal) implements Lines {

  @Override
  public String readInput(String prompt) {
    return Terminals.editor(terminal)
        .variable(LineReader.DISABLE_HISTORY, true)
        .build()
        .readLine(prompt);
  }
}
