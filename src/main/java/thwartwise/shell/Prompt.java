package thwartwise.shell;

import java.io.IOError;
import java.io.PrintWriter;
import java.util.Optional;
import org.jline.reader.EndOfFileException;
import org.jline.reader.UserInterruptException;
import org.springframework.shell.core.ShellRunner;

/** The interactive shell: reads a line, runs it, and asks for the next until somebody leaves. */
final class Prompt implements ShellRunner {
  private static final String PROMPT = "thwartwise> ";

  private final LineSource lines;
  private final PrintWriter out;
  private final CommandRunner runner;
  private final ProgramVersion version;

  Prompt(LineSource lines, PrintWriter out, CommandRunner runner, ProgramVersion version) {
    this.lines = lines;
    this.out = out;
    this.runner = runner;
    this.version = version;
  }

  @Override
  public void run(String[] arguments) {
    say("thwartwise " + version.number() + ": how much a small open boat can carry.");
    say("\"walk\" measures a boat, \"demo\" shows an example, \"help\" lists the rest.");
    Optional<String> line = typed();
    while (line.filter(l -> !leaves(l)).isPresent()) {
      run(line.get());
      line = typed();
    }
  }

  /** The next line; empty at the end of the input. Ctrl-C only discards the line. */
  private Optional<String> typed() {
    try {
      return Optional.of(lines.readInput(PROMPT).strip());
    } catch (UserInterruptException e) {
      say("Type \"quit\", or press Ctrl-D, to leave.");
      return Optional.of("");
    } catch (EndOfFileException | IOError e) {
      return Optional.empty();
    }
  }

  private static boolean leaves(String line) {
    return line.equals(QuitCommand.NAME) || line.equals("exit");
  }

  private void run(String line) {
    if (!line.isEmpty()) {
      runner.run(line);
    }
  }

  private void say(String text) {
    out.println(text);
    out.flush();
  }
}
