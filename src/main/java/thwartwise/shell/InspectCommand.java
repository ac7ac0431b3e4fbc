package thwartwise.shell;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import thwartwise.archive.RecordArchive;
import thwartwise.boat.Boat;
import thwartwise.files.boat.BoatFile;
import thwartwise.record.InspectionRecord;
import thwartwise.record.InspectionRecord.Correction;
import thwartwise.record.RecordEntry;
import thwartwise.rules.RuleBook;

/** Inspects a boat file without asking anything. */
final class InspectCommand implements ShellCommand {
  private final Inspector inspector;

  InspectCommand(Inspector inspector) {
    this.inspector = inspector;
  }

  @Override
  public String getName() {
    return "inspect";
  }

  @Override
  public String getDescription() {
    return "inspect a boat file and keep the dated record";
  }

  @Override
  public List<OptionWord> words() {
    return List.of(
        OptionWord.BOAT,
        OptionWord.JSON,
        OptionWord.BY,
        CorrectionChoice.CORRECTS,
        CorrectionChoice.BECAUSE,
        OptionWord.RULES,
        UnitsChoice.UNITS,
        OptionWord.FOLDER);
  }

  @Override
  public String details() {
    return """
        Reads the boat file, works out how it floats, heels and lies swamped, and
        prints one screen: may it go, how many, sitting where, what to do first. The
        record is kept in the folder, under records; beside it lie the page and a
        card for the lid of the locker, each as text, HTML and PDF. "page" prints
        the whole page.

        A local rule is a file of its own: name it with --rules, or lay it in the
        folder, under rules, and it is applied every time. It can lower an answer and
        never raise one; the page says whether it applies and what it gives.

        A record that was wrong stays as it is: measure again, and keep a new one
        with --corrects and --because, which names the old.

        Exit codes, for scripts:
          0  nothing that limits the crew falls short
          1  something that limits the crew falls short, is borderline or was not
             assessed, or nothing is recommended
          2  the file cannot be used; nothing was written
        """;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    CommandInput given = new CommandInput(context);
    Path file = BoatChoice.of(given, this);
    RuleBook book = RuleBooks.of(given);
    Boat boat = UnitsChoice.of(BoatFile.read(file), given, this);
    Optional<Correction> corrects = CorrectionChoice.of(given, boat, this);
    Optional<String> by = given.text(OptionWord.BY);
    Inspector.SavedInspection kept =
        InspectionOutput.inspecting(
            given,
            reader -> inspected(boat, file, by, book, reader),
            (inspection, reader) ->
                inspector.save(
                    inspector.record(inspection, reader).correcting(corrects), given.workspace()));
    return Exit.of(kept.report()).status();
  }

  private InspectionRecord inspected(
      Boat boat, Path file, Optional<String> by, RuleBook book, Consumer<InspectionRecord> reader) {
    return BoatChoice.consistent(file, () -> inspector.inspect(boat, by, book, reader));
  }

  /** The older record that a new one corrects, and why. */
  private static final class CorrectionChoice {
    static final OptionWord CORRECTS =
        new OptionWord("corrects", "RECORD", "the older record this one takes the place of", false);
    static final OptionWord BECAUSE =
        new OptionWord("because", "WORDS", "what was wrong with the older record", false);

    private CorrectionChoice() {}

    /** Empty when nothing is corrected; a correction without a reason is refused. */
    static Optional<Correction> of(CommandInput given, Boat boat, ShellCommand command) {
      if (given.has(CORRECTS) != given.has(BECAUSE)) {
        throw UsageError.refused(
            command,
            "--corrects and --because belong together. Name the older record and say what was wrong.");
      }
      return given.text(CORRECTS).map(typed -> correction(typed, given, boat, command));
    }

    private static Correction correction(
        String typed, CommandInput given, Boat boat, ShellCommand command) {
      RecordArchive archive = given.workspace().records();
      RecordEntry older = archive.find(typed, archive.of(boat.name()));
      if (older.number().isEmpty()) {
        throw UsageError.refused(
            command,
            older.handle()
                + " is not part of the chain. Name one that \"records\" shows a number of.");
      }
      return new Correction(
          older.number().getAsInt(), older.name(), older.hash(), given.text(BECAUSE).orElseThrow());
    }
  }
}
