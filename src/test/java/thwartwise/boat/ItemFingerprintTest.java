package thwartwise.boat;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thwartwise.files.boat.BoatFile;
import thwartwise.record.SampleBoats;
import thwartwise.sampleboats.ElectricBoat;

/**
 * Boat files keep these texts. Where one of them changes, everybody is asked again to look at what
 * did not change: mend {@link ItemFingerprint}, not the text here.
 */
class ItemFingerprintTest {
  private static final Boat PLAIN = SampleBoats.plain();

  @ParameterizedTest
  @CsvSource({
    "fore locker, 5cfdec3a",
    "midships thwart, 1fbb31d6",
    "side foam, 15197433",
    "transom cut-out, a615173c",
    "battery, c490e1d4",
    "motor, 6cd9cdaf"
  })
  void what_was_looked_at_with_an_earlier_version_is_recognised(String thing, String mark) {
    assertThat(ItemFingerprint.of(PLAIN, thing)).isEqualTo(mark);
  }

  /** Kit and label together. */
  @Test
  void a_battery_is_known_by_its_label_as_well() {
    assertThat(ItemFingerprint.of(ElectricBoat.boat(), "battery")).isEqualTo("729c5a8c");
    Boat other = BoatFile.parse(ElectricBoat.JSON.replace("\"AGM\"", "\"gel\""), "boat.json");
    assertThat(ItemFingerprint.of(other, "battery")).isNotEqualTo("729c5a8c");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
      hatch | "y": 0, "z": 0.2 | "y": 0.1, "z": 0.2
      hatch | "into": "fore locker" | "into": "midships thwart"
      bow ring | "x": 3.5 | "x": 3.4
      fore locker | "litresIn": 0.0 | "litresIn": 0.5
      fore locker | 2026-05-02 | 2026-05-03
      side foam | "fastened": true, "mirrored" | "fastened": false, "mirrored"
      battery | "mass": 17.5 | "mass": 18.5
      """)
  void whatever_is_measured_otherwise_has_another_text_and_nothing_else_has(
      String thing, String there, String instead) {
    String text = withHatchAndRing();
    assertThat(text).contains(there);
    Boat before = BoatFile.parse(text, "before.json");
    Boat after = BoatFile.parse(text.replace(there, instead), "after.json");
    assertThat(ItemFingerprint.of(after, thing)).isNotEqualTo(ItemFingerprint.of(before, thing));
    assertThat(ItemFingerprint.of(after, "motor")).isEqualTo(ItemFingerprint.of(before, "motor"));
  }

  /** Where somebody sits changes nothing of the life jacket that was tried on. */
  @Test
  void a_person_is_known_by_mass_and_not_by_seat() {
    Boat boat = PLAIN.withAboard(List.of(new Person("Iris", 62, "stern seat", 0)));
    Boat moved = PLAIN.withAboard(List.of(new Person("Iris", 62, "midships thwart", 0.2)));
    Boat heavier = PLAIN.withAboard(List.of(new Person("Iris", 72, "stern seat", 0)));
    String mark = ItemFingerprint.of(boat, "Iris");
    assertThat(ItemFingerprint.of(moved, "Iris")).isEqualTo(mark);
    assertThat(ItemFingerprint.of(heavier, "Iris")).isNotEqualTo(mark);
  }

  private static String withHatchAndRing() {
    return SampleBoats.json()
        .replace(
            "\"openings\": [",
            """
            "cleats": [ { "name": "bow ring", "x": 3.5, "y": 0, "z": 0.4 } ],
            "openings": [ { "name": "hatch", "x": 2.75, "y": 0, "z": 0.2, "width": 0.3,
              "closedBy": "lid", "into": "fore locker" },
            """);
  }
}
