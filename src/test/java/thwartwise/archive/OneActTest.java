package thwartwise.archive;

import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static thwartwise.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thwartwise.archive.NewRecord.SavedRecord;
import thwartwise.boat.Boat;
import thwartwise.files.boat.BoatFile;
import thwartwise.files.boat.WrongBoats;
import thwartwise.json.UnusableInput;
import thwartwise.record.BoatRecords;
import thwartwise.record.InspectionRecord;
import thwartwise.record.Paper;
import thwartwise.record.SampleRecords;

/** Boat file, record, pages and lists appear and the draft goes, all at once, wherever it stops. */
class OneActTest {
  private static final String DRAFT = "walk-2026-06-14-080000";

  @TempDir Path home;

  private final Boat measured = BoatFile.parse(WrongBoats.goodFile(), "soup.json");
  private final Boat refitted =
      BoatFile.parse(WrongBoats.goodFile().replace("61", "63"), "soup.json");
  private Map<String, String> old;

  @BeforeEach
  void a_boat_inspected_before_and_a_walk_that_is_not_finished() throws IOException {
    assertThat(refitted).isNotEqualTo(measured);
    keep(workspace(home), measured, 1);
    workspace(home).saveDraft(DRAFT, List.of(new DraftAnswer("name", "Soup Ladle")));
    old = files();
  }

  @Test
  void a_program_killed_at_any_step_leaves_the_old_state_or_one_the_next_start_finishes()
      throws IOException {
    Map<String, String> kept = keptWhole();
    int steps = stepsOfOne();
    assertThat(steps).isGreaterThan(15);
    int finished = 0;
    for (int step = 1; step <= steps; step++) {
      beginAgain();
      FailingDisk disk = FailingDisk.of(home).dyingAt(step);
      assertThatThrownBy(() -> keep(workspace(disk.path(home)), refitted, 2))
          .isInstanceOf(FailingDisk.Killed.class);
      workspace(home).recovered();
      Map<String, String> found = files();
      assertThat(found).as("killed at %d: %s", step, disk.steps()).isIn(old, kept);
      finished += found.equals(kept) ? 1 : 0;
      assertThat(records().faults()).as("killed at %d", step).isEmpty();
    }
    // Both happen: before the staged folder is renamed, and after it.
    assertThat(finished).isBetween(5, steps - 5);
  }

  @Test
  void a_recovery_killed_at_any_step_is_finished_by_the_one_after_it() throws IOException {
    Map<String, String> kept = keptWhole();
    int committed = stepsOfOne() - 8;
    for (int step = 1; step < 8; step++) {
      beginAgain();
      FailingDisk first = FailingDisk.of(home).dyingAt(committed);
      assertThatThrownBy(() -> keep(workspace(first.path(home)), refitted, 2))
          .isInstanceOf(FailingDisk.Killed.class);
      FailingDisk second = FailingDisk.of(home).dyingAt(step);
      assertThatThrownBy(() -> workspace(second.path(home)).recovered())
          .isInstanceOf(FailingDisk.Killed.class);
      workspace(home).recovered();
      assertThat(files()).as("killed at %d", step).isIn(old, kept);
    }
  }

  @Test
  void a_full_disk_at_any_step_leaves_the_old_state_or_the_whole_new_one() throws IOException {
    Map<String, String> kept = keptWhole();
    int steps = stepsOfOne();
    int refused = 0;
    for (int step = 1; step <= steps; step++) {
      beginAgain();
      FailingDisk disk = FailingDisk.of(home).fullAt(step);
      try {
        keep(workspace(disk.path(home)), refitted, 2);
        workspace(home).recovered();
        Map<String, String> found = files();
        // What could not be done was a list or the draft, and the next one makes it good.
        assertThat(found.keySet()).as("full at %d", step).containsAll(recordsIn(kept));
      } catch (UnusableInput full) {
        refused++;
        assertThat(full)
            .hasMessageContaining("no room left on the disk. Make room there, or name a folder");
        assertThat(visible()).as("full at %d: %s", step, disk.steps()).isEqualTo(old);
        workspace(home).recovered();
        assertThat(files()).as("full at %d", step).isEqualTo(old);
      }
    }
    assertThat(refused).isGreaterThan(10);
  }

  @Test
  void a_full_disk_is_called_so_with_the_file_it_met() {
    FailingDisk disk = FailingDisk.of(home).fullAt(4);
    assertThatThrownBy(() -> keep(workspace(disk.path(home)), refitted, 2))
        .isInstanceOf(UnusableInput.class)
        .hasMessageMatching(
            ".*/records/soup-ladle/2026-06-14T020000-[0-9a-f]{8}[-a-z]*\\.txt: cannot be written: no"
                + " room left on the disk. Make room there, or name a folder on another disk\\.");
  }

