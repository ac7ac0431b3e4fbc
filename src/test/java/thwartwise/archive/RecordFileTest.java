package thwartwise.archive;

import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static thwartwise.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.boat.BuoyancyReason;
import thwartwise.boat.CrewWhenSwamped;
import thwartwise.files.boat.BoatFile;
import thwartwise.files.boat.WrongBoats;
import thwartwise.inspection.Report;
import thwartwise.inspection.Report.ChamberFigures;
import thwartwise.json.Location;
import thwartwise.json.UnusableInput;
import thwartwise.record.ChainLink;
import thwartwise.record.ChainLink.PaperHash;
import thwartwise.record.InspectionRecord;
import thwartwise.record.InspectionRecord.Correction;
import thwartwise.record.SampleRecords;

class RecordFileTest {
  private static final Correction CORRECTION =
      new Correction(
          2, "2026-06-13T080000-0123abcd", "b".repeat(64), "the scales were set to pounds");

  private static final List<PaperHash> PAPERS = List.of(new PaperHash("-card.pdf", "c".repeat(64)));

  private final Boat boat = BoatFile.parse(WrongBoats.goodFile(), "soup.json");
  private final InspectionRecord inspection = SampleRecords.of(boat, SampleRecords.report());
  private final String json = RecordFile.write(inspection);

  @Test
  void a_record_reads_back_with_its_date_boat_and_report() {
    InspectionRecord read = RecordFile.parse(json, "record.json");
    assertThat(read.date()).isEqualTo(inspection.date());
    assertThat(read.date().getOffset()).isEqualTo(inspection.date().getOffset());
    assertThat(read.by()).isEqualTo("M. Quill");
    assertThat(read.programVersion()).isEqualTo("0.1.0");
    assertThat(read.boat()).isEqualTo(boat);
    assertThat(RecordFile.write(read)).isEqualTo(json);
  }

  @Test
  void a_boat_that_is_held_on_to_is_kept_with_what_follows_from_it() {
    Boat held = boat.whenSwamped(CrewWhenSwamped.HOLD_ON);
    String kept = RecordFile.write(SampleRecords.of(held, SampleRecords.heldOnTo()));
    InspectionRecord read = RecordFile.parse(kept, "record.json");
    assertThat(read.boat()).isEqualTo(held);
    assertThat(read.report().recommendation().heldOnTo()).isTrue();
    assertThat(RecordFile.write(read)).isEqualTo(kept);
  }

  @Test
  void a_record_holds_the_whole_boat_file_and_the_whole_report() {
    assertThat(json)
        .contains(
            "\"format\": \"thwartwise/record/3\"",
            "\"date\": \"2026-06-14T09:05:07+02:00\"",
            "\"format\": \"thwartwise/boat/1\"",
            "\"format\": \"thwartwise/report/2\"");
  }

  @Test
  void a_date_without_its_offset_is_refused() {
    assertThatThrownBy(() -> RecordFile.parse(json.replace("07+02:00", "07"), "record.json"))
        .isInstanceOf(UnusableInput.class)
        .hasMessage(
            "record.json: \"date\" is \"2026-06-14T09:05:07\", which is not a moment."
                + " Write it with its offset, as in 2026-05-02T10:15:00+02:00.");
  }

  @Test
  void a_fault_in_the_boat_of_a_record_says_where_it_stands() {
    assertThatThrownBy(
            () -> RecordFile.parse(json.replace("\"mass\": 61", "\"mass\": -1"), "record.json"))
        .hasMessageStartingWith("record.json: boat, hull: \"mass\" is -1 kg, ");
  }

  @Test
  void a_record_says_its_place_its_own_hash_and_that_of_the_one_before() {
    ChainLink link =
        new ChainLink(3, Optional.of("a".repeat(64)), Optional.of(CORRECTION), Optional.of(PAPERS));
    String third = RecordFile.write(inspection, link);
    assertThat(RecordFile.content(third, Location.whole("r.json")).link()).contains(link);
    assertThat(third.lines().limit(16))
        .containsExactly(
            "{",
            "  \"format\": \"thwartwise/record/3\",",
            "  \"hash\": \"" + SealedText.of(bytes(third)).hash() + "\",",
            "  \"number\": 3,",
            "  \"previous\": \"" + "a".repeat(64) + "\",",
            "  \"corrects\": {",
            "    \"number\": 2,",
            "    \"record\": \"2026-06-13T080000-0123abcd\",",
            "    \"hash\": \"" + "b".repeat(64) + "\",",
            "    \"because\": \"the scales were set to pounds\"",
            "  },",
            "  \"papers\": [",
            "    {",
            "      \"ending\": \"-card.pdf\",",
            "      \"hash\": \"" + "c".repeat(64) + "\"",
            "    }");
  }

