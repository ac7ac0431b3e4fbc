package thwartwise.record;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thwartwise.record.Chain.ChainList;

/**
 * Checks the records of one boat from the first to the last against the hash in each record, the
 * hash that the next record stores, and the list next to them.
 *
 * <p>It finds slips, damage and careless changes. It cannot find that somebody wrote all records
 * and the list again, unless the hash of a record was written down elsewhere.
 */
public final class Chain {
  private final Map<String, StoredRecord> left = new HashMap<>();
  private final Map<Integer, ChainList.Line> lines = new HashMap<>();
  private final List<String> faults = new ArrayList<>();
  private final Map<Integer, StoredRecord> walked = new HashMap<>();

  private final boolean listThere;

  private Chain(boolean listThere, List<StoredRecord> stored) {
    this.listThere = listThere;
    stored.forEach(record -> left.put(record.file(), record));
  }

  /** What was changed, added or lost, in words; empty when everything fits. */
  public static List<String> faults(ChainList list, List<StoredRecord> stored) {
    ChainList known = list.exists() ? list : listed(stored);
    Chain chain = new Chain(list.exists(), stored);
    chain.list(list, stored, known);
    chain.lines(known);
    chain.walk();
    chain.rest();
    return List.copyOf(chain.faults);
  }

  /**
   * The list rebuilt from the records: records without a chain by name, then the others by their
   * own number.
   */
  public static ChainList listed(List<StoredRecord> stored) {
    List<ChainList.Line> lines = new ArrayList<>();
    stored.stream()
        .filter(StoredRecord::isOld)
        .sorted(Comparator.comparing(StoredRecord::file))
        .forEach(old -> lines.add(new ChainList.Line(lines.size() + 1, old.file(), old.hash())));
    stored.stream()
        .filter(record -> record.link().isPresent())
        .sorted(Comparator.comparingInt(StoredRecord::number).thenComparing(StoredRecord::file))
        .forEach(record -> lines.add(line(record)));
    return new ChainList(false, lines, List.of(), List.of());
  }

  private static ChainList.Line line(StoredRecord record) {
    return new ChainList.Line(
        record.number(), record.file(), record.stated().orElse(record.hash()));
  }

  private void list(ChainList list, List<StoredRecord> stored, ChainList known) {
    boolean chained = stored.stream().anyMatch(record -> record.link().isPresent());
    if (!list.exists() && chained) {
      int last = known.lines().stream().mapToInt(ChainList.Line::number).max().orElse(0);
      faults.add(ChainFault.missingList(last));
    }
    list.damaged().forEach(line -> faults.add(ChainFault.damagedLine(line)));
    list.restarts().forEach(number -> faults.add(ChainFault.restartedList(number)));
  }

  private void lines(ChainList known) {
    for (ChainList.Line line : known.lines()) {
      if (lines.putIfAbsent(line.number(), line) != null) {
        left.remove(line.file());
        faults.add(ChainFault.duplicateNumber(line.number(), line.file()));
      }
    }
  }

  private void walk() {
    int last = lines.keySet().stream().mapToInt(Integer::intValue).max().orElse(0);
    for (int number = 1; number <= last; number++) {
      step(number);
    }
  }

  private void step(int number) {
    ChainList.Line line = lines.get(number);
    if (line == null) {
      unlisted(number);
      return;
    }
    StoredRecord record = left.remove(line.file());
    if (record == null) {
      gone(line);
      return;
    }
    walked.put(number, record);
    compare(line, record);
  }

  private void compare(ChainList.Line line, StoredRecord record) {
    int number = line.number();
    boolean listed = record.hash().equals(line.hash());
    if (!record.hasMatchingHash()) {
      faults.add(ChainFault.changed(number, line.file()));
    } else if (!listed && nextFollows(number, record.hash())) {
      faults.add(ChainFault.changedLine(number));
    } else if (!listed) {
      faults.add(
          record.stated().isPresent()
              ? ChainFault.rewritten(number, line.file())
              : ChainFault.changed(number, line.file()));
    } else {
      place(line, record);
    }
  }

  /** The place of a record, if the record is unchanged. */
  private void place(ChainList.Line line, StoredRecord record) {
    int says = record.link().map(ChainLink::number).orElse(line.number());
    if (says != line.number()) {
      faults.add(ChainFault.wrongNumber(line, says));
    } else if (record.link().isPresent() && !followsTheOneBefore(line.number(), record)) {
      faults.add(ChainFault.brokenLink(line.number(), line.file()));
    }
  }