  @Test
  void a_list_that_cannot_be_written_leaves_the_record_kept_and_says_so() throws IOException {
    Path list = home.resolve("records/soup-ladle/chain.list");
    FailingDisk disk = FailingDisk.of(home).refusing("chain.list");
    SavedRecord saved = keep(workspace(disk.path(home)), refitted, 2);
    assertThat(saved.warnings())
        .containsExactly(
            list + ": cannot be written: the system refused. Free the folder or name another one.");
    assertThat(RecordFile.read(home.resolve(saved.file().toString())).boat()).isEqualTo(refitted);
    assertThat(BoatFile.read(workspace(home).boatPath("Soup Ladle"))).isEqualTo(refitted);
    keep(workspace(home), refitted, 3);
    assertThat(records().faults()).isEmpty();
    assertThat(records().entries()).hasSize(3);
  }

  @Test
  void a_boat_file_that_cannot_be_replaced_keeps_nothing() throws IOException {
    FailingDisk disk = FailingDisk.of(home).refusing("boats/soup-ladle.json");
    assertThatThrownBy(() -> keep(workspace(disk.path(home)), refitted, 2))
        .isInstanceOf(UnusableInput.class)
        .hasMessageStartingWith(home.resolve("boats/soup-ladle.json") + ": cannot be written: ");
    assertThat(files()).isEqualTo(old);
  }

  @Test
  void a_plan_that_leads_out_of_the_folder_is_refused() throws IOException {
    Path committed = Files.createDirectories(home.resolve("records/.committed"));
    Files.writeString(committed.resolve("1"), "mischief");
    Files.writeString(committed.resolve("plan"), "CREATE 1 ../outside.txt\n");
    assertThatThrownBy(() -> keep(workspace(home), refitted, 2))
        .isInstanceOf(UnusableInput.class)
        .hasMessage(
            committed.resolve("plan")
                + ": this is damaged. Move the folder it lies in somewhere else.");
    assertThat(home.resolveSibling("outside.txt")).doesNotExist();
  }

  private Map<String, String> keptWhole() throws IOException {
    keep(workspace(home), refitted, 2);
    Map<String, String> kept = files();
    assertThat(kept).hasSize(old.size() + 3 - 1);
    return kept;
  }

  private int stepsOfOne() throws IOException {
    beginAgain();
    FailingDisk disk = FailingDisk.of(home);
    keep(workspace(disk.path(home)), refitted, 2);
    return disk.steps().size();
  }

  private static List<String> recordsIn(Map<String, String> files) {
    return files.keySet().stream().filter(name -> name.startsWith("records/soup")).toList();
  }

  private static SavedRecord keep(Workspace workspace, Boat boat, int hour) {
    InspectionRecord inspection =
        new InspectionRecord(
            OffsetDateTime.parse("2026-06-14T0" + hour + ":00:00Z"),
            "M. Quill",
            "0.1.0",
            boat,
            SampleRecords.report());
    return workspace.save(
        NewRecord.of(
                inspection,
                (number, corrects) ->
                    List.of(
                        Paper.text(".txt", "page " + number),
                        Paper.text("-card.txt", "card " + number)))
            .withBoatFile()
            .ending(DRAFT));
  }

  private BoatRecords records() {
    return workspace(home).records().of("Soup Ladle");
  }

  private static Workspace workspace(Path folder) {
    return new Workspace(folder);
  }

  private void beginAgain() throws IOException {
    for (Path file : all()) {
      Files.delete(file);
    }
    for (Map.Entry<String, String> file : old.entrySet()) {
      Path path = home.resolve(file.getKey());
      Files.createDirectories(path.getParent());
      Files.writeString(path, file.getValue(), StandardCharsets.ISO_8859_1);
    }
  }

  /** Everything that lies in the folder, hidden files too, but for the empty lock. */
  private Map<String, String> files() throws IOException {
    Map<String, String> files = new TreeMap<>();
    for (Path file : all()) {
      if (!file.endsWith(".lock")) {
        files.put(
            home.relativize(file).toString(), Files.readString(file, StandardCharsets.ISO_8859_1));
      }
    }
    return files;
  }

  /** What anybody sees who does not look for hidden files. */
  private Map<String, String> visible() throws IOException {
    Map<String, String> files = new TreeMap<>(files());
    files.keySet().removeIf(name -> name.contains("/."));
    return files;
  }

  private List<Path> all() throws IOException {
    List<Path> files = new java.util.ArrayList<>();
    Files.walkFileTree(
        home,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
            files.add(file);
            return FileVisitResult.CONTINUE;
          }
        });
    return files;
  }
}
