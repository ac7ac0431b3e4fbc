package thwartwise.shell;

import java.util.List;
import java.util.Optional;
import org.springframework.shell.core.command.CommandArgument;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import thwartwise.archive.RecordArchive;
import thwartwise.record.RecordEntry;
import thwartwise.report.ComparePage;

/** Compares two records in words. */
final class CompareCommand implements ShellCommand {
  private static final OptionWord BOAT_NAME =
      new OptionWord("boat", "NAME", "the boat, when the records are told by number", false);

  @Override
  public String getName() {
    return "compare";
  }

  @Override
  public String getDescription() {
    return "tell what changed between two records, and what came of it";
  }

  @Override
  public Optional<String> argument() {
    return Optional.of("BEFORE AFTER");
  }

  @Override
  public int mostArguments() {
    return 2;
  }

  @Override
  public List<OptionWord> words() {
    return List.of(BOAT_NAME, OptionWord.HTML, UnitsChoice.UNITS, OptionWord.FOLDER);
  }

  @Override
  public String details() {
    return """
        Tells what changed on the boat, how many people and kilograms that cost or
        gained, and every answer that came out differently. A record is named by its
        file, by its name as "records" prints it, or by its number:

          compare custard-tart/1 custard-tart/2
          compare --boat "Custard Tart" 1 2
          compare --html refit.html custard-tart/1 custard-tart/2

        Nothing is worked out anew. Exits with 0 when it ran, with 2 when a record
        cannot be used.
        """;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    List<CommandArgument> named = context.parsedInput().arguments();
    if (named.size() < mostArguments()) {
      throw UsageError.refused(
          this, "name two records, the older one first. \"records\" lists them.");
    }
    CommandInput given = new CommandInput(context);
    RecordEntry before = UnitsChoice.of(found(named.get(0).value(), given), given, this);
    RecordEntry after = UnitsChoice.of(found(named.get(1).value(), given), given, this);
    String page =
        given.has(OptionWord.HTML)
            ? given.savePage(ComparePage.html(before, after))
            : ComparePage.of(before, after).stripTrailing();
    context.outputWriter().println(page);
    return Exit.NOTHING_HOLDS_BACK.status();
  }

  private static RecordEntry found(String typed, CommandInput given) {
    RecordArchive archive = given.workspace().records();
    String named = CommandInput.fromHome(typed);
    return given
        .text(BOAT_NAME)
        .map(boat -> archive.find(named, archive.boat(BoatChoice.name(boat))))
        .orElseGet(() -> archive.find(named));
  }
}