  private boolean followsTheOneBefore(int number, StoredRecord record) {
    if (number == 1) {
      return record.link().flatMap(ChainLink::previous).isEmpty();
    }
    ChainList.Line before = lines.get(number - 1);
    StoredRecord there = walked.get(number - 1);
    // A missing or changed predecessor is already reported; its line still holds its hash.
    return before == null && there == null
        || before != null && record.follows(before.hash())
        || there != null && record.follows(there.hash());
  }

  private boolean nextFollows(int number, String hash) {
    ChainList.Line next = lines.get(number + 1);
    return next != null
        && Optional.ofNullable(left.get(next.file())).map(r -> r.follows(hash)).orElse(false);
  }

  private void gone(ChainList.Line line) {
    Optional<StoredRecord> other =
        left.values().stream()
            .filter(record -> record.hash().equals(line.hash()) && record.hasMatchingHash())
            .filter(
                record -> lines.values().stream().noneMatch(l -> l.file().equals(record.file())))
            .findFirst();
    if (other.isEmpty()) {
      faults.add(ChainFault.missingRecord(line));
      return;
    }
    left.remove(other.get().file());
    faults.add(ChainFault.renamed(line, other.get().file()));
  }

  /**
   * The records that are missing: no line has that number, so the line, or the line and the record,
   * was removed.
   */
  private void unlisted(int number) {
    Optional<StoredRecord> there =
        left.values().stream()
            .filter(record -> record.hasMatchingHash() && nextFollows(number, record.hash()))
            .findFirst();
    if (there.isEmpty()) {
      faults.add(ChainFault.missingRecordAndLine(number));
      return;
    }
    left.remove(there.get().file());
    walked.put(number, there.get());
    faults.add(ChainFault.removedLine(number, there.get().file()));
  }

  /** The records to which no line refers. */
  private void rest() {
    int last = lines.keySet().stream().mapToInt(Integer::intValue).max().orElse(0);
    left.values().stream()
        .sorted(Comparator.comparing(StoredRecord::file))
        .forEach(record -> faults.add(extra(record, last)));
  }

  private String extra(StoredRecord record, int last) {
    ChainList.Line end = lines.get(last);
    if (end != null && record.isNextAfter(end)) {
      return ChainFault.unlistedRecord(last + 1, record.file());
    }
    // Without a list, there is nothing to which it could have been added.
    return !listThere && record.unreadable().isPresent()
        ? ChainFault.unreadable(record)
        : ChainFault.added(record);
  }

  /**
   * The list of a boat's records, next to them. Without it a lost last record could not be
   * detected.
   *
   * @param exists whether the list was found
   * @param lines in the order in which the records were kept
   * @param damaged numbers of the lines that cannot be read
   * @param restarts the numbers at which the list had to be begun again
   */
  public record ChainList(
      boolean exists, List<Line> lines, List<Integer> damaged, List<Integer> restarts) {
    public static final ChainList NONE = new ChainList(false, List.of(), List.of(), List.of());

    public ChainList {
      lines = List.copyOf(lines);
      damaged = List.copyOf(damaged);
      restarts = List.copyOf(restarts);
    }

    /**
     * One record as it was when it was kept.
     *
     * @param file name of its file
     * @param hash of its content
     */
    public record Line(int number, String file, String hash) {}
  }

  /**
   * A record file as it lies in the folder now, whether anybody can read it or not.
   *
   * @param file its name
   * @param hash worked out again from its content
   * @param stated the hash it gives itself; records from before there were chains give none
   * @param link its place in the chain, where it says so and can be read
   * @param boat the name of the boat it is about; empty when it cannot be read
   * @param unreadable why it cannot be read, in one line
   */
  public record StoredRecord(
      String file,
      String hash,
      Optional<String> stated,
      Optional<ChainLink> link,
      Optional<String> boat,
      Optional<String> unreadable) {

    /** Whether it says of itself what its content says. */
    public boolean hasMatchingHash() {
      return stated.map(hash::equals).orElse(true);
    }

    /** From before there were chains: it says nothing of its place. */
    public boolean isOld() {
      return link.isEmpty() && unreadable.isEmpty();
    }

    /** The number it gives itself; zero where it gives none. */
    public int number() {
      return link.map(ChainLink::number).orElse(0);
    }

    /** Whether it is unchanged and continues the list. */
    public boolean isNextAfter(ChainList.Line last) {
      return hasMatchingHash() && number() == last.number() + 1 && follows(last.hash());
    }

    boolean follows(String earlier) {
      return link.flatMap(ChainLink::previous).map(earlier::equals).orElse(false);
    }
  }
}
