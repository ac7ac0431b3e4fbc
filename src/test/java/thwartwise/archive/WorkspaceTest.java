package thwartwise.archive;

import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static thwartwise.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;
import thwartwise.boat.Boat;
import thwartwise.files.boat.BoatFile;
import thwartwise.files.boat.WrongBoats;
import thwartwise.inspection.Report;
import thwartwise.json.UnusableInput;
import thwartwise.record.InspectionRecord;
import thwartwise.record.Paper;
import thwartwise.record.SampleRecords;

@Isolated("sets the locale of the process")
class WorkspaceTest {
  @TempDir Path home;

  private final Boat boat = BoatFile.parse(WrongBoats.goodFile(), "soup.json");

  @Test
  void a_boat_is_kept_under_its_name_and_reads_back() {
    Path file = workspace().saveBoat(boat);
    assertThat(file).isEqualTo(home.resolve("t/boats/soup-ladle.json"));
    assertThat(file).isEqualTo(workspace().boatPath("Soup Ladle"));
    assertThat(BoatFile.read(file)).isEqualTo(boat);
  }

  @Test
  void nothing_is_made_before_something_is_written() {
    assertThat(workspace().drafts()).isEmpty();
    assertThat(workspace().draft("Soup Ladle")).isEmpty();
    workspace().deleteDraft("Soup Ladle");
    assertThat(home.resolve("t")).doesNotExist();
  }

  @Test
  void a_record_is_kept_by_its_moment_with_its_page_beside_it() {
    InspectionRecord inspection = SampleRecords.of(boat, SampleRecords.report());
    Path file = workspace().saveRecord(inspection, "the page\n");
    assertThat(file.getParent()).isEqualTo(home.resolve("t/records/soup-ladle"));
    assertThat(file.getFileName().toString()).matches("2026-06-14T090507-[0-9a-f]{8}\\.json");
    assertThat(Path.of(file.toString().replace(".json", ".txt"))).hasContent("the page\n");
    byte[] json = RecordFile.write(inspection).getBytes(StandardCharsets.UTF_8);
    assertThat(file.getFileName().toString()).contains(SealedText.of(json).hash().substring(0, 8));
  }

  @Test
  void every_paper_lies_beside_its_record_and_knows_its_number() {
    InspectionRecord inspection = SampleRecords.of(boat, SampleRecords.report());
    Path file =
        workspace()
            .save(
                NewRecord.of(
                    inspection,
                    (number, corrects) ->
                        List.of(Paper.text(".html", number), new Paper("-card.pdf", BYTES))))
            .file();
    String name = file.toString().replaceFirst("\\.json$", "");
    assertThat(Path.of(name + ".html")).hasContent(Path.of(name).getFileName().toString());
    assertThat(Path.of(name + "-card.pdf")).hasBinaryContent(BYTES);
  }

  private static final byte[] BYTES = {37, -1, 0, 13, 10};

  @Test
  void the_same_record_twice_is_one_record() throws IOException {
    InspectionRecord inspection = SampleRecords.of(boat, SampleRecords.report());
    Path first = workspace().saveRecord(inspection, "page");
    assertThat(workspace().saveRecord(inspection, "page")).isEqualTo(first);
    assertThat(count(first.getParent())).isEqualTo(3);
  }

  @Test
  void another_record_of_the_same_second_is_kept_beside_the_first() throws IOException {
    Path first = workspace().saveRecord(SampleRecords.of(boat, SampleRecords.report()), "page");
    Report other = SampleRecords.report(SampleRecords.nothing(List.of()), List.of());
    Path second = workspace().saveRecord(SampleRecords.of(boat, other), "other page");
    assertThat(second).isNotEqualTo(first);
    assertThat(count(first.getParent())).isEqualTo(5);
  }

  @Test
  void a_record_that_was_spoilt_is_not_written_over() throws IOException {
    InspectionRecord inspection = SampleRecords.of(boat, SampleRecords.report());
    Path first = workspace().saveRecord(inspection, "page");
    Files.writeString(first, "something else");
    Path second = workspace().saveRecord(inspection, "page");
    assertThat(first).hasContent("something else");
    assertThat(second).isNotEqualTo(first);
    assertThat(RecordFile.read(second).boat()).isEqualTo(boat);
  }

  @Test
  void the_moment_is_written_in_plain_digits_everywhere() {
    Locale usual = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      Path file = workspace().saveRecord(SampleRecords.of(boat, SampleRecords.report()), "page");
      assertThat(file.getFileName().toString()).startsWith("2026-06-14T090507-");
      assertThat(RecordFile.read(file).by()).isEqualTo("M. Quill");
    } finally {
      Locale.setDefault(usual);
    }
  }

  @Test
  void a_draft_keeps_what_was_typed_as_it_was_typed() {
    List<DraftAnswer> answers =
        List.of(new DraftAnswer("hull mass", "134 lb 5"), new DraftAnswer("note", " \"\u001b\n "));
    workspace().saveDraft("Crème", answers);
    assertThat(workspace().draft("Crème")).isEqualTo(Optional.of(answers));
    assertThat(workspace().drafts()).containsExactly("Crème");
    workspace().deleteDraft("Crème");
    assertThat(workspace().drafts()).isEmpty();
  }

  @Test
  void a_draft_is_never_taken_for_a_boat() throws IOException {
    workspace().saveDraft("Soup Ladle", List.of(new DraftAnswer("hull mass", "61")));
    Path draft = home.resolve("t/drafts/soup-ladle.json");
    assertThatThrownBy(() -> BoatFile.read(draft))
        .hasMessage(draft + ": this is a draft file, wanted a boat file. Name another file.");
  }

  @Test
  void a_damaged_draft_does_not_hide_the_others_and_is_refused_by_name() throws IOException {
    workspace().saveDraft("Soup Ladle", List.of());
    workspace().saveDraft("Egg Whisk", List.of());
    Path damaged = Files.writeString(home.resolve("t/drafts/egg-whisk.json"), "{");
    assertThat(workspace().drafts()).containsExactly("Soup Ladle");
    assertThatThrownBy(() -> workspace().draft("Egg Whisk"))
        .isInstanceOf(UnusableInput.class)
        .hasMessage(
            damaged
                + ": line 1, column 2: the text ends too early."
                + " Close the open quote or bracket, or copy it again.");
  }

  @Test
  void a_folder_that_is_a_file_is_refused_in_one_line() throws IOException {
    Files.writeString(home.resolve("t"), "in the way");
    assertThatThrownBy(() -> workspace().saveBoat(boat))
        .isInstanceOf(UnusableInput.class)
        .hasMessageContaining("cannot be written: ")
        .hasMessageNotContaining("\n");
  }

  private Workspace workspace() {
    return new Workspace(home.resolve("t"));
  }

  private static long count(Path folder) throws IOException {
    try (var files = Files.list(folder)) {
      return files.count();
    }
  }
}
