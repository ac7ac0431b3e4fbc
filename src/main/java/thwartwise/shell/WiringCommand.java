package thwartwise.shell;

import java.util.List;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import thwartwise.boat.Boat;
import thwartwise.files.boat.BoatFile;
import thwartwise.report.WiringPage;

/** Prints what is wrong with wires and fuses, and which ones are needed. */
final class WiringCommand implements ShellCommand {
  private final Inspector inspector;

  WiringCommand(Inspector inspector) {
    this.inspector = inspector;
  }

  @Override
  public String getName() {
    return "wiring";
  }

  @Override
  public String getDescription() {
    return "work out wires and fuses, and draw the circuits";
  }

  @Override
  public List<OptionWord> words() {
    return List.of(OptionWord.BOAT, UnitsChoice.UNITS, OptionWord.FOLDER);
  }

  @Override
  public String details() {
    return """
        Works out for each circuit of the boat file what its wire loses and may
        carry, which wire and fuse it needs and how near the battery the fuse
        belongs; names what is to be put right, and draws the circuits with fuses and
        switches. Nothing is kept. "help electrics" shows how to write a circuit.

        Exit codes, for scripts:
          0  nothing found against the wires that are stated
          1  something is to be put right, or no circuit is stated
          2  the file cannot be used
        """;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    CommandInput given = new CommandInput(context);
    Boat boat = UnitsChoice.of(BoatFile.read(BoatChoice.of(given, this)), given, this);
    WiringPage.Result wiring = WiringPage.of(boat, inspector.today());
    context.outputWriter().println(wiring.text().stripTrailing());
    return (wiring.faultless() ? Exit.NOTHING_HOLDS_BACK : Exit.HOLDS_BACK).status();
  }
}
