package thwartwise.shell;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.shell.core.command.CommandArgument;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import thwartwise.measure.UnitFormat;
import thwartwise.page.LineWrap;
import thwartwise.picture.Pictures.LetterPictures;
import thwartwise.picture.Pictures.LetterPictures.Sketch;
import thwartwise.record.InspectionRecord;
import thwartwise.report.PictureWords;

/** Draws the pictures of a record in letters. */
final class ShowCommand implements ShellCommand {
  private static final int COLUMNS = 80;

  private final Pager pager;

  ShowCommand(Pager pager) {
    this.pager = pager;
  }

  @Override
  public String getName() {
    return "show";
  }

  @Override
  public String getDescription() {
    return "draw a record's boat in letters: from above, the side and across";
  }

  @Override
  public Optional<String> argument() {
    return Optional.of("RECORD");
  }

  @Override
  public List<OptionWord> words() {
    return List.of(RecordChoice.BOAT, UnitsChoice.UNITS, OptionWord.FOLDER);
  }

  @Override
  public String details() {
    return """
        The pictures of the page, for a terminal of at least 80 columns: from above
        with people, kit and chambers; from the side; full of water with the crew in
        it; cut across, everyone to one side; what brings it back.
        Without a word it is the newest record of all.

          show
          show custard-tart/2
          show --boat "Custard Tart"

        Exits with 0 when it ran, with 2 when there is no such record.
        """;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    List<String> named =
        context.parsedInput().arguments().stream().map(CommandArgument::value).toList();
    CommandInput given = new CommandInput(context);
    InspectionRecord record =
        UnitsChoice.of(RecordChoice.of(named, given), given, this).inspection();
    LetterPictures pictures =
        LetterPictures.of(record.boat(), record.report(), record.date().toLocalDate(), COLUMNS);
    UnitFormat units = new UnitFormat(record.boat().units());
    String text =
        Stream.concat(
                pictures.drawn().stream().map(sketch -> lines(sketch, units)),
                pictures.omitted().stream().map(missing -> wrapped(PictureWords.of(missing))))
            .collect(Collectors.joining("\n\n"));
    pager.show(text, context.outputWriter());
    return Exit.NOTHING_HOLDS_BACK.status();
  }

  private static String lines(Sketch sketch, UnitFormat units) {
    PictureWords words = PictureWords.of(sketch.facts(), units);
    return String.join("\n", words.title(), sketch.drawing(), wrapped(words.caption()));
  }

  private static String wrapped(String sentences) {
    return String.join("\n", LineWrap.lines(sentences, "", "", COLUMNS));
  }
}
