package thwartwise.shell;

import java.io.File;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.CommandOption;
import thwartwise.archive.PageFile;
import thwartwise.archive.Workspace;
import thwartwise.measure.PrintableText;

/** The words after a command's name, converted to what commands ask for. */
record CommandInput(CommandContext context) {

  Optional<String> text(OptionWord option) {
    return Optional.ofNullable(context.getOptionByLongName(option.name()))
        .map(CommandOption::value);
  }

  boolean has(OptionWord option) {
    return text(option).isPresent();
  }

  /** The value of an option that the parser has found. */
  Path path(OptionWord option) {
    return text(option).map(CommandInput::asPath).orElseThrow();
  }

  /** Every value of a repeatable option, in the order typed. */
  List<Path> paths(OptionWord option) {
    return context.parsedInput().options().stream()
        .filter(given -> option.name().equals(given.longName()))
        .map(given -> asPath(given.value()))
        .toList();
  }

  /**
   * Saves a page in the file of {@link OptionWord#HTML}.
   *
   * @return where it is, in words
   */
  String savePage(String page) {
    Path file = path(OptionWord.HTML);
    PageFile.write(file, page);
    return "The page is in " + PrintableText.of(file.toString()) + ". Open it in a browser.";
  }

  /**
   * The folder of boats, drafts and records: the one named, or the one in the user's home. Its path
   * is absolute, because a message may stand where the start of a name is missing or is a capital.
   */
  Workspace workspace() {
    return text(OptionWord.FOLDER)
        .map(folder -> new Workspace(asPath(folder).toAbsolutePath()))
        .orElseGet(CommandInput::homeWorkspace)
        .recovered();
  }

  static Workspace homeWorkspace() {
    return new Workspace(home().resolve("thwartwise"));
  }

  private static Path home() {
    return Path.of(System.getProperty("user.home"));
  }

  /** In our own shell nobody else turns the tilde into the home folder. */
  static String fromHome(String typed) {
    return typed.startsWith("~/") ? home().resolve(typed.substring(2)).toString() : typed;
  }

  /** The same path as it is typed, shorter if it lies in the home folder. */
  static String toHome(Path file) {
    return File.separatorChar == '/' && file.startsWith(home()) && !file.equals(home())
        ? "~/" + home().relativize(file)
        : file.toString();
  }

  static Path asPath(String typed) {
    try {
      return Path.of(fromHome(typed));
    } catch (InvalidPathException e) {
      throw UsageError.notAPath(typed);
    }
  }
}
