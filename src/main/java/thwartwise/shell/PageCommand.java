package thwartwise.shell;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.springframework.shell.core.command.CommandArgument;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import thwartwise.record.RecordEntry;
import thwartwise.report.TextPage;

/** Prints the whole page of a record, or one sheet of it. */
final class PageCommand implements ShellCommand {
  private static final Pattern NUMBER = Pattern.compile("[0-9]{1,3}");

  private final Pager pager;

  PageCommand(Pager pager) {
    this.pager = pager;
  }

  @Override
  public String getName() {
    return "page";
  }

  @Override
  public String getDescription() {
    return "print the whole page of a record, or one sheet of it";
  }

  @Override
  public Optional<String> argument() {
    return Optional.of("RECORD SHEET");
  }

  @Override
  public int mostArguments() {
    return 2;
  }

  @Override
  public List<OptionWord> words() {
    return List.of(RecordChoice.BOAT, UnitsChoice.UNITS, OptionWord.FOLDER);
  }

  @Override
  public String details() {
    return """
        Without a word it is the page of the newest record of all; a number alone is
        one sheet of it, with all its details. A record is named by its file or as
        "records" prints it.

          page
          page 3
          page custard-tart/2
          page custard-tart/2 3
          page --boat "Custard Tart" 3

        At a terminal it goes through the pager that PAGER names, or less or more;
        into a pipe or a file it is printed as it is.
        Exits with 0 when it ran, with 2 when there is no such record or sheet.
        """;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    CommandInput given = new CommandInput(context);
    List<String> typed =
        context.parsedInput().arguments().stream().map(CommandArgument::value).toList();
    boolean numbered = !typed.isEmpty() && NUMBER.matcher(typed.get(typed.size() - 1)).matches();
    List<String> named = numbered ? typed.subList(0, typed.size() - 1) : typed;
    if (named.size() > 1) {
      throw UsageError.refused(
          this, "the sheet is a number, behind the record: page custard-tart/2 3.");
    }
    RecordEntry record = UnitsChoice.of(RecordChoice.of(named, given), given, this);
    String text =
        numbered
            ? sheet(record, Integer.parseInt(typed.get(typed.size() - 1)))
            : TextPage.of(record);
    pager.show(text.stripTrailing(), context.outputWriter());
    return Exit.NOTHING_HOLDS_BACK.status();
  }

  private String sheet(RecordEntry record, int number) {
    List<TextPage.Sheet> sheets = TextPage.sheets(record);
    if (number < 1 || number > sheets.size()) {
      List<String> headings = sheets.stream().map(TextPage.Sheet::heading).toList();
      throw UsageError.refused(
          this, "the page has sheets 1 to %d: %s.".formatted(sheets.size(), numbered(headings)));
    }
    return sheets.get(number - 1).text();
  }

  private static String numbered(List<String> headings) {
    StringBuilder words = new StringBuilder();
    for (int i = 0; i < headings.size(); i++) {
      words.append(i == 0 ? "" : "; ").append(i + 1).append(' ').append(headings.get(i));
    }
    return words.toString();
  }
}
