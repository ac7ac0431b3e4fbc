package thwartwise.shell;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jline.builtins.Completers;
import org.jline.reader.Candidate;
import org.jline.reader.Completer;
import org.jline.reader.LineReader;
import org.jline.reader.ParsedLine;
import org.jline.reader.impl.completer.StringsCompleter;
import org.jline.terminal.Terminal;
import thwartwise.archive.Workspace;
import thwartwise.boat.Boat;

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

  /**
   * Completes command names, then the remaining options of the command and its other words, and
   * after an option its value: a file, or a saved boat.
   */
  static final class WordCompleter implements Completer {
    private static final Completer FILES = new Completers.FileNameCompleter();

    private final List<ShellCommand> commands;
    private final Workspace workspace;

    /**
     * @param workspace whose boats are offered
     */
    WordCompleter(List<ShellCommand> commands, Workspace workspace) {
      this.commands = commands;
      this.workspace = workspace;
    }

    @Override
    public void complete(LineReader reader, ParsedLine line, List<Candidate> candidates) {
      List<String> words = line.words();
      Optional<OptionWord> asking = valueOf(words, line.wordIndex());
      if (asking.filter(OptionWord::isPath).isPresent()) {
        FILES.complete(reader, line, candidates);
      }
      new StringsCompleter(
              asking.map(this::boats).orElseGet(() -> proposals(words, line.wordIndex())))
          .complete(reader, line, candidates);
    }

    /** The option whose value stands at that word; empty for the name of an option itself. */
    private Optional<OptionWord> valueOf(List<String> words, int index) {
      return index < 2
          ? Optional.empty()
          : options(words.get(0))
              .filter(option -> !option.isSwitch() && option.flag().equals(words.get(index - 1)))
              .findFirst();
    }

    private List<String> boats(OptionWord option) {
      if (!option.name().equals(OptionWord.BOAT.name())) {
        return List.of();
      }
      return workspace.boats().stream().map(Boat::name).toList();
    }

    private List<String> proposals(List<String> words, int index) {
      if (index == 0) {
        return commands.stream().map(ShellCommand::getName).toList();
      }
      Stream<String> options =
          options(words.get(0)).map(OptionWord::flag).filter(flag -> !words.contains(flag));
      Stream<String> others =
          named(words.get(0))
              .flatMap(known -> known.proposals(words.subList(1, index), workspace).stream());
      return Stream.concat(others, options).toList();
    }

    private Stream<OptionWord> options(String command) {
      return named(command).flatMap(known -> known.words().stream());
    }

    private Stream<ShellCommand> named(String command) {
      return commands.stream().filter(known -> known.getName().equals(command));
    }
  }
}
