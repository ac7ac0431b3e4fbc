package thwartwise.shell;

import java.util.List;
import org.jline.reader.LineReader;
import org.jline.terminal.Terminal;
import thwartwise.archive.Workspace;

/** Commands typed at a terminal, with completion, and a history that ends with the session. */
record CommandLines(LineReader reader) implements LineSource {

  static CommandLines at(Terminal terminal, List<ShellCommand> commands, Workspace workspace) {
    return new CommandLines(
        Terminals.editor(terminal).completer(new WordCompleter(commands, workspace)).build());
  }

  @Override
  public String readInput(String prompt) {
    return reader.readLine(prompt);
  }
}
