package thwartwise.shell;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import thwartwise.boat.Boat;
import thwartwise.files.boat.BoatFile;
import thwartwise.files.rules.RuleSetFile;
import thwartwise.inspection.Inspection;
import thwartwise.report.SpreadPage;
import thwartwise.rules.RuleBook;
import thwartwise.spread.BoatSpread;
import thwartwise.spread.InputKind;

/** Prints how sure the answer for a boat is, and what to measure again. */
final class SpreadCommand implements ShellCommand {
  private final Inspector inspector;

  SpreadCommand(Inspector inspector) {
    this.inspector = inspector;
  }

  @Override
  public String getName() {
    return "spread";
  }

  @Override
  public String getDescription() {
    return "say how sure the answer is, and what to measure again";
  }

  @Override
  public List<OptionWord> words() {
    return List.of(
        OptionWord.BOAT,
        CarefulMeasurements.BETTER,
        OptionWord.RULES,
        UnitsChoice.UNITS,
        OptionWord.FOLDER);
  }

  @Override
  public String details() {
    return """
        Moves every measurement of a boat by as much as it may be off and says in how
        many of 100 boats measured like this the answer would be fewer people, and
        which one or two measurements are worth ten more minutes. Nothing is kept. It
        never allows more people than inspect does. Unless the boat file says how a
        thing was measured, it counts as badly taken as the rules allow for; try with
        --better what care would be worth (one standard deviation):
          hull weight, people's weights   bathroom scales on hard ground   2 %
          kit weights                     luggage scale                    1 %
          hull balance                    balanced on a roller             2 cm
          hull inclined                   afloat, a weight moved across    2 cm
          half-breadths, seat heights     steel tape on a flat side        3 mm
          bottom heights, edge heights    steel tape from a taut line      5 mm
          shell thickness                 callipers                        5 %
          soaked density                  a soaked offcut weighed          3 %
          chamber litres                  filled from a litre jug          2 %

        Exit codes, for scripts:
          0  at least 95 of 100 boats measured like this carry what is recommended
          1  fewer do, or nobody is recommended
          2  the file cannot be used
        """;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    CommandInput given = new CommandInput(context);
    Path file = BoatChoice.of(given, this);
    Boat boat = UnitsChoice.of(BoatFile.read(file), given, this);
    Set<InputKind> better = CarefulMeasurements.of(given, this);
    Optional<BoatSpread> spread = spread(file, boat, RuleBooks.of(given), better);
    context.outputWriter().println(SpreadPage.of(boat, spread, better).stripTrailing());
    boolean sure = spread.filter(s -> s.recommended() > 0 && !s.isLowered()).isPresent();
    return (sure ? Exit.NOTHING_HOLDS_BACK : Exit.HOLDS_BACK).status();
  }

  private Optional<BoatSpread> spread(Path file, Boat boat, RuleBook book, Set<InputKind> better) {
    return BoatChoice.consistent(
        file,
        () ->
            InterruptibleWork.of(
                "Working out how sure the answer is",
                progress ->
                    Inspection.spreadOf(
                        boat,
                        book,
                        RuleSetFile.measuringSpreads(),
                        better,
                        inspector.today(),
                        progress)));
  }
}
