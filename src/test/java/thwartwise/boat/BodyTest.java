package thwartwise.boat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import thwartwise.geometry.Box;

class BodyTest {

  // IMO Res. A.749(18) 3.5.2.7 (READ): 0.30 m above the seat seated, 1.0 m above the deck standing.
  @Test
  void a_seated_and_a_standing_person_have_their_centre_where_the_convention_puts_it() {
    Body seated = Body.seated("helm", 80, place(0.27, 0.4), 0.1, 0.03);
    assertThat(seated.middle().z()).isCloseTo(0.57, within(1e-12));
    assertThat(seated.stiff().centre().z()).isCloseTo(0.57, within(1e-12));
    assertThat(seated.standing().centre().z()).isCloseTo(1.03, within(1e-12));
  }

  @Test
  void a_seat_near_the_floor_is_knelt_at() {
    Body kneeling = Body.seated("paddler", 70, place(0.03, 0.2), 0, 0.03);
    assertThat(kneeling.stiff().centre().z()).isCloseTo(0.48, within(1e-12));
  }

  // As a weight that hangs acts at its point of suspension: at the seat, or 0.15 m above the floor.
  @Test
  void the_weight_of_somebody_upright_acts_where_it_is_carried() {
    Body seated = Body.seated("helm", 80, place(0.27, 0.4), 0.1, 0.03);
    assertThat(seated.centre().z()).isCloseTo(0.27, within(1e-12));
    assertThat(seated.kneeling().centre().z()).isCloseTo(0.18, within(1e-12));
    assertThat(seated.kneeling().stiff().centre().z()).isCloseTo(0.48, within(1e-12));
    assertThat(seated.stiff().boxes()).isEqualTo(seated.boxes());
  }

  @Test
  void nobody_sits_so_still_that_a_half_width_of_nothing_is_believed() {
    assertThat(Body.seated("rower", 70, place(0.25, 0), 0, 0.03).across().to()).isEqualTo(0.15);
    assertThat(Body.seated("rower", 70, place(0.25, 0.4), 0, 0.03).across().to()).isEqualTo(0.4);
  }

  // 32 % of the mass from floor to seat, the rest 0.85 m high above it, at 1000 kg/m3.
  @Test
  void the_boxes_of_a_body_hold_its_mass_in_water() {
    Body body = Body.seated("helm", 80, place(0.28, 0.4), 0.1, 0.03);
    Box legs = body.boxes().get(0);
    Box rest = body.boxes().get(1);
    assertThat(legs.volume()).isCloseTo(0.0256, within(1e-12));
    assertThat(rest.volume()).isCloseTo(0.0544, within(1e-12));
    assertThat(legs.z().from()).isCloseTo(0.03, within(1e-12));
    assertThat(legs.z().to()).isEqualTo(rest.z().from());
    assertThat(rest.z().length()).isCloseTo(0.85, within(1e-12));
  }

  @Test
  void legs_of_somebody_on_the_floor_stay_above_it() {
    Box legs = Body.seated("child", 30, place(0.05, 0.2), 0, 0.03).boxes().get(0);
    assertThat(legs.z().from()).isCloseTo(0.03, within(1e-12));
    assertThat(legs.z().length()).isCloseTo(0.10, within(1e-12));
  }

  private static Place place(double seat, double halfWidth) {
    return new Place("thwart", 1.5, seat, halfWidth, 2);
  }
}
