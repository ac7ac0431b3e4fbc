package thwartwise.shell;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import thwartwise.archive.FleetFolder;
import thwartwise.archive.Workspace;
import thwartwise.record.FleetRow;
import thwartwise.report.FleetCsv;
import thwartwise.report.FleetPage;

/** Shows the boats of a group in one table. */
final class FleetCommand implements ShellCommand {
  private static final OptionWord CSV =
      new OptionWord("csv", "", "print the table for a spreadsheet and nothing else", false);

  private final Inspector inspector;

  FleetCommand(Inspector inspector) {
    this.inspector = inspector;
  }

  @Override
  public String getName() {
    return "fleet";
  }

  @Override
  public String getDescription() {
    return "show a group's boats in one table, and what is overdue";
  }

  @Override
  public Optional<String> argument() {
    return Optional.of("DIR");
  }

  @Override
  public List<OptionWord> words() {
    return List.of(CSV, OptionWord.HTML, OptionWord.FOLDER);
  }

  @Override
  public String details() {
    return """
        Reads a folder of boats and tells of each when it was inspected last, the
        verdict, crew and load of that record, and what is overdue: an inspection or
        a leak test older than twelve months, a boat file changed since its last
        record, records that were changed or lost. DIR may be any folder that holds
        boat files and records; without it, it is the folder of --folder. A file that
        cannot be used is a row with its message.

        Exit codes, for scripts:
          0  nothing is overdue
          1  something is overdue, or a file cannot be used
          2  there is no such folder, or nothing of ours in it
        """;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    CommandInput given = new CommandInput(context);
    if (given.has(CSV) && given.has(OptionWord.HTML)) {
      throw UsageError.refused(this, "--csv and --html are two forms of one table. Leave one out.");
    }
    LocalDate today = inspector.today();
    List<FleetRow> rows = FleetFolder.rows(folder(context, given), today);
    print(rows, today, given, context.outputWriter());
    boolean due = rows.stream().anyMatch(FleetRow::needsSeeingTo);
    return (due ? Exit.HOLDS_BACK : Exit.NOTHING_HOLDS_BACK).status();
  }

  private static void print(
      List<FleetRow> rows, LocalDate today, CommandInput given, PrintWriter out) {
    if (given.has(OptionWord.HTML)) {
      out.println(given.savePage(FleetPage.html(rows, today)));
    } else if (given.has(CSV)) {
      out.print(FleetCsv.of(rows));
    } else {
      out.println(FleetPage.of(rows, today).stripTrailing());
    }
  }

  private static Path folder(CommandContext context, CommandInput given) {
    return context.parsedInput().arguments().stream()
        .findFirst()
        .map(argument -> new Workspace(CommandInput.asPath(argument.value())).recovered().folder())
        .orElseGet(() -> given.workspace().folder());
  }
}
