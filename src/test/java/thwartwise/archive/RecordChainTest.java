package thwartwise.archive;

import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static thwartwise.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thwartwise.boat.Boat;
import thwartwise.files.boat.BoatFile;
import thwartwise.files.boat.WrongBoats;
import thwartwise.json.UnusableInput;
import thwartwise.record.BoatRecords;
import thwartwise.record.Chain;
import thwartwise.record.Chain.StoredRecord;
import thwartwise.record.InspectionRecord;
import thwartwise.record.InspectionRecord.Correction;
import thwartwise.record.RecordEntry;
import thwartwise.record.SampleRecords;

class RecordChainTest {
  private static final String COPY = " Put it back from a copy.";

  @TempDir Path home;

  private final Boat boat = BoatFile.parse(WrongBoats.goodFile(), "soup.json");

  @Test
  void records_are_numbered_and_each_carries_the_hash_of_the_one_before() throws IOException {
    List<Path> files = keepThree();
    List<RecordEntry> kept = records().entries();
    assertThat(kept).extracting(r -> r.number().orElse(0)).containsExactly(1, 2, 3);
    assertThat(kept).extracting(RecordEntry::handle).contains("soup-ladle/1", "soup-ladle/3");
    assertThat(Files.readString(files.get(0))).contains("\n  \"previous\": null,\n");
    assertThat(Files.readString(files.get(1))).contains("\"previous\": \"" + kept.get(0).hash());
    assertThat(Files.readString(files.get(2))).contains("\"previous\": \"" + kept.get(1).hash());
    assertThat(records().faults()).isEmpty();
    assertThat(records().unreadable()).isEmpty();
  }

  @Test
  void the_list_beside_them_is_plain_text() throws IOException {
    List<Path> files = keepThree();
    List<RecordEntry> kept = records().entries();
    assertThat(list())
        .hasContent(
            "thwartwise/chain/1: number, file and SHA-256 of each record,"
                + " in the order they were kept\n"
                + String.format("1 %s %s%n", files.get(0).getFileName(), kept.get(0).hash())
                + String.format("2 %s %s%n", files.get(1).getFileName(), kept.get(1).hash())
                + String.format("3 %s %s%n", files.get(2).getFileName(), kept.get(2).hash()));
  }

  /** Each byte with one of its bits turned, another bit from byte to byte. */
  @Test
  void every_byte_of_a_record_that_flips_leaves_it_at_odds_with_its_hash() throws IOException {
    byte[] bytes = Files.readAllBytes(keepThree().get(1));
    String hash = SealedText.of(bytes).hash();
    assertThat(bytes).hasSizeGreaterThan(5000);
    for (int i = 0; i < bytes.length; i++) {
      bytes[i] ^= (byte) (1 << i % 8);
      SealedText flipped = SealedText.of(bytes);
      assertThat(flipped.stated().orElse(hash)).as("byte %d", i).isNotEqualTo(flipped.hash());
      bytes[i] ^= (byte) (1 << i % 8);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2})
  void a_record_at_odds_with_its_hash_is_named(int which) throws IOException {
    Path file = keepThree().get(which);
    byte[] bytes = Files.readAllBytes(file);
    // In the format, in the line of the hash, in the middle and at the end.
    for (int at : List.of(5, 60, bytes.length / 2, bytes.length - 2)) {
      bytes[at] ^= 1;
      Files.write(file, bytes);
      assertThat(records().faults())
          .as("byte %d", at)
          .containsExactly(changed(which + 1, file.getFileName().toString()));
      bytes[at] ^= 1;
    }
  }

  @Test
  void every_byte_of_the_list_that_flips_is_noticed() throws IOException {
    List<StoredRecord> stored =
        keepThree().stream().map(file -> StoredInspection.of(file).stored()).toList();
    byte[] bytes = Files.readAllBytes(list());
    for (int i = 0; i < bytes.length; i++) {
      bytes[i] ^= (byte) (1 << i % 8);
      assertThat(faults(bytes, stored)).as("byte %d", i).isNotEmpty();
      bytes[i] ^= (byte) (1 << i % 8);
    }
  }

