package thwartwise.files;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import thwartwise.record.BoatRecords;
import thwartwise.record.Chain;
import thwartwise.record.ChainLink;
import thwartwise.record.ChainList;
import thwartwise.record.Correction;
import thwartwise.record.InspectionRecord;
import thwartwise.record.LyingRecord;
import thwartwise.record.Paper;
import thwartwise.record.Printable;

/**
 * The records of one boat, a chain. The name of a record is its moment and a piece of its own hash;
 * no record is ever written over.
 */
record RecordShelf(Path folder) {
  private static final DateTimeFormatter MOMENT =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HHmmss", Locale.ROOT);

  Path add(
      InspectionRecord inspection,
      Function<String, List<Paper>> papers,
      Optional<Correction> corrects) {
    return ShelfLock.holding(folder.getParent(), () -> added(inspection, papers, corrects));
  }

  private Path added(
      InspectionRecord inspection,
      Function<String, List<Paper>> papers,
      Optional<Correction> corrects) {
    List<LyingRecord> lying = lying();
    Optional<ChainList.Line> last = last(takenIn(lying));
    Optional<Path> same = last.flatMap(line -> holding(line, inspection, corrects, lying));
    return same.orElseGet(
        () ->
            written(
                inspection,
                papers,
                new ChainLink(
                    1 + last.map(ChainList.Line::number).orElse(0),
                    last.map(ChainList.Line::hash),
                    corrects)));
  }

  private Path written(
      InspectionRecord inspection, Function<String, List<Paper>> papers, ChainLink link) {
    String json = RecordFile.write(inspection, link);
    String hash = SealedText.of(json.getBytes(StandardCharsets.UTF_8)).hash();
    String name = freeName(MOMENT.format(inspection.date()) + "-" + Digest.shortened(hash));
    Path file = folder.resolve(name + ShelvedRecord.ENDING);
    // The pages first: a record that is there has its pages. The list last: it tells of no record
    // that is not there.
    papers
        .apply(name)
        .forEach(p -> AtomicFile.write(folder.resolve(name + p.ending()), p.content()));
    AtomicFile.write(file, json);
    chain().append(new ChainList.Line(link.number(), file.getFileName().toString(), hash));
    return file;
  }

  /** The name itself, or with a number when something already has it. */
  private String freeName(String wanted) {
    String name = wanted;
    for (int next = 2; Files.exists(folder.resolve(name + ShelvedRecord.ENDING)); next++) {
      name = wanted + "-" + next;
    }
    return name;
  }

  /** The last record, when it is this very inspection kept a moment ago. */
  private Optional<Path> holding(
      ChainList.Line last,
      InspectionRecord inspection,
      Optional<Correction> corrects,
      List<LyingRecord> lying) {
    return lying.stream()
        .filter(record -> record.file().equals(last.file()) && record.hash().equals(last.hash()))
        .flatMap(record -> record.link().stream())
        .filter(link -> link.corrects().equals(corrects))
        .map(link -> RecordFile.write(inspection, link).getBytes(StandardCharsets.UTF_8))
        .filter(bytes -> SealedText.of(bytes).hash().equals(last.hash()))
        .map(bytes -> folder.resolve(last.file()))
        .findFirst();
  }

  /**
   * The list, with every record in it that belongs there: those from before there were chains when
   * it is begun, and one that was kept when the program was stopped before it could note it.
   */
  private ChainList takenIn(List<LyingRecord> lying) {
    ChainList list = chain().list();
    if (list.lines().isEmpty()) {
      begin(list, lying);
    } else {
      goOn(list, lying);
    }
    return chain().list();
  }

  private void begin(ChainList list, List<LyingRecord> lying) {
    List<ChainList.Line> lines = Chain.listed(lying).lines();
    if (list.there() || lying.stream().anyMatch(record -> record.link().isPresent())) {
      chain().begunAnew(1 + lines.stream().mapToInt(ChainList.Line::number).max().orElse(0));
    }
    lines.stream().filter(line -> prints(line.file())).forEach(chain()::append);
  }

  private void goOn(ChainList list, List<LyingRecord> lying) {
    Optional<LyingRecord> next =
        last(list)
            .flatMap(last -> lying.stream().filter(record -> record.isNextAfter(last)).findFirst());
    if (next.isPresent() && prints(next.get().file())) {
      LyingRecord record = next.get();
      chain().append(new ChainList.Line(record.number(), record.file(), record.hash()));
      goOn(chain().list(), lying);
    }
  }

  private static boolean prints(String file) {
    return Printable.firstUnprintable(file).isEmpty();
  }

  private static Optional<ChainList.Line> last(ChainList list) {
    return list.lines().stream().max(Comparator.comparingInt(ChainList.Line::number));
  }

  private ChainFile chain() {
    return new ChainFile(folder.resolve(ChainFile.NAME));
  }

  private List<LyingRecord> lying() {
    return shelved().map(ShelvedRecord::lying).toList();
  }

  /** Everything that lies here, with what does not fit together. */
  BoatRecords records() {
    return ShelfReading.of(folder.getFileName().toString(), shelved().toList(), chain());
  }

  private Stream<ShelvedRecord> shelved() {
    return Listing.of(folder, "[!.]*" + ShelvedRecord.ENDING).stream().map(ShelvedRecord::of);
  }
}
