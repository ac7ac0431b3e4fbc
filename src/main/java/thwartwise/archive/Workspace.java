package thwartwise.archive;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import thwartwise.archive.NewRecord.SavedRecord;
import thwartwise.boat.Boat;
import thwartwise.files.boat.BoatFile;
import thwartwise.json.IoErrorText;
import thwartwise.json.Location;
import thwartwise.json.UnusableInput;
import thwartwise.record.InspectionRecord;
import thwartwise.record.Paper;

/**
 * The folder that holds boats, drafts, records and rules of one's own. It need not exist: it is
 * made when the first file is written. Whatever cannot be written or read is one {@link
 * UnusableInput}.
 */
public record Workspace(Path folder) {
  private static final String ENDING = ".json";

  /** Writes the boat over its earlier file, if it has one. */
  public Path saveBoat(Boat boat) {
    Path file = boatPath(boat.name());
    AtomicFile.write(file, BoatFile.write(boat));
    return file;
  }

  /**
   * Writes a sheet to be filled in over an earlier one of that name.
   *
   * @param ending with its point, as in {@code .pdf}
   */
  public Path saveSheet(String name, String ending, byte[] content) {
    Path file = folder.resolve("sheets").resolve(Slug.of(name) + ending);
    AtomicFile.write(file, content);
    return file;
  }

  /** Every boat kept here that can be read, in order of the file names. */
  public List<Boat> boats() {
    return files("boats").stream().sorted().flatMap(Workspace::boatIn).toList();
  }

  /** A damaged boat file must not stand in the way of the others; inspected, it is refused. */
  private static Stream<Boat> boatIn(Path file) {
    try {
      return Stream.of(BoatFile.read(file));
    } catch (UnusableInput damaged) {
      return Stream.empty();
    }
  }

  /** Where the boat of that name is kept, whether it is there yet or not. */
  public Path boatPath(String name) {
    return folder.resolve("boats").resolve(Slug.of(name) + ENDING);
  }

  /**
   * Keeps a record for good; no record is ever written over.
   *
   * @param page the same for people, laid next to it with the ending .txt
   * @return the JSON file
   */
  public Path saveRecord(InspectionRecord inspection, String page) {
    return save(NewRecord.of(inspection, (number, corrects) -> List.of(Paper.text(".txt", page))))
        .file();
  }

  /**
   * Keeps a record for good, with its pages and everything that belongs to it: all of it appears,
   * or nothing does.
   */
  public SavedRecord save(NewRecord wanted) {
    String boat = wanted.inspection().boat().name();
    return records()
        .store(boat)
        .add(
            wanted,
            wanted.withBoat() ? Optional.of(boatPath(boat)) : Optional.empty(),
            wanted.finishedDraft().map(this::draftPath));
  }

  /**
   * Brings to its end, or takes back, what a program was doing here when it was killed. Does
   * nothing where nothing is left over; a folder that cannot be written stays as it is.
   */
  public Workspace recovered() {
    new Leftovers(folder).clear();
    return this;
  }

  /** All records kept here, boat by boat. */
  public RecordArchive records() {
    return new RecordArchive(folder.resolve("records"));
  }

  /** Keeps what was answered before going out, next to the records; none is ever written over. */
  public Path saveToday(String boat, OffsetDateTime moment, String text) {
    return new TodayStore(folder.resolve("records").resolve(Slug.of(boat))).add(moment, text);
  }

  public void saveDraft(String name, List<DraftAnswer> answers) {
    AtomicFile.write(draftPath(name), new DraftFile(name, answers).json());
  }

  /** The answers given so far; empty when there is no such draft. */
  public Optional<List<DraftAnswer>> draft(String name) {
    Path file = draftPath(name);
    return Files.exists(file) ? Optional.of(DraftFile.read(file).answers()) : Optional.empty();
  }

  /** The names of the boats that have a draft that can be gone on with, in order. */
  public List<String> drafts() {
    return draftFiles().stream().flatMap(Workspace::nameIn).sorted().toList();
  }

  /** A damaged draft must not stand in the way of the others; asked for by name, it is refused. */
  private static Stream<String> nameIn(Path file) {
    try {
      return Stream.of(DraftFile.read(file).name());
    } catch (UnusableInput damaged) {
      return Stream.empty();
    }
  }

  /**
   * Puts every draft that cannot be read aside under another name, where an editor still reads it.
   *
   * @return one line for each; that of a newer program stays where it is and is reported too
   */
  public List<String> damagedDrafts() {
    return draftFiles().stream().sorted().flatMap(DamagedDraft::in).toList();
  }