  /** A list that says it is of a newer version is refused, which tells it too. */
  private static List<String> faults(byte[] list, List<StoredRecord> stored) {
    try {
      return Chain.faults(new ChainText(true, list, "chain.list").list(), stored);
    } catch (UnusableInput newer) {
      return List.of(newer.getMessage());
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3})
  void a_record_that_is_gone_is_named(int number) throws IOException {
    Path gone = keepThree().get(number - 1);
    Files.delete(gone);
    assertThat(records().faults())
        .containsExactly(
            "Record %d (%s) is lost: it is in the list and not in the folder."
                    .formatted(number, gone.getFileName())
                + COPY);
  }

  @Test
  void the_last_record_gone_with_its_line_shows_only_in_a_copy_of_the_list() throws IOException {
    Path third = keepThree().get(2);
    Files.delete(third);
    Files.delete(page(third));
    cutLine(3);
    // Nothing left in the folder speaks of it; that is what a copy of the list is for.
    assertThat(records().faults()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2})
  void an_earlier_record_gone_with_its_line_is_missed_by_the_next(int number) throws IOException {
    Path gone = keepThree().get(number - 1);
    Files.delete(gone);
    Files.delete(page(gone));
    cutLine(number);
    assertThat(records().faults())
        .containsExactly(
            "Record %d is lost, and its line in the list too: a record of a higher number is there."
                    .formatted(number)
                + COPY);
  }

  @Test
  void a_line_taken_out_of_the_list_is_named() throws IOException {
    Path second = keepThree().get(1);
    cutLine(2);
    assertThat(records().faults())
        .containsExactly(
            "The line of record 2 (%s) was taken out of the list: record 3 follows it."
                    .formatted(second.getFileName())
                + COPY);
  }

  @Test
  void a_record_of_another_boat_laid_among_them_is_named() throws IOException {
    keepThree();
    Path foreign = workspace().saveRecord(of(named("Egg Whisk"), 9), "page");
    Files.copy(foreign, list().resolveSibling("2026-01-01T000000-0000aaaa.json"));
    assertThat(records().faults())
        .containsExactly(
            "2026-01-01T000000-0000aaaa.json was added: it is not in the list, and no record"
                + " follows it. It speaks of \"Egg Whisk\".");
    assertThat(records().entries())
        .extracting(RecordEntry::handle)
        .contains("soup-ladle/2026-01-01T000000-0000aaaa");
  }

  @Test
  void a_file_laid_among_them_that_is_no_record_is_named() throws IOException {
    keepThree();
    Files.writeString(list().resolveSibling("notes.json"), "{}");
    assertThat(records().faults())
        .containsExactly(
            "notes.json was added: it is not in the list and cannot be read as a record.");
    assertThat(records().unreadable()).hasSize(1);
  }

