package thwartwise.walk;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.files.boat.BoatFile;

/** What a walk lets through, the boat file lets through too. */
class WalkedBoatFileTest {

  @Test
  void a_walked_boat_comes_back_from_its_file_unchanged() {
    for (Sheet sheet : List.of(Sheet.small(), Sheet.full(true), Sheet.full(false))) {
      Boat boat = sheet.boat();
      String written = BoatFile.write(boat);
      Boat read = BoatFile.parse(written, "boat.json");
      assertThat(BoatFile.write(read)).isEqualTo(written);
      assertThat(read.hull()).isEqualTo(boat.hull());
      assertThat(read.assumptions()).isEqualTo(boat.assumptions());
      assertThat(read.openings()).isEqualTo(boat.openings());
      assertThat(read.chambers()).isEqualTo(boat.chambers());
      assertThat(read.places()).isEqualTo(boat.places());
      assertThat(read.kit()).isEqualTo(boat.kit());
      assertThat(read.cleats()).isEqualTo(boat.cleats());
      assertThat(read.bailer()).isEqualTo(boat.bailer());
      assertThat(read.aboard()).isEqualTo(boat.aboard());
      assertThat(read.propulsion()).isEqualTo(boat.propulsion());
      assertThat(read.measuredBy()).isEqualTo(boat.measuredBy());
    }
  }
}
