package thwartwise.shell;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.shell.core.command.CommandParser;
import org.springframework.shell.core.command.ParsedInput;

/**
 * Turns words into a command with its options.
 *
 * <p>It takes the argument list as the operating system gave it, so quoted words stay whole; a
 * value may be a negative number; and what is not known is refused, not ignored.
 */
final class WordsParser implements CommandParser {
  private static final Map<String, String> OTHER_NAMES =
      Map.of("--help", "help", "-h", "help", "--version", "version", "exit", "quit");

  private final Map<String, ShellCommand> commands;
  private final Optional<String> folder;

  WordsParser(List<ShellCommand> commands) {
    this(commands, Optional.empty());
  }

  /**
   * @param folder taken where a line names none
   */
  WordsParser(List<ShellCommand> commands, Optional<String> folder) {
    this.folder = folder;
    this.commands =
        commands.stream().collect(Collectors.toUnmodifiableMap(ShellCommand::getName, c -> c));
  }

  @Override
  public ParsedInput parse(String line) {
    return parse(TypedLine.words(line));
  }

  /**
   * Reads at least one word.
   *
   * @throws UsageError when a word is unknown, missing or too many
   */
  ParsedInput parse(List<String> words) {
    words.forEach(WordsParser::refuseUnreadable);
    ShellCommand command = named(words.get(0));
    List<String> rest = words.subList(1, words.size());
    if (rest.contains("--help") || rest.contains("-h")) {
      return HelpCommand.about(command);
    }
    return new OptionReader(command, inFolder(rest)).read();
  }

  private List<String> inFolder(List<String> words) {
    String flag = OptionWord.FOLDER.flag();
    boolean named = words.stream().anyMatch(w -> w.equals(flag) || w.startsWith(flag + "="));
    return named
        ? words
        : Stream.concat(words.stream(), folder.stream().flatMap(f -> Stream.of(flag, f))).toList();
  }

  /** Under a locale without accents Java puts this in place of what it could not read. */
  private static void refuseUnreadable(String word) {
    if (word.indexOf('\uFFFD') >= 0) {
      throw UsageError.unreadable(word);
    }
  }

  private ShellCommand named(String word) {
    ShellCommand command = commands.get(OTHER_NAMES.getOrDefault(word, word));
    if (command == null) {
      throw UsageError.unknownCommand(word, commands.keySet());
    }
    return command;
  }
}
