package thwartwise.shell;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import org.springframework.shell.core.command.CommandArgument;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import thwartwise.archive.RecordArchive;
import thwartwise.json.UnusableInput;
import thwartwise.measure.PrintableText;
import thwartwise.record.BoatRecords;
import thwartwise.report.RecordsPage;

/** Lists the saved records, or checks whether they still fit together. */
final class RecordsCommand implements ShellCommand {
  static final OptionWord BOAT_NAME =
      new OptionWord("boat", "NAME", "only the records of this boat", false);
  private static final String CHECK = "check";

  @Override
  public String getName() {
    return "records";
  }

  @Override
  public String getDescription() {
    return "list the records kept, or check that none was changed";
  }

  @Override
  public Optional<String> argument() {
    return Optional.of(CHECK);
  }

  @Override
  public List<OptionWord> words() {
    return List.of(BOAT_NAME, OptionWord.FOLDER);
  }

  @Override
  public String details() {
    return """
        Lists every record with its day, verdict, crew, load and who made it. With
        "records check" it walks the chain of each boat instead and says what was
        changed, added or lost: every record carries a hash of its own content, that
        of the record before it and those of its pages, and lists of the records and
        of the boats lie next to them.
        A record is never written over; inspect with --corrects keeps a new one that
        names the old.

        Exit codes, for scripts:
          0  listed; or nothing was changed, added or lost
          1  something was changed, added or lost
          2  there are no records there, or they cannot be read
        """;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    CommandInput given = new CommandInput(context);
    boolean check = checks(context);
    List<BoatRecords> boats = boats(given);
    PrintWriter out = context.outputWriter();
    if (!check) {
      out.println(RecordsPage.list(boats).stripTrailing());
      return Exit.NOTHING_HOLDS_BACK.status();
    }
    out.println(RecordsPage.check(boats).stripTrailing());
    boolean sound = boats.stream().allMatch(boat -> boat.faults().isEmpty());
    return (sound ? Exit.NOTHING_HOLDS_BACK : Exit.HOLDS_BACK).status();
  }

  private boolean checks(CommandContext context) {
    List<CommandArgument> arguments = context.parsedInput().arguments();
    if (arguments.isEmpty()) {
      return false;
    }
    String word = arguments.get(0).value();
    if (!word.equals(CHECK)) {
      throw UsageError.refused(
          this,
          PrintableText.excerpt(word)
              + " is not known here. Write \"records check\", or name a boat with --boat.");
    }
    return true;
  }

  private static List<BoatRecords> boats(CommandInput given) {
    RecordArchive archive = given.workspace().records();
    Optional<String> boat = given.text(BOAT_NAME);
    List<BoatRecords> boats =
        boat.map(typed -> List.of(archive.boat(BoatChoice.name(typed)))).orElseGet(archive::boats);
    List<BoatRecords> filled = boats.stream().filter(RecordsCommand::holdsAny).toList();
    if (filled.isEmpty()) {
      throw new UnusableInput(
          archive.folder() + ": no record is kept here. Inspect a boat first, or name a --folder.");
    }
    return filled;
  }

  /** An empty folder is no chain; a list without its records has lost them all. */
  private static boolean holdsAny(BoatRecords boat) {
    return !boat.entries().isEmpty() || !boat.unreadable().isEmpty() || !boat.faults().isEmpty();
  }
}
