package thwartwise.archive;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thwartwise.json.UnusableInput;
import thwartwise.record.BoatRecords;
import thwartwise.record.Chain;
import thwartwise.record.Chain.ChainList;
import thwartwise.record.Chain.StoredRecord;
import thwartwise.record.ChainLink;
import thwartwise.record.ChainLink.PaperHash;
import thwartwise.record.PaperFault;
import thwartwise.record.RecordEntry;

/** Reads the folder of a boat and orders it by its chain; an unreadable file stops nothing. */
final class StoreReading {
  private final Path folder;
  private final List<StoredInspection> shelved;
  private final List<StoredRecord> stored;

  private StoreReading(Path folder, List<StoredInspection> shelved) {
    this.folder = folder;
    this.shelved = shelved;
    this.stored = shelved.stream().map(StoredInspection::stored).toList();
  }

  static BoatRecords of(Path folder, List<StoredInspection> shelved, ChainFile chain) {
    StoreReading reading = new StoreReading(folder, shelved);
    try {
      ChainList list = chain.list();
      return reading.records(list, reading.unreadable(), reading.faults(list));
    } catch (UnusableInput newer) {
      List<String> problems = new ArrayList<>(reading.unreadable());
      problems.add(newer.getMessage());
      return reading.records(ChainList.NONE, problems, List.of(newer.getMessage()));
    }
  }

  private List<String> faults(ChainList list) {
    List<String> faults = new ArrayList<>(Chain.faults(list, stored));
    faults.addAll(PapersCheck.faults(folder, list, stored));
    return faults;
  }

  private List<String> unreadable() {
    return stored.stream().flatMap(record -> record.unreadable().stream()).toList();
  }

  private BoatRecords records(ChainList list, List<String> unreadable, List<String> faults) {
    Map<String, Integer> numbers = new HashMap<>();
    ChainList known = list.exists() ? list : Chain.listed(stored);
    known.lines().forEach(line -> numbers.put(line.file(), line.number()));
    return new BoatRecords(name(), placed(numbers), unreadable, faults);
  }

  private String name() {
    return folder.getFileName().toString();
  }

  private List<RecordEntry> placed(Map<String, Integer> numbers) {
    return shelved.stream()
        .flatMap(record -> record.entry(name(), number(numbers, record)).stream())
        .sorted(
            Comparator.comparingInt((RecordEntry r) -> r.number().orElse(Integer.MAX_VALUE))
                .thenComparing(RecordEntry::name))
        .toList();
  }

  private static OptionalInt number(Map<String, Integer> numbers, StoredInspection record) {
    Integer number = numbers.get(record.stored().file());
    return number == null ? OptionalInt.empty() : OptionalInt.of(number);
  }

  /** Compares the pages next to the records with the hashes in the records. */
  private static final class PapersCheck {
    /** A file name that the program gives to a page: the name of a record and an ending. */
    private static final Pattern PAGE =
        Pattern.compile(
            "(\\d{4}-\\d\\d-\\d\\dT\\d{6}-[0-9a-f]{8}(?:-\\d{1,4})?)((?:-[a-z]+)?\\.(?:txt|html|pdf))");

    private final Path folder;
    private final List<String> faults = new ArrayList<>();

    private PapersCheck(Path folder) {
      this.folder = folder;
    }

    /**
     * One line for each page that was changed, is missing, or has no record that holds its hash.
     */
    static List<String> faults(Path folder, ChainList list, List<StoredRecord> stored) {
      PapersCheck check = new PapersCheck(folder);
      ChainList known = list.exists() ? list : Chain.listed(stored);
      known.lines().forEach(line -> check.vouched(line, stored));
      check.strays(known, stored);
      return List.copyOf(check.faults);
    }

    /**
     * Whether the record's hashes count. A changed record counts for none, and the chain reports
     * it. A renamed record still counts for the pages under its old name.
     */
    private void vouched(ChainList.Line line, List<StoredRecord> stored) {
      String name = StoredInspection.bare(line.file());
      stored.stream()
          .filter(record -> record.hasMatchingHash() && record.hash().equals(line.hash()))
          .findFirst()
          .flatMap(PapersCheck::papers)
          .orElse(List.of())
          .forEach(paper -> page(line.number(), name, paper));
    }

    private static Optional<List<PaperHash>> papers(StoredRecord record) {
      return record.link().flatMap(ChainLink::papers);
    }

    private void page(int number, String name, PaperHash paper) {
      Path file = folder.resolve(name + paper.ending());
      if (!Files.exists(file)) {
        faults.add(PaperFault.missing(number, name + paper.ending()));
      } else if (!Digest.ofFile(file).filter(paper.hash()::equals).isPresent()) {
        faults.add(PaperFault.changed(number, name + paper.ending()));
      }
    }

    /** Pages without a record. Pages of a lost or unreadable record are not reported one by one. */
    private void strays(ChainList list, List<StoredRecord> stored) {
      Set<String> known = new HashSet<>();
      list.lines().forEach(line -> known.add(StoredInspection.bare(line.file())));
      Map<String, List<PaperHash>> sealedPapers = new HashMap<>();
      for (StoredRecord record : stored) {
        String name = StoredInspection.bare(record.file());
        known.add(name);
        papers(record).ifPresent(papers -> sealedPapers.put(name, papers));
      }
      for (Path file : Listing.of(folder, "[0-9]*")) {
        Matcher page = PAGE.matcher(file.getFileName().toString());
        if (page.matches() && isStray(page, known, sealedPapers)) {
          faults.add(PaperFault.unexpected(page.group()));
        }
      }
    }

    private static boolean isStray(
        Matcher page, Set<String> known, Map<String, List<PaperHash>> sealedPapers) {
      List<PaperHash> papers = sealedPapers.get(page.group(1));
      return papers == null
          ? !known.contains(page.group(1))
          : papers.stream().noneMatch(paper -> paper.ending().equals(page.group(2)));
    }
  }
}
