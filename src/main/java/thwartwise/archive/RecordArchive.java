package thwartwise.archive;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import thwartwise.json.Location;
import thwartwise.json.UnusableInput;
import thwartwise.measure.PrintableText;
import thwartwise.record.BoatRecords;
import thwartwise.record.ChainLink;
import thwartwise.record.PaperFault;
import thwartwise.record.RecordEntry;

/** The records of every boat: a folder with one folder for each boat. */
public record RecordArchive(Path folder) {

  RecordStore store(String boat) {
    return new RecordStore(folder.resolve(Slug.of(boat)));
  }

  BoatsList list() {
    return new BoatsList(folder.resolve(BoatsList.NAME));
  }

  /** Every boat that has or had a folder here, by the name of its folder. */
  public List<BoatRecords> boats() {
    List<String> there = folders().map(RecordStore::name).toList();
    return Stream.concat(there.stream(), list().folders().stream())
        .distinct()
        .sorted()
        .map(name -> records(new RecordStore(folder.resolve(name))))
        .toList();
  }

  /** The folders that hold records. */
  Stream<String> filledFolders() {
    return folders().filter(RecordStore::isFilled).map(RecordStore::name);
  }

  private Stream<RecordStore> folders() {
    return Listing.of(folder, "[!.]*").stream().filter(Files::isDirectory).map(RecordStore::new);
  }

  /** The newest record of all boats. */
  public Optional<RecordEntry> newest() {
    return boats().stream()
        .flatMap(boat -> boat.last().stream())
        .max(Comparator.comparing(record -> record.inspection().date().toInstant()));
  }

  /** The records of one boat, even if there are none. */
  public BoatRecords of(String boat) {
    return records(store(boat));
  }

  private BoatRecords records(RecordStore store) {
    BoatRecords records = store.records();
    List<String> faults = new ArrayList<>(records.faults());
    if (!store.isFilled() && list().folders().contains(store.name())) {
      faults.add(PaperFault.missingBoat(store.name()));
    }
    // Before version 3 there was no list of boats.
    if (!list().exists() && records.entries().stream().anyMatch(RecordEntry::sealsPapers)) {
      faults.add(PaperFault.missingBoatsList());
    }
    return new BoatRecords(records.folder(), records.entries(), records.unreadable(), faults);
  }

  /**
   * The boat with that name.
   *
   * @param typed its name, or the name of its folder
   * @throws UnusableInput when there are no records of it
   */
  public BoatRecords boat(String typed) {
    Path named = store(typed).folder();
    String plain = typed.strip().toLowerCase(Locale.ROOT);
    return boats().stream()
        .filter(boat -> boat.folder().equals(plain) || named.endsWith(boat.folder()))
        .findFirst()
        .orElseThrow(
            () ->
                fault(
                    "no record of the boat %s is kept here. \"records\" lists what is.",
                    PrintableText.quoted(typed)));
  }

  /**
   * One record by what a person types: its file, its name, or its number if that is unique.
   *
   * @throws UnusableInput when it is none of them
   */
  public RecordEntry find(String typed) {
    Optional<RecordEntry> file = file(typed);
    if (file.isPresent()) {
      return file.get();
    }
    List<RecordEntry> found = boats().stream().flatMap(b -> b.named(typed).stream()).toList();
    if (found.size() > 1) {
      throw fault(
          "%s may be %s. Write one of these.",
          PrintableText.quoted(typed),
          String.join(" or ", found.stream().map(RecordEntry::handle).toList()));
    }
    return found.stream().findFirst().orElseThrow(() -> none(typed));
  }

  /** The record of a boat by its number, name or file. */
  public RecordEntry find(String typed, BoatRecords boat) {
    String last = typed.substring(1 + Math.max(typed.lastIndexOf('/'), typed.lastIndexOf('\\')));
    return boat.named(typed)
        .or(() -> boat.named(typed.endsWith(StoredInspection.ENDING) ? last : typed))
        .orElseThrow(() -> none(typed));
  }

  private UnusableInput none(String typed) {
    return fault(
        "there is no record %s here. \"records\" lists what is.", PrintableText.quoted(typed));
  }

  private static Optional<RecordEntry> file(String typed) {
    Optional<Path> path = path(typed).filter(Files::isRegularFile);
    if (path.isEmpty()) {
      return Optional.empty();
    }
    StoredInspection record = StoredInspection.of(path.get());
    record.stored().unreadable().ifPresent(RecordArchive::refuse);
    OptionalInt number =
        record
            .stored()
            .link()
            .map(ChainLink::number)
            .map(OptionalInt::of)
            .orElse(OptionalInt.empty());
    return record.entry("", number);
  }

  private static Optional<Path> path(String typed) {
    try {
      return Optional.of(Path.of(typed));
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }

  private static void refuse(String why) {
    throw new UnusableInput(why);
  }

  private UnusableInput fault(String format, Object... parts) {
    return Location.whole(folder.toString()).fault(format, parts);
  }
}
