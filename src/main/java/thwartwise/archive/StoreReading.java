package thwartwise.archive;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import thwartwise.json.UnusableInput;
import thwartwise.record.BoatRecords;
import thwartwise.record.Chain;
import thwartwise.record.ChainList;
import thwartwise.record.RecordEntry;
import thwartwise.record.StoredRecord;

/** What lies on a shelf, put in the order of its chain; what cannot be read stops nothing. */
final class StoreReading {
  private final Path folder;
  private final List<StoredInspection> shelved;
  private final List<StoredRecord> lying;

  private StoreReading(Path folder, List<StoredInspection> shelved) {
    this.folder = folder;
    this.shelved = shelved;
    this.lying = shelved.stream().map(StoredInspection::lying).toList();
  }

  static BoatRecords of(Path folder, List<StoredInspection> shelved, ChainFile chain) {
    StoreReading reading = new StoreReading(folder, shelved);
    try {
      ChainList list = chain.list();
      return reading.records(list, reading.unreadable(), reading.faults(list));
    } catch (UnusableInput newer) {
      List<String> told = new ArrayList<>(reading.unreadable());
      told.add(newer.getMessage());
      return reading.records(ChainList.NONE, told, List.of(newer.getMessage()));
    }
  }

  private List<String> faults(ChainList list) {
    List<String> faults = new ArrayList<>(Chain.faults(list, lying));
    faults.addAll(PapersCheck.faults(folder, list, lying));
    return faults;
  }

  private List<String> unreadable() {
    return lying.stream().flatMap(record -> record.unreadable().stream()).toList();
  }

  private BoatRecords records(ChainList list, List<String> unreadable, List<String> faults) {
    Map<String, Integer> numbers = new HashMap<>();
    ChainList known = list.there() ? list : Chain.listed(lying);
    known.lines().forEach(line -> numbers.put(line.file(), line.number()));
    return new BoatRecords(name(), placed(numbers), unreadable, faults);
  }

  private String name() {
    return folder.getFileName().toString();
  }

  private List<RecordEntry> placed(Map<String, Integer> numbers) {
    return shelved.stream()
        .flatMap(record -> record.kept(name(), number(numbers, record)).stream())
        .sorted(
            Comparator.comparingInt((RecordEntry r) -> r.number().orElse(Integer.MAX_VALUE))
                .thenComparing(RecordEntry::name))
        .toList();
  }

  private static OptionalInt number(Map<String, Integer> numbers, StoredInspection record) {
    Integer number = numbers.get(record.lying().file());
    return number == null ? OptionalInt.empty() : OptionalInt.of(number);
  }
}
