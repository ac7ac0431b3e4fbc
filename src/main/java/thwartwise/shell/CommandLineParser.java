package thwartwise.shell;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.shell.core.command.CommandArgument;
import org.springframework.shell.core.command.CommandParser;
import org.springframework.shell.core.command.ParsedInput;

/**
 * Turns words into a command with its options.
 *
 * <p>It takes the argument list as the operating system gave it, so quoted words stay whole; a
 * value may be a negative number; an unknown word is refused and not ignored.
 */
final class CommandLineParser implements CommandParser {
  private static final Map<String, String> OTHER_NAMES =
      Map.of("--help", "help", "-h", "help", "--version", "version", "exit", "quit");

  private final Map<String, ShellCommand> commands;
  private final Optional<String> folder;

  CommandLineParser(List<ShellCommand> commands) {
    this(commands, Optional.empty());
  }

  /**
   * @param folder for a line that names none
   */
  CommandLineParser(List<ShellCommand> commands, Optional<String> folder) {
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
    words.forEach(CommandLineParser::refuseUnreadable);
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

  /**
   * Refuses the character that Java substitutes for unreadable ones, under a locale without
   * accents.
   */
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

  /** Reads the words after a command's name. */
  private static final class OptionReader {
    private final ShellCommand command;
    private final List<String> words;
    private final ParsedInput.Builder read = ParsedInput.builder();
    private final Set<OptionWord> seen = new HashSet<>();
    private int next;
    private int arguments;

    OptionReader(ShellCommand command, List<String> words) {
      this.command = command;
      this.words = words;
    }

    ParsedInput read() {
      read.commandName(command.getName());
      while (next < words.size()) {
        String word = words.get(next++);
        if (word.startsWith("-")) {
          takeOption(word);
        } else {
          takeArgument(word);
        }
      }
      refuseMissing();
      return read.build();
    }

    private void takeOption(String word) {
      int equals = word.indexOf('=');
      OptionWord option = named(equals < 0 ? word : word.substring(0, equals));
      if (!seen.add(option) && !option.repeatable()) {
        throw UsageError.repeatedOption(command, option);
      }
      read.addOption(option.with(equals < 0 ? following(option) : given(option, word, equals)));
    }

    private OptionWord named(String flag) {
      return command.words().stream()
          .filter(option -> option.flag().equals(flag))
          .findFirst()
          .orElseThrow(() -> UsageError.unknownOption(command, flag, flags()));
    }

    private List<String> flags() {
      return command.words().stream().map(OptionWord::flag).toList();
    }

    private String given(OptionWord option, String word, int equals) {
      if (option.isSwitch()) {
        throw UsageError.needlessValue(command, option);
      }
      return filled(option, word.substring(equals + 1));
    }

    /** A single dash may begin a value, such as a negative number; two dashes begin an option. */
    private String following(OptionWord option) {
      if (option.isSwitch()) {
        return "true";
      }
      if (next == words.size() || words.get(next).startsWith("--")) {
        throw UsageError.missingValue(command, option);
      }
      return filled(option, words.get(next++));
    }

    private String filled(OptionWord option, String value) {
      if (value.isBlank()) {
        throw UsageError.missingValue(command, option);
      }
      return value;
    }

    private void takeArgument(String word) {
      if (command.argument().isEmpty() || arguments >= command.mostArguments()) {
        throw UsageError.surplusWord(command, word);
      }
      read.addArgument(new CommandArgument(arguments++, word));
    }

    private void refuseMissing() {
      command.words().stream()
          .filter(option -> option.required() && !seen.contains(option))
          .findFirst()
          .ifPresent(
              option -> {
                throw UsageError.missingOption(command, option);
              });
    }
  }

  /**
   * Splits a typed line into words at spaces. A quotation mark at the start of a word, or after its
   * {@code =}, keeps everything up to the next one together; anywhere else it is a letter like any
   * other, so that {@code O'Dell} and {@code C:\boats} stay as typed.
   */
  static final class TypedLine {
    private static final char NO_QUOTE = 0;

    private final List<String> words = new ArrayList<>();
    private final StringBuilder word = new StringBuilder();
    private boolean inWord;
    private char quote = NO_QUOTE;

    private TypedLine() {}

    static List<String> words(String line) {
      TypedLine typed = new TypedLine();
      line.chars().forEach(letter -> typed.take((char) letter));
      typed.endLine();
      return List.copyOf(typed.words);
    }

    private void take(char letter) {
      if (quote != NO_QUOTE) {
        takeQuoted(letter);
      } else if (opensQuote(letter)) {
        quote = letter;
        inWord = true;
      } else if (Character.isWhitespace(letter)) {
        endWord();
      } else {
        word.append(letter);
        inWord = true;
      }
    }

    private void takeQuoted(char letter) {
      if (letter == quote) {
        quote = NO_QUOTE;
      } else {
        word.append(letter);
      }
    }

    private boolean opensQuote(char letter) {
      boolean atStart = !inWord || (word.length() > 0 && word.charAt(word.length() - 1) == '=');
      return atStart && (letter == '"' || letter == '\'');
    }

    private void endWord() {
      if (inWord) {
        words.add(word.toString());
      }
      word.setLength(0);
      inWord = false;
    }

    private void endLine() {
      if (quote != NO_QUOTE) {
        throw UsageError.openQuote(quote);
      }
      endWord();
    }
  }
}
