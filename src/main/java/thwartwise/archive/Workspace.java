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
 * The folder for boats, drafts, records and the user's own rules. It is created when the first file
 * is written. Whatever cannot be written or read is one {@link UnusableInput}.
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
   * Writes a sheet over an earlier one of that name.
   *
   * @param ending with its point, as in {@code .pdf}
   */
  public Path saveSheet(String name, String ending, byte[] content) {
    Path file = folder.resolve("sheets").resolve(Slug.of(name) + ending);
    AtomicFile.write(file, content);
    return file;
  }

  /** Every readable boat here, in order of the file names. */
  public List<Boat> boats() {
    return files("boats").stream().sorted().flatMap(Workspace::boatIn).toList();
  }

  /**
   * The readable boats. A damaged file must not stand in the way of the others; inspecting it
   * reports the damage.
   */
  private static Stream<Boat> boatIn(Path file) {
    try {
      return Stream.of(BoatFile.read(file));
    } catch (UnusableInput damaged) {
      return Stream.empty();
    }
  }

  /** The file of the boat with that name, whether it exists or not. */
  public Path boatPath(String name) {
    return folder.resolve("boats").resolve(Slug.of(name) + ENDING);
  }

  /**
   * Saves a record for good; no record is ever overwritten.
   *
   * @param page the text page, saved next to it with the ending .txt
   * @return the JSON file
   */
  public Path saveRecord(InspectionRecord inspection, String page) {
    return save(NewRecord.of(inspection, (number, corrects) -> List.of(Paper.text(".txt", page))))
        .file();
  }

  /**
   * Saves a record for good, with its pages and everything that belongs to it: all of it appears,
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
   * Finishes or takes back what a killed program was doing here. It does nothing if nothing is left
   * over; a read-only folder stays as it is.
   */
  public Workspace recovered() {
    new Leftovers(folder).clear();
    return this;
  }

  /** All records here, boat by boat. */
  public RecordArchive records() {
    return new RecordArchive(folder.resolve("records"));
  }

  /** Saves what was answered before going out, next to the records; no file is ever overwritten. */
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

  /** The names of the boats with a readable draft, in order. */
  public List<String> drafts() {
    return draftFiles().stream().flatMap(Workspace::nameIn).sorted().toList();
  }

  /**
   * The readable drafts. A damaged draft must not stand in the way of the others; opening it by
   * name reports the damage.
   */
  private static Stream<String> nameIn(Path file) {
    try {
      return Stream.of(DraftFile.read(file).name());
    } catch (UnusableInput damaged) {
      return Stream.empty();
    }
  }

  /**
   * Puts every unreadable draft aside under another name, where an editor still reads it.
   *
   * @return one line for each; that of a newer program stays where it is and is reported too
   */
  public List<String> damagedDrafts() {
    return draftFiles().stream().sorted().flatMap(DamagedDraft::in).toList();
  }

  /** Deletes a draft, if there is one. */
  public void deleteDraft(String name) {
    Path file = draftPath(name);
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      throw Location.whole(file.toString())
          .fault(e, "cannot be deleted: %s. Delete it by hand.", IoErrorText.of(e));
    }
  }

  /** The lock on a draft, taken before anything is asked; empty when another terminal has it. */
  public Optional<DraftLock> lockDraft(String name) {
    return DraftLock.at(folder.resolve("drafts").resolve("." + Slug.of(name) + ".lock"));
  }

  private Path draftPath(String name) {
    return folder.resolve("drafts").resolve(Slug.of(name) + ENDING);
  }

  /** The rule sets in the folder, which are applied every time, in order of their file names. */
  public List<Path> ruleFiles() {
    return files("rules").stream().sorted().toList();
  }

  /**
   * The checklists in the folder, which are asked next to the bundled ones, in order of file names.
   */
  public List<Path> checklistFiles() {
    return files("checklists").stream().sorted().toList();
  }

  /** Writes a boat over the file it was read from, wherever that is. */
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

  /** An unreadable draft, which is reported and put aside so that its answers are not lost. */
  private static final class DamagedDraft {
    private static final String ASIDE = ".damaged";

    private DamagedDraft() {}

    /** One line if the file is such a draft; nothing when it can be read. */
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

  /** Files that a program left here when it was killed while writing. */
  private record Leftovers(Path folder) {

    /** Clears them; a folder that cannot be written can still be read. */
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

  /** What was asked and answered before going out, by its time, next to the records of the boat. */
  private record TodayStore(Path folder) {
    private static final DateTimeFormatter MOMENT =
        DateTimeFormatter.ofPattern("'today-'uuuu-MM-dd'T'HHmmss", Locale.ROOT);

    /** Adds a file. No file is ever overwritten; a second one in the same moment gets a number. */
    Path add(OffsetDateTime moment, String text) {
      // Two programs at once would take the same number.
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
