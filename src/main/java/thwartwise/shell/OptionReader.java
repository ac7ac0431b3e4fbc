package thwartwise.shell;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.springframework.shell.core.command.CommandArgument;
import org.springframework.shell.core.command.ParsedInput;

/** Reads the words after a command's name. */
final class OptionReader {
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

  /** A single dash may begin a value, as in a negative number; two dashes begin an option. */
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
