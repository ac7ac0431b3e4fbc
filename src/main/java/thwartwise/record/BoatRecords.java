package thwartwise.record;

import java.util.List;
import java.util.Optional;

/**
 * All records of one boat.
 *
 * @param folder name of the folder they lie in
 * @param entries in the order of the chain; those outside it last
 * @param unreadable one line for each that cannot be read
 * @param faults what was changed, added or lost
 */
public record BoatRecords(
    String folder, List<RecordEntry> entries, List<String> unreadable, List<String> faults) {
  public BoatRecords {
    entries = List.copyOf(entries);
    unreadable = List.copyOf(unreadable);
    faults = List.copyOf(faults);
  }

  /** The newest record of the chain, or of those outside it when there is none. */
  public Optional<RecordEntry> last() {
    return entries.stream()
        .filter(record -> record.number().isPresent())
        .reduce((earlier, later) -> later)
        .or(() -> entries.stream().reduce((earlier, later) -> later));
  }

  /** The name of the boat as its newest record has it, or that of the folder. */
  public String boat() {
    return last().map(record -> record.inspection().boat().name()).orElse(folder);
  }

  /** The record of that number, name, file name or handle. */
  public Optional<RecordEntry> named(String typed) {
    String name = typed.endsWith(".json") ? typed.substring(0, typed.length() - 5) : typed;
    return entries.stream()
        .filter(record -> record.handle().equals(name) || record.name().equals(name))
        .findFirst()
        .or(() -> numbered(name));
  }

  private Optional<RecordEntry> numbered(String typed) {
    return entries.stream()
        .filter(record -> record.number().isPresent())
        .filter(record -> typed.equals(Integer.toString(record.number().getAsInt())))
        .findFirst();
  }

  /** The later record that corrects this one. */
  public Optional<RecordEntry> correctionOf(RecordEntry wrong) {
    return entries.stream()
        .filter(record -> record.corrects().map(c -> c.record().equals(wrong.name())).orElse(false))
        .reduce((earlier, later) -> later);
  }
}
