package thwartwise.boat;

import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.geometry.Vector3;

/** Where nobody steers: the motor hangs at the aft end, the oars lie by the middle thwart. */
class EmptyHelmTest {
  private static final Vector3 TRANSOM = Vector3.of(-0.1, 0, 0.4);
  private static final Vector3 MIDDLE = Vector3.of(1.6, 0, 0.4);

  private static BoxBoat boat() {
    return BoxBoat.of(3, 1.2, 0.5)
        .place("stern seat", 0.5, 0.25, 0.3, 1)
        .place("middle thwart", 1.5, 0.25, 0.3, 2)
        .place("bow seat", 2.5, 0.25, 0.3, 1);
  }

  private static Optional<EmptyHelm> of(BoxBoat boat, String... seated) {
    return EmptyHelm.of(boat.boat(), List.of(seated));
  }

  @Test
  void nobody_by_the_motor_is_told_with_where_the_oars_are() {
    BoxBoat boat = boat().weight("electric motor", 9, TRANSOM).weight("pair of oars", 4, MIDDLE);
    assertThat(of(boat, "stern seat", "bow seat")).isEmpty();
    assertThat(of(boat, "middle thwart"))
        .contains(new EmptyHelm("stern seat", true, Optional.of("middle thwart")));
    assertThat(of(boat)).isEmpty();
  }

  @Test
  void without_oars_nobody_rows() {
    assertThat(of(boat().weight("outboard", 9, TRANSOM), "bow seat"))
        .contains(new EmptyHelm("stern seat", true, Optional.empty()));
  }

  @Test
  void without_a_motor_it_is_the_place_by_the_oars() {
    BoxBoat boat = boat().weight("oars", 4, MIDDLE);
    assertThat(of(boat, "stern seat"))
        .contains(new EmptyHelm("middle thwart", false, Optional.empty()));
    assertThat(of(boat, "middle thwart")).isEmpty();
  }

  /** Nothing else is taken where somebody said from where it is worked. */
  @Test
  void a_place_that_was_stated_is_the_one_that_is_empty() {
    Boat nearest = boat().weight("motor", 9, TRANSOM).weight("oars", 4, MIDDLE).boat();
    Boat stated =
        nearest.withKit(
            List.of(
                nearest.kit().get(0).withWorkedFrom("middle thwart"),
                nearest.kit().get(1).withWorkedFrom("bow seat")));
    assertThat(EmptyHelm.of(stated, List.of("middle thwart"))).isEmpty();
    assertThat(EmptyHelm.of(stated, List.of("stern seat")))
        .contains(new EmptyHelm("middle thwart", true, Optional.of("bow seat")));
    assertThat(EmptyHelm.of(nearest, List.of("stern seat"))).isEmpty();
  }

  /** With an extension to the tiller; what it takes stands in a finding of its own. */
  @Test
  void a_place_out_of_reach_is_steered_from_where_it_was_stated() {
    Boat boat =
        BoxBoat.of(3, 1.2, 0.5)
            .place("bow seat", 2.5, 0.25, 0.3, 1)
            .place("fore thwart", 2.0, 0.25, 0.3, 1)
            .weight("outboard", 9, TRANSOM)
            .boat();
    Boat stated = boat.withKit(List.of(boat.kit().get(0).withWorkedFrom("fore thwart")));
    assertThat(EmptyHelm.of(stated, List.of("bow seat")))
        .contains(new EmptyHelm("fore thwart", true, Optional.empty()));
  }

  @Test
  void a_floorboard_is_no_oar_and_a_motor_battery_no_motor() {
    assertThat(of(boat().weight("floorboard", 4, MIDDLE), "stern seat")).isEmpty();
    assertThat(of(boat().weight("motor battery", 9, TRANSOM), "bow seat")).isEmpty();
  }

  @Test
  void a_motor_that_no_place_reaches_is_steered_nobody_knows_how() {
    BoxBoat boat =
        BoxBoat.of(3, 1.2, 0.5)
            .place("bow seat", 2.5, 0.25, 0.3, 1)
            .place("fore thwart", 2.0, 0.25, 0.3, 1)
            .weight("outboard", 9, TRANSOM);
    assertThat(of(boat, "bow seat")).isEmpty();
  }
}
