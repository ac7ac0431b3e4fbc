package thwartwise.archive;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import thwartwise.archive.NewRecord.SavedRecord;
import thwartwise.files.boat.BoatFile;
import thwartwise.measure.PrintableText;
import thwartwise.record.BoatRecords;
import thwartwise.record.Chain;
import thwartwise.record.Chain.ChainList;
import thwartwise.record.Chain.StoredRecord;
import thwartwise.record.ChainLink;
import thwartwise.record.ChainLink.PaperHash;
import thwartwise.record.Paper;

/**
 * The records of one boat, a chain. The name of a record is its time and a part of the hash of its
 * content without its pages, because the pages show the name. No record is ever overwritten.
 */
record RecordStore(Path folder) {
  private static final DateTimeFormatter MOMENT =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HHmmss", Locale.ROOT);

  /** The result for one record: its file, and the list that names it. */
  private record Placed(Path file, ChainText list) {}

  /**
   * Saves a record with everything that belongs to it, or nothing at all.
   *
   * @param boatFile where the boat is written, if it is
   * @param draft the file of the walk that is over
   */
  SavedRecord add(NewRecord wanted, Optional<Path> boatFile, Optional<Path> draft) {
    Path shelves = folder.getParent();
    return StoreLock.holding(
        shelves,
        () -> {
          var files = FileTransaction.in(shelves.toAbsolutePath().getParent(), shelves);
          ChainText before = chain().text();
          Placed placed = placed(wanted, before, files);
          boatFile.ifPresent(
              boat -> files.replace(boat, utf8(BoatFile.write(wanted.inspection().boat()))));
          note(placed.list(), before, files);
          draft.ifPresent(files::remove);
          return new SavedRecord(placed.file(), files.commit());
        });
  }

  private void note(ChainText after, ChainText before, FileTransaction files) {
    if (after.bytes().length != before.bytes().length) {
      files.note(chain().path(), after.bytes());
    }
    RecordArchive archive = new RecordArchive(folder.getParent());
    archive
        .list()
        .naming(Stream.concat(archive.filledFolders(), Stream.of(name())).toList())
        .ifPresent(text -> files.note(archive.list().path(), text));
  }

  private Placed placed(NewRecord wanted, ChainText before, FileTransaction files) {
    List<StoredRecord> stored = stored();
    ChainText list = takenIn(before, stored);
    Optional<ChainList.Line> last = last(list.list());
    return last.flatMap(line -> holding(line, wanted, stored))
        .map(same -> new Placed(same, list))
        .orElseGet(
            () ->
                created(
                    wanted,
                    new ChainLink(
                        1 + last.map(ChainList.Line::number).orElse(0),
                        last.map(ChainList.Line::hash),
                        wanted.corrects(),
                        Optional.of(List.of())),
                    list,
                    files));
  }

  private Placed created(NewRecord wanted, ChainLink link, ChainText list, FileTransaction files) {
    String bare = RecordFile.write(wanted.inspection(), link);
    String moment = MOMENT.format(wanted.inspection().date());
    String name = freeName(moment + "-" + Digest.shortened(SealedText.of(utf8(bare)).hash()));
    List<Paper> papers = wanted.papers().of(name, wanted.corrects());
    papers.forEach(p -> files.create(folder.resolve(name + p.ending()), p.content()));
    byte[] json = utf8(RecordFile.write(wanted.inspection(), link.withPapers(hashes(papers))));
    Path file = folder.resolve(name + StoredInspection.ENDING);
    files.create(file, json);
    return new Placed(
        file,
        list.with(
            new ChainList.Line(
                link.number(), file.getFileName().toString(), SealedText.of(json).hash())));
  }

  private static List<PaperHash> hashes(List<Paper> papers) {
    return papers.stream().map(p -> new PaperHash(p.ending(), Digest.whole(p.content()))).toList();
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  /** The name itself, or with a number if a record or a page already has it. */
  private String freeName(String wanted) {
    String name = wanted;
    for (int next = 2; !Listing.of(folder, name + "{.,-card.}*").isEmpty(); next++) {
      name = wanted + "-" + next;
    }
    return name;
  }

  /** The last record, if it is this same inspection, saved a moment ago. */
  private Optional<Path> holding(ChainList.Line last, NewRecord wanted, List<StoredRecord> stored) {
    return stored.stream()
        .filter(record -> record.file().equals(last.file()) && record.hash().equals(last.hash()))
        .flatMap(record -> record.link().stream())
        .filter(link -> link.corrects().equals(wanted.corrects()))
        .map(link -> utf8(RecordFile.write(wanted.inspection(), link)))
        .filter(bytes -> SealedText.of(bytes).hash().equals(last.hash()))
        .map(bytes -> folder.resolve(last.file()))
        .findFirst();
  }

  /**
   * The list with every record that belongs in it: records from before there were chains when the
   * list begins, and a record whose line could not be written.
   */
  private static ChainText takenIn(ChainText text, List<StoredRecord> stored) {
    ChainList list = text.list();
    return list.lines().isEmpty() ? started(text, list, stored) : goneOn(text, list, stored);
  }

  private static ChainText started(ChainText text, ChainList list, List<StoredRecord> stored) {
    ChainText started = text;
    List<ChainList.Line> lines = Chain.listed(stored).lines();
    if (list.exists() || stored.stream().anyMatch(record -> record.link().isPresent())) {
      started =
          started.restarted(1 + lines.stream().mapToInt(ChainList.Line::number).max().orElse(0));
    }
    for (ChainList.Line line : lines) {
      started = prints(line.file()) ? started.with(line) : started;
    }
    return started;
  }

  private static ChainText goneOn(ChainText text, ChainList list, List<StoredRecord> stored) {
    Optional<StoredRecord> next =
        last(list)
            .flatMap(
                last -> stored.stream().filter(record -> record.isNextAfter(last)).findFirst());
    if (next.isEmpty() || !prints(next.get().file())) {
      return text;
    }
    StoredRecord record = next.get();
    ChainText longer = text.with(new ChainList.Line(record.number(), record.file(), record.hash()));
    return goneOn(longer, longer.list(), stored);
  }

  private static boolean prints(String file) {
    return PrintableText.firstUnprintable(file).isEmpty();
  }

  private static Optional<ChainList.Line> last(ChainList list) {
    return list.lines().stream().max(Comparator.comparingInt(ChainList.Line::number));
  }

  private ChainFile chain() {
    return new ChainFile(folder.resolve(ChainFile.NAME));
  }

  private List<StoredRecord> stored() {
    return shelved().map(StoredInspection::stored).toList();
  }

  String name() {
    return folder.getFileName().toString();
  }

  /** Whether there is anything of a chain here. */
  boolean isFilled() {
    return chain().exists() || !Listing.of(folder, "[!.]*" + StoredInspection.ENDING).isEmpty();
  }

  /** Everything in the folder, with what does not fit together. */
  BoatRecords records() {
    return StoreReading.of(folder, shelved().toList(), chain());
  }

  private Stream<StoredInspection> shelved() {
    return Listing.of(folder, "[!.]*" + StoredInspection.ENDING).stream().map(StoredInspection::of);
  }
}
