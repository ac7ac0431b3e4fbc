package thwartwise.archive;

import static thwartwise.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thwartwise.boat.Boat;
import thwartwise.files.boat.BoatFile;
import thwartwise.files.boat.WrongBoats;
import thwartwise.record.BoatRecords;
import thwartwise.record.InspectionRecord;
import thwartwise.record.Paper;
import thwartwise.record.SampleRecords;

class VouchedPagesTest {
  private static final List<String> ENDINGS =
      List.of(".txt", ".html", ".pdf", "-card.txt", "-card.html", "-card.pdf");

  @TempDir Path home;

  private final Boat boat = BoatFile.parse(WrongBoats.goodFile(), "soup.json");

  @Test
  void pages_as_they_were_kept_are_no_fault() {
    keep(boat, 1);
    keep(boat, 2);
    assertThat(faults("Soup Ladle")).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {".txt", ".html", ".pdf", "-card.txt", "-card.html", "-card.pdf"})
  void a_page_that_was_edited_is_named(String ending) throws IOException {
    keep(boat, 1);
    Path page = page(keep(boat, 2), ending);
    Files.writeString(page, Files.readString(page).replace("Launch held", "Nothing found"));
    assertThat(faults("Soup Ladle"))
        .containsExactly(
            "The page %s of record 2 was changed after it was kept. Put it back from a copy."
                .formatted(page.getFileName()));
  }

  @ParameterizedTest
  @ValueSource(strings = {".txt", ".html", ".pdf", "-card.txt", "-card.html", "-card.pdf"})
  void a_page_that_is_gone_is_named(String ending) throws IOException {
    Path page = page(keep(boat, 1), ending);
    Files.delete(page);
    assertThat(faults("Soup Ladle"))
        .containsExactly(
            "The page %s of record 1 is gone. Put it back from a copy."
                .formatted(page.getFileName()));
  }

  @Test
  void a_page_that_became_a_folder_is_changed() throws IOException {
    Path page = page(keep(boat, 1), ".txt");
    Files.delete(page);
    Files.createDirectory(page);
    assertThat(faults("Soup Ladle")).singleElement().asString().contains("was changed after");
  }

  @Test
  void a_page_without_a_record_is_named() throws IOException {
    Path record = keep(boat, 1);
    Files.writeString(record.resolveSibling("2026-06-15T090000-0123abcd-card.txt"), "Four adults");
    Files.writeString(page(record, "-list.txt"), "Four adults");
    Files.writeString(record.resolveSibling("today-2026-06-14T090000.txt"), "answers");
    Files.writeString(record.resolveSibling("my notes.txt"), "notes");
    assertThat(faults("Soup Ladle"))
        .containsExactly(
            "The page %s was added: no record vouches for it. Do not rely on it."
                .formatted(page(record, "-list.txt").getFileName()),
            "The page 2026-06-15T090000-0123abcd-card.txt was added: no record vouches for it."
                + " Do not rely on it.");
  }

  @Test
  void the_pages_left_behind_give_away_a_last_record_gone_with_its_line() throws IOException {
    keep(boat, 1);
    Path last = keep(boat, 2);
    Files.delete(last);
    Path list = last.resolveSibling("chain.list");
    Files.writeString(list, Files.readString(list).replaceFirst("(?m)^2 .*\\n", ""));
    assertThat(faults("Soup Ladle")).hasSize(ENDINGS.size()).allMatch(f -> f.contains("was added"));
  }

  @Test
  void pages_of_a_record_from_before_they_were_vouched_for_are_no_fault() throws IOException {
    Path store = Files.createDirectories(home.resolve("records/soup-ladle"));
    Files.writeString(store.resolve("2026-06-14T090507-cd212579.json"), OldRecord.beforePapers());
    Files.writeString(store.resolve("2026-06-14T090507-cd212579.txt"), "page");
    keep(boat, 1);
    BoatRecords records = workspace().records().of("Soup Ladle");
    assertThat(records.entries()).extracting(r -> r.sealsPapers()).containsExactly(false, true);
    assertThat(records.faults())
        .containsExactly(
            "The list of records was lost or damaged before record 2 was kept: whether a record"
                + " was lost with it cannot be told.");
  }