  @Test
  void the_hash_is_that_of_the_file_without_its_line() throws Exception {
    String rest = json.replaceFirst("(?m)^  \"hash\": .*\n", "");
    byte[] sha = MessageDigest.getInstance("SHA-256").digest(bytes(rest));
    assertThat(json).contains("\n  \"hash\": \"" + HexFormat.of().formatHex(sha) + "\",\n");
  }

  @Test
  void numbers_are_written_in_one_way() {
    assertThat(json)
        .contains("\"mass\": 61,", "\"thickness\": 0.006,")
        .doesNotContainPattern("[0-9]\\.[0-9]*0[,\\s\\]}]")
        .doesNotContainPattern(": -?[0-9.]+[eE]")
        .doesNotContain("-0,", "-0 ");
  }

  @Test
  void a_record_from_before_there_were_chains_still_reads() throws IOException {
    RecordFile.Content old = RecordFile.content(OldRecord.json(), Location.whole("old.json"));
    assertThat(old.link()).isEmpty();
    assertThat(old.inspection()).isEqualTo(withWordsOfOld(RecordFile.parse(json, "record.json")));
  }

  @Test
  void a_record_from_before_pages_were_vouched_for_still_reads() throws IOException {
    RecordFile.Content old =
        RecordFile.content(OldRecord.beforePapers(), Location.whole("old.json"));
    assertThat(old.link().orElseThrow().papers()).isEmpty();
    assertThat(old.inspection()).isEqualTo(withWordsOfOld(RecordFile.parse(json, "record.json")));
    assertThat(SealedText.of(bytes(OldRecord.beforePapers())).stated())
        .contains(SealedText.of(bytes(OldRecord.beforePapers())).hash());
  }

  @Test
  void a_page_that_would_lead_out_of_the_folder_is_refused() {
    String third =
        RecordFile.write(inspection, ChainLink.FIRST.withPapers(PAPERS))
            .replace("\"-card.pdf\"", "\"/../../x.pdf\"");
    assertThatThrownBy(() -> RecordFile.parse(third, "r.json"))
        .isInstanceOf(UnusableInput.class)
        .hasMessage(
            "r.json: page 1: \"ending\" is \"/../../x.pdf\", wanted one as in -card.pdf."
                + " Take the record as it was written.");
  }

  @Test
  void a_record_of_a_newer_format_is_refused_in_one_line() {
    assertThatThrownBy(() -> RecordFile.parse(json.replace("record/3", "record/4"), "r.json"))
        .isInstanceOf(UnusableInput.class)
        .hasMessage(
            "r.json: this is a record file of version 4 and this program reads versions 1 to 3."
                + " A newer program is needed.");
  }

  @Test
  void a_record_that_names_no_number_or_no_hash_is_refused() {
    assertThatThrownBy(() -> RecordFile.parse(json.replace("\"number\": 1,", ""), "r.json"))
        .hasMessage("r.json: the key \"number\" is missing. Take the record as it was written.");
    assertThatThrownBy(
            () -> RecordFile.parse(json.replace("\"number\": 1,", "\"number\": 0,"), "r.json"))
        .hasMessage(
            "r.json: \"number\" is 0, wanted 1 or more. Take the record as it was written.");
    assertThatThrownBy(
            () ->
                RecordFile.parse(
                    json.replace("\"previous\": null", "\"previous\": \"f00\""), "r.json"))
        .hasMessage(
            "r.json: \"previous\" is not a SHA-256 in hexadecimal digits."
                + " Take the record as it was written.");
  }

  @Test
  void an_old_record_with_the_keys_of_a_chain_is_refused() {
    assertThatThrownBy(() -> RecordFile.parse(json.replace("record/3", "record/1"), "r.json"))
        .hasMessageStartingWith("r.json: the key \"hash\" is not known here; ");
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  /** Why a chamber counts was a sentence then; it stays the one it was. */
  private static InspectionRecord withWordsOfOld(InspectionRecord record) {
    Report report = record.report();
    List<ChamberFigures> chambers =
        List.of(
            stated(report.chambers().get(0), "leak test of 2026-05-02"),
            stated(
                report.chambers().get(1), "only claimed to be tight; pour water in and time it"));
    return new InspectionRecord(
        record.date(),
        record.by(),
        record.programVersion(),
        record.boat(),
        new Report(
            report.boat(),
            report.asLoaded(),
            report.atLimit(),
            chambers,
            report.findings(),
            report.recommendation(),
            report.capacityFigures(),
            report.assumptions(),
            report.ruleSet(),
            report.waters(),
            report.advice(),
            report.spread()));
  }

  private static ChamberFigures stated(ChamberFigures chamber, String words) {
    return new ChamberFigures(
        chamber.name(),
        chamber.volume(),
        chamber.centre(),
        chamber.countedVolume(),
        chamber.counted(),
        new BuoyancyReason.Stated(words));
  }
}
