package thwartwise.shell;

import java.util.List;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import thwartwise.walk.engine.Answer;

/** The walk that asks only what has changed on a boat measured before. */
final class RefitCommand implements ShellCommand {
  private final WalkCommand walk;

  RefitCommand(WalkCommand walk) {
    this.walk = walk;
  }

  @Override
  public String getName() {
    return "refit";
  }

  @Override
  public String getDescription() {
    return "tell what has changed on a boat, inspect it again, compare";
  }

  @Override
  public List<OptionWord> words() {
    return List.of(OptionWord.FOLDER);
  }

  @Override
  public String details() {
    return """
        Asks which boat of the folder it is, then what has changed: kit added, taken
        out or moved, a chamber opened, sealed or tested, a new cut or hole, the hull
        weighed again, other people. Leak tests older than twelve months are asked for
        again. All else is taken from the boat file. Then the boat is inspected, and
        what came of the changes is set beside the last record.

        The words of "walk" work here too, and answers are kept as they are there.
        Exit codes are those of "inspect"; 2 when it was left before its end, or when
        no boat was measured yet.
        """;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    if (new CommandInput(context).workspace().boats().isEmpty()) {
      throw UsageError.refused(this, "no boat was measured here yet. \"walk\" measures one.");
    }
    return walk.execute(context, List.of(new Answer("way", "changed")));
  }
}
