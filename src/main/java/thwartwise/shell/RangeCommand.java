package thwartwise.shell;

import java.util.List;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import thwartwise.boat.Boat;
import thwartwise.boat.KeptProof;
import thwartwise.files.boat.BoatFile;
import thwartwise.inspection.ShallowWater;
import thwartwise.passage.PassagePlan;
import thwartwise.report.RangePage;

/** Prints how long motor and battery run, and when to turn back. */
final class RangeCommand implements ShellCommand {
  private final Inspector inspector;

  RangeCommand(Inspector inspector) {
    this.inspector = inspector;
  }

  @Override
  public String getName() {
    return "range";
  }

  @Override
  public String getDescription() {
    return "say how long the motor runs, and when to turn back";
  }

  @Override
  public List<OptionWord> words() {
    return List.of(OptionWord.BOAT, UnitsChoice.UNITS, OptionWord.FOLDER);
  }

  @Override
  public String details() {
    return """
        Works out from the battery's label and from runs timed both ways how long
        each setting of the motor lasts, when to turn back against wind and stream
        with a third in hand, how long rowing home takes, and what a panel gives back
        by month. Nothing is kept. "help electrics" shows what to write of battery,
        motor, runs and panel.

        Exit codes, for scripts:
          0  worked out, and oars or paddles are among the kit
          1  not worked out, a claimed running time is not met, no second way home,
             a proof afloat holds the launch, or in the waters the boat file states
             it does not get home
          2  the file cannot be used
        """;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    CommandInput given = new CommandInput(context);
    Boat boat = UnitsChoice.of(BoatFile.read(BoatChoice.of(given, this)), given, this);
    PassagePlan plan = PassagePlan.of(boat, inspector.today());
    context
        .outputWriter()
        .println(
            RangePage.of(plan, ShallowWater.of(plan.boat(), inspector.today())).stripTrailing());
    boolean open =
        KeptProof.holding(boat.proofs()).isPresent()
            || plan.speeds().isEmpty()
            || plan.claimNotMet().isPresent()
            || plan.rowing().isEmpty()
            || plan.inStatedWaters().filter(way -> !way.getsHome()).isPresent();
    return (open ? Exit.HOLDS_BACK : Exit.NOTHING_HOLDS_BACK).status();
  }
}
