package thwartwise.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.record.InspectionRecord;
import thwartwise.record.SampleRecords;

class RecordFileTest {
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
  void a_record_holds_the_whole_boat_file_and_the_whole_report() {
    assertThat(json)
        .contains(
            "\"format\": \"thwartwise/record/1\"",
            "\"date\": \"2026-06-14T09:05:07+02:00\"",
            "\"format\": \"thwartwise/boat/1\"",
            "\"format\": \"thwartwise/report/1\"");
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
            () -> RecordFile.parse(json.replace("\"mass\": 61.0", "\"mass\": -1"), "record.json"))
        .hasMessageStartingWith("record.json: boat, hull: \"mass\" is -1 kg, ");
  }
}
