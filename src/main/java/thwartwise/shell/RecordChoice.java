package thwartwise.shell;

import java.util.List;
import java.util.Optional;
import thwartwise.archive.RecordArchive;
import thwartwise.json.UnusableInput;
import thwartwise.record.BoatRecords;
import thwartwise.record.RecordEntry;

/** The choice of a record: the one named, else the last of a boat, else the newest of all. */
final class RecordChoice {
  static final OptionWord BOAT =
      new OptionWord("boat", "NAME", "the boat whose last record it is", false);

  private RecordChoice() {}

  /**
   * @param named the record as it was typed; may be empty
   */
  static RecordEntry of(List<String> named, CommandInput given) {
    RecordArchive archive = given.workspace().records();
    Optional<BoatRecords> boat = given.text(BOAT).map(BoatChoice::name).map(archive::boat);
    if (!named.isEmpty()) {
      String typed = CommandInput.fromHome(named.get(0));
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
}
