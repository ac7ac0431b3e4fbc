package thwartwise.shell;

import java.util.List;
import java.util.Optional;
import org.springframework.shell.core.command.Command;
import org.springframework.shell.core.command.CommandOption;
import thwartwise.archive.Workspace;

/**
 * A command with its words and its help page.
 *
 * <p>Commands implement the shell library's interface instead of annotating a method: an annotated
 * method cannot return an exit code, and starts a validator that costs half a second.
 */
interface ShellCommand extends Command {

  /** The options it understands, in the order of its help page. */
  List<OptionWord> words();

  /** The word for its one argument without dashes, when it takes one. */
  default Optional<String> argument() {
    return Optional.empty();
  }

  /** The greatest number of arguments without dashes, when it takes any. */
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
