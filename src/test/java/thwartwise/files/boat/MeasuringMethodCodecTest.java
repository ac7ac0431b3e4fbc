package thwartwise.files.boat;

import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.boat.MeasurementKind;
import thwartwise.boat.MeasuringMethod;
import thwartwise.boat.MeasuringWay;
import thwartwise.json.UnusableInput;
import thwartwise.record.SampleBoats;

/** How things were measured, to the file and back. */
class MeasuringMethodCodecTest {
  private static Boat read(String methods) {
    return SampleBoats.with("\"kit\":", "\"measuredHow\": [ " + methods + " ], \"kit\":");
  }

  @Test
  void what_was_said_in_general_and_of_one_thing_comes_back() {
    Boat boat =
        read(
            "{ \"what\": \"hull weight\", \"how\": \"bathroom scales\" },"
                + " { \"what\": \"kit weights\", \"name\": \"battery\", \"how\": \"guess\" }");

    assertThat(boat.methods())
        .containsExactly(
            new MeasuringMethod(
                MeasurementKind.HULL_WEIGHT, Optional.empty(), MeasuringWay.BATHROOM_SCALES),
            new MeasuringMethod(
                MeasurementKind.KIT_WEIGHTS, Optional.of("battery"), MeasuringWay.GUESS));
    assertThat(BoatFile.parse(BoatFile.write(boat), "again").methods()).isEqualTo(boat.methods());
    assertThat(BoatFile.write(boat.withMethods(List.of()))).doesNotContain("measuredHow");
  }

  @Test
  void a_way_that_is_none_of_this_kind_and_a_thing_that_is_not_there_are_refused() {
    assertThatThrownBy(() -> read("{ \"what\": \"hull weight\", \"how\": \"jug\" }"))
        .isInstanceOf(UnusableInput.class)
        .hasMessage(
            "soup.json: way of measuring 1: \"how\" is \"jug\", wanted one of bathroom scales,"
                + " luggage scale, usual value, guess. Write how it was measured.");
    assertThatThrownBy(
            () -> read("{ \"what\": \"kit weights\", \"name\": \"batery\", \"how\": \"guess\" }"))
        .isInstanceOf(UnusableInput.class)
        .hasMessageContaining("nothing of the kit weights is called \"batery\". Its names: ");
    assertThatThrownBy(
            () -> read("{ \"what\": \"hull weight\", \"name\": \"hull\", \"how\": \"guess\" }"))
        .hasMessageContaining("nothing of the hull weight is called \"hull\". Leave the name out.");
  }

  /** Otherwise the file that a walk of changes writes could not be read again. */
  @Test
  void what_was_said_of_a_thing_that_was_taken_out_is_not_written() {
    Boat boat = read("{ \"what\": \"kit weights\", \"name\": \"battery\", \"how\": \"guess\" }");

    assertThat(BoatFile.write(boat)).contains("measuredHow");
    assertThat(BoatFile.write(boat.withKit(List.of()))).doesNotContain("measuredHow");
  }
}
