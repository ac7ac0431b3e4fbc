package thwartwise.shell;

import java.nio.file.Path;
import java.util.Optional;
import thwartwise.archive.AnswersFile;
import thwartwise.json.UnusableInput;
import thwartwise.measure.PrintableText;
import thwartwise.walk.stations.StationTable;

/** The table of stations named on the command line. */
final class StationsFile {
  private StationsFile() {}

  /**
   * Its text, if one is named.
   *
   * @throws UnusableInput when it cannot be read, or is no table: better now than after an hour
   */
  static Optional<String> of(CommandInput given) {
    if (!given.has(WalkCommand.STATIONS)) {
      return Optional.empty();
    }
    Path file = given.path(WalkCommand.STATIONS);
    String text = AnswersFile.read(file);
    StationTable.fault(text)
        .ifPresent(
            fault -> {
              throw new UnusableInput(PrintableText.of(file.toString()) + ": " + fault);
            });
    return Optional.of(text);
  }
}
