package thwartwise.shell;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.springframework.shell.core.command.CommandArgument;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import thwartwise.files.RecordArchive;
import thwartwise.files.UnusableInput;
import thwartwise.record.BoatRecords;
import thwartwise.record.KeptRecord;
import thwartwise.report.TextPage;

/** Prints the whole page of a record, or one section of it. */
final class PageCommand implements ShellCommand {
  private static final Pattern NUMBER = Pattern.compile("[0-9]{1,3}");
  private static final OptionWord BOAT_NAME =
      new OptionWord("boat", "NAME", "the boat whose last record it is", false);

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
    return "print the whole page of a record, or one section of it";
  }

  @Override
  public Optional<String> argument() {
    return Optional.of("RECORD SECTION");
  }

  @Override
  public int mostArguments() {
    return 2;
  }

  @Override
  public List<OptionWord> words() {
    return List.of(BOAT_NAME, OptionWord.FOLDER);
  }

  @Override
  public String details() {
    return """
        Without a word it is the page of the newest record of all; a number alone is
        a section of it. A record is named by its file or as "records" prints it.

          page
          page 3
          page custard-tart/2
          page custard-tart/2 3
          page --boat "Custard Tart" 3

        At a terminal it goes through the pager that PAGER names, or less or more;
        into a pipe or a file it is printed as it is.
        Exits with 0 when it ran, with 2 when there is no such record or section.
        """;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    Given given = new Given(context);
    List<String> typed =
        context.parsedInput().arguments().stream().map(CommandArgument::value).toList();
    boolean numbered = !typed.isEmpty() && NUMBER.matcher(typed.get(typed.size() - 1)).matches();
    List<String> named = numbered ? typed.subList(0, typed.size() - 1) : typed;
    if (named.size() > 1) {
      throw UsageError.refused(
          this, "the section is a number, behind the record: page custard-tart/2 3.");
    }
    KeptRecord record = record(named, given);
    String text =
        numbered
            ? section(record, Integer.parseInt(typed.get(typed.size() - 1)))
            : TextPage.of(record);
    pager.show(text.stripTrailing(), context.outputWriter());
    return Exit.NOTHING_HOLDS_BACK.status();
  }

  private KeptRecord record(List<String> named, Given given) {
    RecordArchive archive = given.workspace().records();
    Optional<BoatRecords> boat = given.text(BOAT_NAME).map(BoatChoice::name).map(archive::boat);
    if (!named.isEmpty()) {
      String typed = Given.fromHome(named.get(0));
      return boat.map(b -> archive.find(typed, b)).orElseGet(() -> archive.find(typed));
    }
    return boat.map(BoatRecords::last)
        .orElseGet(archive::newest)
        .orElseThrow(
            () ->
                new UnusableInput(
                    archive.folder()
                        + ": no record is kept here. Inspect a boat first, or name a --folder."));
  }

  private String section(KeptRecord record, int number) {
    List<String> headings = TextPage.headings(record);
    if (number < 1 || number > headings.size()) {
      throw UsageError.refused(
          this,
          "the page has sections 1 to %d: %s.".formatted(headings.size(), numbered(headings)));
    }
    return TextPage.section(record, number);
  }

  private static String numbered(List<String> headings) {
    StringBuilder words = new StringBuilder();
    for (int i = 0; i < headings.size(); i++) {
      words.append(i == 0 ? "" : "; ").append(i + 1).append(' ').append(headings.get(i));
    }
    return words.toString();
  }
}
