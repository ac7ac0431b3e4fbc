package thwartwise.shell;

import thwartwise.measure.NearestWord;
import thwartwise.measure.PrintableText;

/** Words that cannot be carried out: one line naming the word and the way out. */
final class UsageError extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private UsageError(String message) {
    super(message);
  }

  static UsageError unknownCommand(String word, java.util.Collection<String> known) {
    String hint =
        NearestWord.nearest(word, known).map(n -> " Did you mean \"" + n + "\"?").orElse("");
    return new UsageError(
        "Unknown command "
            + PrintableText.excerpt(word)
            + "."
            + hint
            + " \"help\" lists all commands.");
  }

  static UsageError unknownOption(
      ShellCommand command, String word, java.util.Collection<String> known) {
    String hint =
        NearestWord.nearest(word, known).map(n -> " Did you mean \"" + n + "\"?").orElse("");
    return new UsageError(
        "%s: unknown option %s.%s \"help %s\" lists its options."
            .formatted(command.getName(), PrintableText.excerpt(word), hint, command.getName()));
  }

  static UsageError missingValue(ShellCommand command, OptionWord option) {
    return new UsageError(
        "%s: %s needs a value, %s: %s."
            .formatted(command.getName(), option.flag(), option.value(), option.meaning()));
  }

  static UsageError needlessValue(ShellCommand command, OptionWord option) {
    return new UsageError(
        "%s: %s takes no value. Leave out everything from the \"=\"."
            .formatted(command.getName(), option.flag()));
  }

  static UsageError missingOption(ShellCommand command, OptionWord option) {
    return new UsageError(
        "%s: %s %s is missing, %s."
            .formatted(command.getName(), option.flag(), option.value(), option.meaning()));
  }

  static UsageError repeatedOption(ShellCommand command, OptionWord option) {
    return new UsageError(
        "%s: %s is given twice. Keep one.".formatted(command.getName(), option.flag()));
  }

  static UsageError surplusWord(ShellCommand command, String word) {
    return new UsageError(
        "%s: %s is one word too many. Put quotes around a name or path that holds spaces."
            .formatted(command.getName(), PrintableText.excerpt(word)));
  }

  /** A value that somebody else refuses. */
  static UsageError refused(ShellCommand command, String reason) {
    return new UsageError(command.getName() + ": " + reason);
  }

  static UsageError unreadable(String word) {
    return new UsageError(
        "The letters of %s do not come through in this language setting. Run it with LC_ALL=C.UTF-8, or type it at our own prompt."
            .formatted(PrintableText.excerpt(word)));
  }

  static UsageError openQuote(char quote) {
    return new UsageError(
        "A quotation mark (%s) is opened and never closed. Close it, or leave it out."
            .formatted(quote));
  }

  static UsageError notAPath(String typed) {
    return new UsageError(
        PrintableText.excerpt(typed) + " cannot be a file or folder name. Type another one.");
  }
}
