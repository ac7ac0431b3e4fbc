package thwartwise.shell;

import java.util.List;
import java.util.Optional;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import thwartwise.archive.Workspace;
import thwartwise.boat.Boat;
import thwartwise.rules.RuleBook;

/** Writes the demo boat's file and inspects it. */
final class DemoCommand implements ShellCommand {
  private final Inspector inspector;

  DemoCommand(Inspector inspector) {
    this.inspector = inspector;
  }

  @Override
  public String getName() {
    return "demo";
  }

  @Override
  public String getDescription() {
    return "write an invented boat's file and inspect it";
  }

  @Override
  public List<OptionWord> words() {
    return List.of(OptionWord.JSON, OptionWord.RULES, OptionWord.FOLDER);
  }

  @Override
  public String details() {
    return """
        Shows the whole job on an invented boat: its file is written to the folder,
        under boats, inspected, and the record kept. Copy the file and change the
        numbers to begin a boat of your own without the walk.

        Exits with 0 when it ran, whatever the boat is like.
        """;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    CommandInput given = new CommandInput(context);
    Workspace workspace = given.workspace();
    RuleBook book = RuleBooks.of(given);
    Boat boat = DemoBoat.asOf(inspector.today());
    var inspection = inspector.inspect(boat, Optional.empty(), book);
    InspectionOutput.keeping(
        given,
        inspection,
        reader -> inspector.keep(inspector.record(inspection, reader).withBoatFile(), workspace));
    return Exit.NOTHING_HOLDS_BACK.status();
  }
}
