package thwartwise.boat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.afloat.Swamping;
import thwartwise.geometry.Box;
import thwartwise.geometry.Span;

/** Legs in a box 3 m long with a seat box across it from 1.4 to 1.7 m, 0.3 m high. */
class LegRoomTest {
  private static BoxBoat seatBox() {
    return BoxBoat.of(3, 1.2, 0.5)
        .hull(100, 0.2)
        .weightlessShell()
        .proven("seat box", new Span(1.4, 1.7), Span.ALL, new Span(0, 0.3));
  }

  /** 0.32 x 50 kg over 0.28 m of height: 16 litres on a foot of 0.239 m. */
  private static Body at(double x) {
    return Body.seated("crew", 50, new Place("seat", x, 0.3, 0.3, 1), 0, 0.02);
  }

  private static final double FOOT = Math.sqrt(0.016 / 0.28);

  private static Box legs(BoxBoat boat, double x) {
    return boat.model().boxes(at(x)).get(0);
  }

  // Forward of the middle of the seat box the floor before it is nearer.
  @Test
  void legs_stand_on_the_floor_before_a_seat_that_is_a_chamber() {
    Box legs = legs(seatBox(), 1.6);
    assertThat(legs.x().from()).isCloseTo(1.7, within(1e-6));
    assertThat(legs.x().length()).isCloseTo(FOOT, within(1e-12));
    assertThat(legs.z().from()).isCloseTo(0.02, within(1e-12));
    assertThat(legs(seatBox(), 1.5).x().to()).isCloseTo(1.4, within(1e-6));
  }

  @Test
  void of_two_floors_as_near_the_one_nearer_amidships_is_taken() {
    assertThat(legs(seatBox(), 1.55).x().to()).isCloseTo(1.4, within(1e-6));
  }

  @Test
  void legs_under_a_plank_stay_under_it() {
    assertThat(legs(BoxBoat.of(3, 1.2, 0.5).hull(100, 0.2), 1.55).x().middle())
        .isCloseTo(1.55, within(1e-12));
  }

  // A locker from 1.7 m on: the only floor is aft.
  @Test
  void where_a_locker_stands_before_the_seat_legs_go_behind_it() {
    BoxBoat boat = seatBox().proven("locker", new Span(1.7, 3), Span.ALL, new Span(0, 0.3));
    assertThat(legs(boat, 1.65).x().to()).isCloseTo(1.4, within(1e-6));
  }

  // Lockers on both sides of it: no floor within reach, and legs in a full box lift nothing.
  @Test
  void without_a_floor_they_stay_in_the_box_and_lift_nothing() {
    BoxBoat boat =
        seatBox()
            .proven("aft locker", new Span(0, 1.4), Span.ALL, new Span(0, 0.3))
            .proven("fore locker", new Span(1.7, 3), Span.ALL, new Span(0, 0.3));
    assertThat(legs(boat, 1.55).x().middle()).isCloseTo(1.55, within(1e-12));
    assertThat(lifted(boat)).isCloseTo(0.034, within(1e-6));
  }

  // The whole of a body of 50 kg: 16 litres of legs and 34 of the rest.
  @Test
  void before_the_seat_they_lift_where_they_are_under_water() {
    assertThat(lifted(seatBox())).isCloseTo(0.050, within(1e-6));
  }

  /** What one body adds to all that lifts when it is fully under. */
  private static double lifted(BoxBoat boat) {
    BoatModel model = boat.model();
    return volume(model, List.of(at(1.55))) - volume(model, List.of());
  }

  private static double volume(BoatModel model, List<Body> people) {
    return Swamping.of(new Loading(model, people, List.of(), 1), 1)
        .floating(List.of())
        .liftVolume();
  }
}
