package thwartwise.checklist;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.boat.Person;
import thwartwise.files.boat.BoatFile;
import thwartwise.sampleboats.ElectricBoat;

/** Which boats a point is asked of. */
class ConcernTest {
  private static Boat called(String battery, String panel) {
    return BoatFile.parse(
        ElectricBoat.JSON
            .replace("\"name\": \"battery\"", "\"name\": \"" + battery + "\"")
            .replace("\"kit\": \"battery\"", "\"kit\": \"" + battery + "\"")
            .replace("\"name\": \"panel\"", "\"name\": \"" + panel + "\"")
            .replace("\"kit\": \"panel\"", "\"kit\": \"" + panel + "\""),
        "boat.json");
  }

  @Test
  void a_battery_and_a_panel_are_asked_about_by_what_is_stated_whatever_they_are_called() {
    Boat boat = called("grey box", "blue board");
    assertThat(Concern.BATTERIES.names(boat)).containsExactly("grey box");
    assertThat(Concern.SOLAR_PANELS.names(boat)).containsExactly("blue board");
  }

  @Test
  void a_boat_of_which_nothing_is_said_is_asked_by_names_alone() {
    Boat boat = BoatFile.parse(ElectricBoat.WITHOUT.replace("\"battery\"", "\"grey box\""), "b");
    assertThat(Concern.BATTERIES.names(boat)).isEmpty();
    assertThat(Concern.MOTOR.isOf(boat)).isTrue();
  }

  /** Its plate is stated though no motor stands among the kit. */
  @Test
  void a_motor_that_is_stated_is_one() {
    String json =
        ElectricBoat.JSON
            .replace("{ \"name\": \"motor\", \"mass\"", "{ \"name\": \"thing\", \"mass\"")
            .replace("\"motor\": { \"kit\": \"motor\", ", "\"motor\": { ");
    assertThat(Concern.MOTOR.isOf(BoatFile.parse(json, "b"))).isTrue();
  }

  /** A life jacket fits one person and no other. */
  @Test
  void each_person_named_aboard_is_asked_about_by_name() {
    Boat boat = ElectricBoat.boat().withAboard(List.of(new Person("Iris", 62, "stern seat", 0)));
    assertThat(Concern.PEOPLE.names(boat)).containsExactly("Iris");
    assertThat(Concern.PEOPLE.isOf(ElectricBoat.boat())).isFalse();
  }
}
