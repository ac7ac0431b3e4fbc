package thwartwise.shell;

import java.util.List;
import java.util.Optional;
import org.springframework.shell.core.command.Command;
import org.springframework.shell.core.command.CommandOption;
import thwartwise.archive.Workspace;

/**
 * A command with its words and its help page.
 *
 * <p>Commands implement the shell library's interface directly instead of annotating a method: an
 * annotated method cannot give back an exit code, and starts a validator that costs half a second.
 */
interface ShellCommand extends Command {

  /** The options it understands, in the order of its help page. */
  List<OptionWord> words();

  /** What the one word without dashes is called, when it takes one. */
  default Optional<String> argument() {
    return Optional.empty();
  }

  /** How many words without dashes it takes, when it takes any. */
  default int mostArguments() {
    return 1;
  }

  /** Words that may follow, other than its options. */
  default List<String> proposals(List<String> before, Workspace workspace) {
    return List.of();
  }

  /** The lines of its help page under the usage line, at most 80 columns. */
  String details();

  @Override
  String getName();

  @Override
  String getDescription();

  @Override
  default List<CommandOption> getOptions() {
    return words().stream().map(OptionWord::option).toList();
  }
}
