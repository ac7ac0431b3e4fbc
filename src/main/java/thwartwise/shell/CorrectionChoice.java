package thwartwise.shell;

import java.util.Optional;
import thwartwise.archive.RecordArchive;
import thwartwise.boat.Boat;
import thwartwise.record.Correction;
import thwartwise.record.RecordEntry;

/** Which older record a new one corrects, and why. */
final class CorrectionChoice {
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
