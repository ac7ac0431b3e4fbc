package thwartwise.files.boat;

import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static thwartwise.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import thwartwise.json.UnusableInput;

/** A property that costs its component, its line in the table and this test. */
class TrailerTest {
  private static final String WITHOUT = WrongBoats.goodFile();

  private static String with(String trailer) {
    return WITHOUT.replaceFirst("\\{", "{ \"trailer\": " + trailer + ",");
  }

  @Test
  void what_a_trailer_may_carry_is_read_and_written_again() {
    String written = BoatFile.write(BoatFile.parse(with("150"), "boat.json"));
    assertThat(BoatFile.parse(written, "boat.json").trailer()).hasValue(150.0);
  }

  @Test
  void a_boat_without_one_is_written_as_before() {
    assertThat(BoatFile.parse(WITHOUT, "boat.json").trailer()).isEmpty();
    assertThat(BoatFile.write(BoatFile.parse(WITHOUT, "boat.json"))).doesNotContain("trailer");
  }

  @Test
  void grams_are_refused_with_what_was_probably_meant() {
    assertThatThrownBy(() -> BoatFile.parse(with("150000"), "boat.json"))
        .isInstanceOf(UnusableInput.class)
        .hasMessage(
            "boat.json: \"trailer\" is 150000 kg, outside the believable 10 to 3500 kg for a trailer"
                + " or rack. If that was grams, write 150.");
  }
}
