package thwartwise.report;

import static thwartwise.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import thwartwise.advice.Advice;
import thwartwise.boat.Boat;
import thwartwise.boat.BuoyancyReason;
import thwartwise.files.boat.BoatFile;
import thwartwise.geometry.Vector3;
import thwartwise.inspection.Report;
import thwartwise.inspection.Report.ChamberFigures;
import thwartwise.record.InspectionRecord;
import thwartwise.record.SampleRecords;

class ValidityPeriodTest {
  @Test
  void it_is_good_no_longer_than_the_leak_test_it_counts_on() {
    // Inspected on 14 June 2026; the fore locker that counts was tested on 2 May 2026.
    assertThat(ValidityPeriod.lastDay(SampleBoat.record(SampleRecords.report())))
        .isEqualTo(LocalDate.of(2027, 5, 2));
  }

  @Test
  void without_a_test_to_count_on_it_is_good_for_twelve_months() {
    Report plain = SampleRecords.report();
    Report none =
        new Report(
            plain.boat(),
            plain.asLoaded(),
            plain.atLimit(),
            List.of(),
            plain.findings(),
            plain.recommendation(),
            List.of(),
            List.of(),
            plain.ruleSet(),
            List.of(),
            Advice.NONE);
    assertThat(ValidityPeriod.lastDay(SampleBoat.record(none)))
        .isEqualTo(LocalDate.of(2027, 6, 14));
  }

  @Test
  void a_test_later_than_the_inspection_makes_it_no_longer() {
    String later = SampleBoat.resource("files/soup-ladle.json").replace("2026-05-02", "2026-06-20");
    Boat boat = BoatFile.parse(later, "soup.json");
    InspectionRecord record = SampleRecords.of(boat, SampleRecords.report());
    assertThat(ValidityPeriod.lastDay(record)).isEqualTo(LocalDate.of(2027, 6, 14));
  }

  @Test
  void any_change_ends_it_at_once() {
    assertThat(ValidityPeriod.words(SampleBoat.record(SampleRecords.report())))
        .isEqualTo(
            "Valid until the boat, its kit or its chambers change, and not after"
                + " 2\u00a0May\u00a02027");
  }

  @Test
  void a_held_launch_is_good_until_nothing() {
    Report held = SampleRecords.report(SampleRecords.nothing(List.of()), List.of());
    assertThat(ValidityPeriod.words(SampleBoat.record(held))).isEmpty();
  }

  // The first side was tested on 2 May 2026, the twin on 14 September 2025, nine months before.
  @Test
  void the_older_test_of_two_twins_ends_it_if_that_side_counts() {
    String twins =
        SampleBoat.resource("files/soup-ladle.json")
            .replace("\"z\": [0.0, 0.36] }", "\"y\": [0.1, 1], \"z\": [0.0, 0.36] }")
            .replaceFirst(
                "\"filling\": \"air\", \"seal\": \"proven\"",
                "\"mirrored\": true, \"twin\": { \"seal\": \"proven\", \"test\": { \"date\":"
                    + " \"2025-09-14\", \"how\": \"water\", \"minutes\": 20, \"litresIn\": 0,"
                    + " \"by\": \"me\" } }, \"filling\": \"air\", \"seal\": \"proven\"");
    assertThat(lastDay(twins, "fore locker, port", "fore locker, starboard"))
        .isEqualTo(LocalDate.of(2026, 9, 14));
    assertThat(lastDay(twins, "fore locker, port")).isEqualTo(LocalDate.of(2027, 5, 2));
    // So were the two called in records of earlier versions.
    assertThat(lastDay(twins, "fore locker, one side", "fore locker, other side"))
        .isEqualTo(LocalDate.of(2026, 9, 14));
  }

  private static LocalDate lastDay(String file, String... counted) {
    Report plain = SampleRecords.report();
    Report report =
        new Report(
            plain.boat(),
            plain.asLoaded(),
            plain.atLimit(),
            Stream.of(counted)
                .map(
                    n ->
                        new ChamberFigures(
                            n, 0.1, Vector3.ZERO, 0.1, true, new BuoyancyReason.OpenChamber()))
                .toList(),
            plain.findings(),
            plain.recommendation(),
            List.of(),
            List.of(),
            plain.ruleSet(),
            List.of(),
            Advice.NONE);
    return ValidityPeriod.lastDay(SampleRecords.of(BoatFile.parse(file, "soup.json"), report));
  }
}
