package thwartwise.shell;

import java.util.List;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;

/** Prints the version of the program. */
final class VersionCommand implements ShellCommand {
  private final ProgramVersion version;

  VersionCommand(ProgramVersion version) {
    this.version = version;
  }

  @Override
  public String getName() {
    return "version";
  }

  @Override
  public String getDescription() {
    return "say which version this is";
  }

  @Override
  public List<OptionWord> words() {
    return List.of(OptionWord.FOLDER);
  }

  @Override
  public String details() {
    return "Every record names the version that worked it out.\n";
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    context.outputWriter().println("thwartwise " + version.number());
    return Exit.NOTHING_HOLDS_BACK.status();
  }
}