  @Test
  void a_boat_whose_folder_is_gone_is_named() throws IOException {
    keep(boat, 1);
    keep(named("Egg Whisk"), 1);
    empty(home.resolve("records/egg-whisk"));
    Files.delete(home.resolve("records/egg-whisk"));
    assertThat(faults("Soup Ladle")).isEmpty();
    assertThat(workspace().records().boats())
        .extracting(BoatRecords::folder)
        .containsExactly("egg-whisk", "soup-ladle");
    assertThat(faults("Egg Whisk")).containsExactly(gone("egg-whisk"));
  }

  @Test
  void a_boat_whose_folder_was_emptied_is_named_too() throws IOException {
    keep(named("Egg Whisk"), 1);
    empty(home.resolve("records/egg-whisk"));
    assertThat(faults("Egg Whisk")).containsExactly(gone("egg-whisk"));
  }

  @Test
  void boats_from_before_there_was_a_list_are_taken_into_it() throws IOException {
    Path store = Files.createDirectories(home.resolve("records/egg-whisk"));
    Files.writeString(store.resolve("2026-06-14T090507-cd212579.json"), OldRecord.json());
    keep(boat, 1);
    assertThat(home.resolve("records/boats.list"))
        .hasContent(
            "thwartwise/boats/1: folder of each boat of which a record was kept\n"
                + "egg-whisk\nsoup-ladle\n");
  }

  @Test
  void a_lost_list_of_boats_is_told() throws IOException {
    keep(boat, 1);
    Files.delete(home.resolve("records/boats.list"));
    assertThat(faults("Soup Ladle"))
        .containsExactly(
            "The list of boats (boats.list) is lost: whether the records of another boat are gone"
                + " cannot be told. Put it back from a copy; otherwise the next inspection begins"
                + " it anew.");
  }

  @Test
  void a_part_left_by_a_killed_program_is_cleared_away_and_a_young_one_is_left()
      throws IOException {
    Path record = keep(boat, 1);
    workspace().saveDraft("walk", List.of());
    Path young = Files.writeString(home.resolve("drafts/.walk.json.1.part"), "half");
    Path old = Files.writeString(home.resolve("drafts/.walk.json.2.part"), "half");
    Path among = Files.writeString(record.resolveSibling(".today-x.txt.3.part"), "half");
    for (Path part : List.of(old, among)) {
      Files.setLastModifiedTime(part, FileTime.from(Instant.now().minusSeconds(120)));
    }
    workspace().recovered();
    assertThat(young).exists();
    assertThat(old).doesNotExist();
    assertThat(among).doesNotExist();
  }

  @Test
  void two_answers_of_one_second_are_both_kept() throws Exception {
    OffsetDateTime moment = OffsetDateTime.parse("2026-06-14T09:00:00Z");
    List<Thread> threads =
        Stream.of("a", "b", "c", "d", "e", "f", "g", "h")
            .map(text -> new Thread(() -> workspace().saveToday("Soup Ladle", moment, text)))
            .toList();
    threads.forEach(Thread::start);
    for (Thread thread : threads) {
      thread.join();
    }
    try (var files = Files.list(home.resolve("records/soup-ladle"))) {
      assertThat(files).hasSize(8);
    }
  }

  private static String gone(String folder) {
    return "The records of this boat are gone: the list of boats (boats.list) names the folder "
        + folder
        + ". Put it back from a copy; if that was meant, take its line out of the list.";
  }

  private static void empty(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.toList()) {
        Files.delete(file);
      }
    }
  }

  private List<String> faults(String name) {
    return workspace().records().of(name).faults();
  }

  private Boat named(String name) {
    return BoatFile.parse(WrongBoats.goodFile().replace("Soup Ladle", name), "boat.json");
  }

  private static Path page(Path record, String ending) {
    return record.resolveSibling(StoredInspection.bare(record.getFileName().toString()) + ending);
  }

  private Path keep(Boat of, int hour) {
    InspectionRecord inspection =
        new InspectionRecord(
            OffsetDateTime.parse("2026-06-14T0" + hour + ":00:00Z"),
            "M. Quill",
            "0.1.0",
            of,
            SampleRecords.report());
    return workspace()
        .save(
            NewRecord.of(
                inspection,
                (number, corrects) ->
                    ENDINGS.stream().map(e -> Paper.text(e, "Launch held " + number)).toList()))
        .file();
  }

  private Workspace workspace() {
    return new Workspace(home);
  }
}