  @Test
  void a_renamed_record_is_found_again() throws IOException {
    Path second = keepThree().get(1);
    Files.move(second, second.resolveSibling("good one.json"));
    assertThat(records().faults())
        .containsExactly(
            "Record 2 was renamed from %s to good one.json. Give it its name back."
                .formatted(second.getFileName()));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3})
  void a_record_changed_with_its_hash_made_anew_is_named(int number) throws IOException {
    Path file = keepThree().get(number - 1);
    forge(file);
    assertThat(records().faults())
        .containsExactly(
            "Record %d (%s) was changed and its hash made anew: it does not fit the list."
                    .formatted(number, file.getFileName())
                + COPY);
  }

  @Test
  void a_record_and_its_line_changed_together_are_given_away_by_the_next() throws IOException {
    Path second = keepThree().get(1);
    String before = StoredInspection.of(second).stored().hash();
    forge(second);
    String after = StoredInspection.of(second).stored().hash();
    Files.writeString(list(), Files.readString(list()).replace(before, after));
    assertThat(records().faults())
        .containsExactly(
            "Record 3 (%s) does not name record 2 as the one before it: one of them was changed or"
                    .formatted(last())
                + " put in its place."
                + COPY);
  }

  @Test
  void a_line_changed_in_the_list_is_told_from_a_record_changed() throws IOException {
    keepThree();
    String hash = records().entries().get(1).hash();
    Files.writeString(list(), Files.readString(list()).replace(hash, "0".repeat(64)));
    assertThat(records().faults())
        .containsExactly(
            "The line of record 2 in the list was changed: the record fits its own hash, and"
                + " record 3 follows it."
                + COPY);
  }

  @Test
  void a_lost_list_is_told_and_the_records_still_vouch_for_each_other() throws IOException {
    List<Path> files = keepThree();
    Files.delete(list());
    String lost =
        "The list of records (chain.list) is lost: whether a record after number 3 was lost with"
            + " it cannot be told."
            + COPY;
    assertThat(records().faults()).containsExactly(lost);
    Files.delete(files.get(1));
    Files.delete(page(files.get(1)));
    assertThat(records().faults())
        .containsExactly(
            lost,
            "Record 2 is lost, and its line in the list too: a record of a higher number is there."
                + COPY);
  }

  @Test
  void a_list_begun_anew_after_it_was_lost_says_so_for_good() throws IOException {
    keepThree();
    Files.delete(list());
    workspace().saveRecord(of(boat, 4), "page");
    assertThat(records().entries()).hasSize(4);
    assertThat(records().faults())
        .containsExactly(
            "The list of records was lost or damaged before record 4 was kept: whether a record"
                + " was lost with it cannot be told.");
  }

  @Test
  void a_damaged_line_of_the_list_is_named_and_kept() throws IOException {
    keepThree();
    Files.writeString(list(), Files.readString(list()) + "3 and so on\n");
    workspace().saveRecord(of(boat, 4), "page");
    assertThat(Files.readString(list())).contains("3 and so on\n4 ");
    assertThat(records().faults())
        .containsExactly("Line 5 of the list of records (chain.list) is damaged." + COPY);
  }

  @Test
  void a_record_kept_when_the_program_was_stopped_is_taken_in_by_the_next() throws IOException {
    Path third = keepThree().get(2);
    cutLine(3);
    assertThat(records().faults())
        .containsExactly(
            "Record 3 (%s) was added: it follows the last one but is not in the list. If the program"
                    .formatted(third.getFileName())
                + " was stopped while keeping it, the next inspection takes it in.");
    workspace().saveRecord(of(boat, 4), "page");
    assertThat(records().faults()).isEmpty();
    assertThat(records().entries())
        .extracting(r -> r.number().orElse(0))
        .containsExactly(1, 2, 3, 4);
  }

  @Test
  void records_from_before_there_were_chains_are_its_head() throws IOException {
    lay("2026-06-01T090000-00000001.json", OldRecord.json());
    lay("2026-06-02T090000-00000002.json", OldRecord.json() + " ");
    assertThat(records().faults()).isEmpty();
    keepThree();
    List<RecordEntry> kept = records().entries();
    assertThat(kept).extracting(r -> r.number().orElse(0)).containsExactly(1, 2, 3, 4, 5);
    assertThat(kept)
        .extracting(RecordEntry::chained)
        .containsExactly(false, false, true, true, true);
    assertThat(records().faults()).isEmpty();
    lay("2026-06-01T090000-00000001.json", OldRecord.json().replace("Quill", "Quilt"));
    assertThat(records().faults()).containsExactly(changed(1, "2026-06-01T090000-00000001.json"));
  }

  @Test
  void an_old_record_laid_there_later_is_named() throws IOException {
    keepThree();
    lay("2026-06-01T090000-00000001.json", OldRecord.json());
    assertThat(records().faults())
        .containsExactly(
            "2026-06-01T090000-00000001.json was added: it is not in the list, and no record"
                + " follows it. It speaks of \"Soup Ladle\".");
  }

  @Test
  void a_list_of_a_newer_version_is_refused_in_one_line() throws IOException {
    keepThree();
    Files.writeString(list(), Files.readString(list()).replace("chain/1", "chain/2"));
    String refusal =
        list()
            + ": this is a list of records of version 2 and this program reads version 1."
            + " A newer program is needed.";
    assertThat(records().faults()).containsExactly(refusal);
    assertThatThrownBy(() -> workspace().saveRecord(of(boat, 4), "page"))
        .isInstanceOf(UnusableInput.class)
        .hasMessage(refusal);
  }

  @Test
  void a_correction_names_the_record_whose_place_it_takes() throws IOException {
    keepThree();
    RecordEntry wrong = records().entries().get(1);
    Correction correction = new Correction(2, wrong.name(), wrong.hash(), "weighed in pounds");
    workspace()
        .save(
            NewRecord.of(of(boat, 4), (number, corrects) -> List.of())
                .correcting(Optional.of(correction)));
    BoatRecords records = records();
    assertThat(records.entries().get(3).corrects()).contains(correction);
    assertThat(records.correctionOf(records.entries().get(1))).contains(records.entries().get(3));
    assertThat(records.correctionOf(records.entries().get(0))).isEmpty();
    assertThat(records.faults()).isEmpty();
  }

  @Test
  void two_programs_at_once_keep_two_records_of_one_chain() throws Exception {
    List<Thread> threads = new ArrayList<>();
    for (int i = 1; i <= 8; i++) {
      int hour = i;
      threads.add(new Thread(() -> workspace().saveRecord(of(boat, hour), "page")));
    }
    threads.forEach(Thread::start);
    for (Thread thread : threads) {
      thread.join();
    }
    assertThat(records().entries()).hasSize(8);
    assertThat(records().faults()).isEmpty();
  }

  private static Path page(Path record) {
    return record.resolveSibling(record.getFileName().toString().replace(".json", ".txt"));
  }

  private static String changed(int number, String file) {
    return "Record %d (%s) was changed after it was saved: its content does not match its hash."
            .formatted(number, file)
        + COPY;
  }

  private String last() {
    return records().entries().get(2).name() + ".json";
  }

  private List<Path> keepThree() {
    return List.of(
        workspace().saveRecord(of(boat, 1), "page"),
        workspace().saveRecord(of(boat, 2), "page"),
        workspace().saveRecord(of(boat, 3), "page"));
  }

  private static InspectionRecord of(Boat boat, int hour) {
    return new InspectionRecord(
        OffsetDateTime.parse("2026-06-14T0" + hour + ":00:00Z"),
        "M. Quill",
        "0.1.0",
        boat,
        SampleRecords.report());
  }

  private Boat named(String name) {
    return BoatFile.parse(WrongBoats.goodFile().replace("Soup Ladle", name), "boat.json");
  }

  private void lay(String name, String json) throws IOException {
    Files.createDirectories(list().getParent());
    Files.writeString(list().resolveSibling(name), json);
  }

  /** Whoever knows how the hash is made can make it anew. */
  private static void forge(Path file) throws IOException {
    String changed = Files.readString(file).replace("M. Quill", "N. Quill");
    String bare = changed.replaceFirst("(?m)^  \"hash\": .*\\n", "");
    Files.write(file, SealedText.seal(bare).getBytes(StandardCharsets.UTF_8));
  }

  private void cutLine(int number) throws IOException {
    String cut = Files.readString(list()).replaceFirst("(?m)^" + number + " .*\\n", "");
    Files.writeString(list(), cut);
  }

  private Path list() {
    return home.resolve("t/records/soup-ladle/chain.list");
  }

  private BoatRecords records() {
    return workspace().records().of("Soup Ladle");
  }

  private Workspace workspace() {
    return new Workspace(home.resolve("t"));
  }
}
