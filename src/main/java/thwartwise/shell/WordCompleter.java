package thwartwise.shell;

import java.util.List;
import org.jline.reader.Candidate;
import org.jline.reader.Completer;
import org.jline.reader.LineReader;
import org.jline.reader.ParsedLine;
import org.jline.reader.impl.completer.StringsCompleter;

/** Completes command names, then the options of the command that are not on the line yet. */
final class WordCompleter implements Completer {
  private final List<ShellCommand> commands;

  WordCompleter(List<ShellCommand> commands) {
    this.commands = commands;
  }

  @Override
  public void complete(LineReader reader, ParsedLine line, List<Candidate> candidates) {
    new StringsCompleter(proposals(line.words(), line.wordIndex()))
        .complete(reader, line, candidates);
  }

  private List<String> proposals(List<String> words, int index) {
    if (index == 0) {
      return commands.stream().map(ShellCommand::getName).toList();
    }
    return commands.stream()
        .filter(command -> command.getName().equals(words.get(0)))
        .flatMap(command -> command.words().stream())
        .map(OptionWord::flag)
        .filter(flag -> !words.contains(flag))
        .toList();
  }
}