  /** Does nothing when there is no such draft. */
  public void deleteDraft(String name) {
    Path file = draftPath(name);
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      throw Location.whole(file.toString())
          .fault(e, "cannot be deleted: %s. Delete it by hand.", IoErrorText.of(e));
    }
  }

  /** Taken before anything is asked; empty when another terminal works on that draft. */
  public Optional<DraftLock> lockDraft(String name) {
    return DraftLock.at(folder.resolve("drafts").resolve("." + Slug.of(name) + ".lock"));
  }

  private Path draftPath(String name) {
    return folder.resolve("drafts").resolve(Slug.of(name) + ENDING);
  }

  /** The rule sets laid there to be applied every time, in order of their file names. */
  public List<Path> ruleFiles() {
    return files("rules").stream().sorted().toList();
  }

  /** The checklists laid there to be asked next to those that ship, in order of file names. */
  public List<Path> checklistFiles() {
    return files("checklists").stream().sorted().toList();
  }

  /** Writes a boat over the file it was read from, wherever that lies. */
  public static void rewrite(Path file, Boat boat) {
    AtomicFile.write(file, BoatFile.write(boat));
  }

  private List<Path> draftFiles() {
    return files("drafts");
  }

  private List<Path> files(String name) {
    Path within = folder.resolve(name);
    List<Path> files = new ArrayList<>();
    if (!Files.isDirectory(within)) {
      return files;
    }
    try (DirectoryStream<Path> all = Files.newDirectoryStream(within, "[!.]*" + ENDING)) {
      all.forEach(files::add);
      return files;
    } catch (IOException e) {
      throw Location.whole(within.toString())
          .fault(e, "cannot be read: %s. Check the folder.", IoErrorText.of(e));
    }
  }

  /** A draft that cannot be read: told, and put aside, so that what was answered is not lost. */
  private static final class DamagedDraft {
    private static final String ASIDE = ".damaged";

    private DamagedDraft() {}

    /** One line when that file is one; nothing when it can be read. */
    static Stream<String> in(Path file) {
      try {
        DraftFile.read(file);
        return Stream.empty();
      } catch (UnusableInput damaged) {
        return Stream.of(
            DraftFile.isOfNewerProgram(file) ? damaged.getMessage() : putAside(file, damaged));
      }
    }

    private static String putAside(Path file, UnusableInput damaged) {
      Path aside = free(file);
      try {
        Files.move(file, aside);
        return damaged.getMessage()
            + " The walk in it was put aside as "
            + aside.getFileName()
            + "; a text editor still shows its answers.";
      } catch (IOException e) {
        return damaged.getMessage() + " It could not be put aside: " + IoErrorText.of(e) + ".";
      }
    }

    private static Path free(Path file) {
      Path aside = file.resolveSibling(file.getFileName() + ASIDE);
      for (int next = 2; Files.exists(aside); next++) {
        aside = file.resolveSibling(file.getFileName() + ASIDE + "-" + next);
      }
      return aside;
    }
  }

  /** What a program left in a folder of ours when it was killed in the middle of writing. */
  private record Leftovers(Path folder) {

    /** A folder that nothing may be written to can still be read. */
    void clear() {
      try {
        if (FileTransaction.isUnfinished(records())) {
          StoreLock.holding(
              records(), () -> FileTransaction.in(folder.toAbsolutePath(), records()));
        }
        for (Path within : written().toList()) {
          AtomicFile.clear(within);
        }
      } catch (IOException | UnusableInput stays) {
        return;
      }
    }

    private Path records() {
      return folder.resolve("records");
    }

    private Stream<Path> written() {
      List<Path> boats =
          Listing.of(records(), "[!.]*").stream().filter(Files::isDirectory).toList();
      return Stream.concat(
          Stream.of(folder.resolve("boats"), folder.resolve("drafts")), boats.stream());
    }
  }

  /**
   * What was asked and answered before going out, by its moment, next to the records of the boat.
   */
  private record TodayStore(Path folder) {
    private static final DateTimeFormatter MOMENT =
        DateTimeFormatter.ofPattern("'today-'uuuu-MM-dd'T'HHmmss", Locale.ROOT);

    /** None is ever written over; a second one in the same moment gets a number. */
    Path add(OffsetDateTime moment, String text) {
      // Two at once would take the same number.
      return StoreLock.holding(folder.getParent(), () -> added(moment, text));
    }

    private Path added(OffsetDateTime moment, String text) {
      String wanted = MOMENT.format(moment);
      Path file = folder.resolve(wanted + ".txt");
      for (int next = 2; Files.exists(file); next++) {
        file = folder.resolve(wanted + "-" + next + ".txt");
      }
      AtomicFile.write(file, text);
      return file;
    }
  }
}
