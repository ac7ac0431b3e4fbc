package thwartwise.walk;

import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static thwartwise.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.files.boat.BoatFile;
import thwartwise.json.UnusableInput;

/** A property that costs its component, its line in the table and this test. */
class VehicleTest {
  private static final Sheet CARRIED = Sheet.small().with("trailer", "150");

  @Test
  void what_a_car_may_pull_or_bear_is_asked_of_a_boat_that_goes_on_the_road() {
    assertThat(CARRIED.with("vehicle", "75").boat().vehicle()).hasValue(75.0);
    assertThat(CARRIED.with("vehicle", "no").boat().vehicle()).isEmpty();
    assertThat(Sheet.small().with("trailer", "no").boat().vehicle()).isEmpty();
    assertThat(CARRIED.refused("vehicle", "7"))
        .isEqualTo(
            "7 kg is not between 30 and 3000 kg, the mass a car pulls or bears on its roof."
                + " Measure it again.");
  }

  @Test
  void it_is_written_and_read_again() {
    Boat boat = CARRIED.with("vehicle", "75").boat();
    assertThat(BoatFile.parse(BoatFile.write(boat), "boat.json").vehicle()).hasValue(75.0);
    assertThat(BoatFile.write(CARRIED.with("vehicle", "no").boat())).doesNotContain("vehicle");
  }

  @Test
  void grams_are_refused_with_what_was_probably_meant() {
    String wrong =
        BoatFile.write(CARRIED.with("vehicle", "75").boat())
            .replace("\"vehicle\": 75", "\"vehicle\": 75000");
    assertThatThrownBy(() -> BoatFile.parse(wrong, "boat.json"))
        .isInstanceOf(UnusableInput.class)
        .hasMessage(
            "boat.json: \"vehicle\" is 75000 kg, outside the believable 10 to 3500 kg for what a"
                + " car pulls or bears. If that was grams, write 75.");
  }

  @Test
  void the_lesser_of_car_and_trailer_is_what_hull_and_kit_may_weigh_on_the_road() {
    Boat boat = Sheet.small().boat();
    assertThat(boat.roadLimit()).isEmpty();
    assertThat(boat.withVehicle(75).roadLimit()).hasValue(75.0);
    assertThat(boat.withTrailer(150).withVehicle(75).roadLimit()).hasValue(75.0);
    assertThat(boat.withTrailer(150).withVehicle(500).roadLimit()).hasValue(150.0);
  }
}
