package thwartwise.sampleboats;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.files.boat.BoatFile;

/** The sample boats are what they are said to be before anything is asked of them. */
class OrdinaryBoatsTest {
  static Stream<Boat> boats() {
    return Stream.concat(OrdinaryBoats.forty().stream(), PublishedBoats.all());
  }

  @Test
  void forty_boats_of_eleven_kinds() {
    List<Boat> forty = OrdinaryBoats.forty();
    assertThat(OrdinaryBoats.all()).hasSize(11);
    assertThat(OrdinaryBoats.twentyTwo()).hasSize(22);
    assertThat(forty).hasSize(40).extracting(Boat::name).doesNotHaveDuplicates();
  }

  @ParameterizedTest
  @MethodSource("boats")
  void every_boat_can_be_written_as_a_boat_file_and_read_again(Boat boat) {
    String text = BoatFile.write(boat);
    assertThat(BoatFile.write(BoatFile.parse(text, boat.name()))).isEqualTo(text);
  }

  /** Of foam nine tenths, and of either what straight lines between the stations hold. */
  @ParameterizedTest
  @MethodSource("boats")
  void every_chamber_counts(Boat boat) {
    BoatModel model = BoatModel.of(boat, OrdinaryBoats.TODAY);
    assertThat(model.spaces())
        .extracting(s -> s.counting().share())
        .isNotEmpty()
        .allMatch(s -> s >= 0.75);
  }
}
