package thwartwise.shell;

import java.util.List;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;

/**
 * Leaves the shell; the prompt recognises its name and ends. As a one-shot there is nothing to
 * leave.
 */
final class QuitCommand implements ShellCommand {
  static final String NAME = "quit";

  @Override
  public String getName() {
    return NAME;
  }

  @Override
  public String getDescription() {
    return "leave (also: exit, or Ctrl-D)";
  }

  @Override
  public List<OptionWord> words() {
    return List.of(OptionWord.FOLDER);
  }

  @Override
  public String details() {
    return "Nothing is lost: answers and records are on disk already.\n";
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    return Exit.NOTHING_HOLDS_BACK.status();
  }
}
