package thwartwise.afloat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Body;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Kit;
import thwartwise.boat.Loading;
import thwartwise.boat.Place;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;

/** What of a box boat's inside, 4 by 1.4 by 0.5 m, water can fill. */
class LooseWaterTest {
  private static final double WHOLE = 4 * 1.4 * 0.5;
  private static final double WALLS = 4e-6; // a shell of 1e-7 m over 9 m2
  private static final Vector3 AMIDSHIPS = Vector3.of(2, 0, 0.2);
  private static final Vector3 UPRIGHT = Vector3.of(0, 0, 1);

  private static BoxBoat boat() {
    return BoxBoat.of(4, 1.4, 0.5).hull(500, 0.2).weightlessShell().floor(0.02);
  }

  private static LooseWater water(BoxBoat boat, Body... people) {
    return LooseWater.of(new Loading(boat.model(), List.of(people), List.of(), 1));
  }

  private static double capacity(BoxBoat boat, Body... people) {
    return water(boat, people).capacity(Bay.WHOLE);
  }

  @Test
  void an_empty_boat_fills_to_its_rail() {
    assertThat(capacity(boat())).isCloseTo(WHOLE, within(WALLS));
  }

  @Test
  void a_proven_chamber_stays_dry_and_a_claimed_one_fills() {
    Span bow = new Span(3, 4);
    assertThat(capacity(boat().proven("bow", bow))).isCloseTo(WHOLE - 0.7, within(WALLS));
    assertThat(capacity(boat().claimed("bow", bow))).isCloseTo(WHOLE, within(WALLS));
  }

  @Test
  void only_fastened_kit_of_a_known_volume_keeps_water_out() {
    Kit fast = new Kit("can", 9, AMIDSHIPS, Optional.of(0.008), true, Optional.empty());
    Kit loose = new Kit("can", 9, AMIDSHIPS, Optional.of(0.008), false, Optional.empty());
    Kit unknown = new Kit("can", 9, AMIDSHIPS, Optional.empty(), true, Optional.empty());
    assertThat(capacity(boat().kit(fast))).isCloseTo(WHOLE - 0.008, within(WALLS));
    assertThat(capacity(boat().kit(loose))).isCloseTo(WHOLE, within(WALLS));
    assertThat(capacity(boat().kit(unknown))).isCloseTo(WHOLE, within(WALLS));
  }

  // A cube of 8 litres, 0.2 m, of which the forward half stands in a proven bow locker.
  @Test
  void kit_half_in_a_chamber_takes_only_its_other_half() {
    BoxBoat boat = boat().proven("bow", new Span(3, 4));
    boat.kit("can", 9, Vector3.of(3, 0, 0.2), 0.008);
    assertThat(capacity(boat)).isCloseTo(WHOLE - 0.7 - 0.004, within(WALLS));
    BoxBoat claimed = boat().claimed("bow", new Span(3, 4));
    claimed.kit("can", 9, Vector3.of(3, 0, 0.2), 0.008);
    assertThat(capacity(claimed)).isCloseTo(WHOLE - 0.008, within(WALLS));
  }

  @Test
  void two_cans_in_the_same_place_take_the_room_of_one() {
    BoxBoat boat = boat().kit("can", 9, AMIDSHIPS, 0.008).kit("other", 9, AMIDSHIPS, 0.008);
    assertThat(capacity(boat)).isCloseTo(WHOLE - 0.008, within(WALLS));
  }

  private static Body helm() {
    return Body.seated("helm", 80, new Place("seat", 2, 0.3, 0.4, 1), 0, 0.02);
  }

  // Legs 0.32 x 80 litres up to the seat; of the upper body 0.68 x 80/0.85 a metre, 0.2 m of it.
  @Test
  void people_keep_water_out_as_far_as_they_sit_in_the_boat() {
    double legs = 0.0256;
    double upper = 0.0544 / 0.85 * 0.2;
    assertThat(capacity(boat(), helm())).isCloseTo(WHOLE - legs - upper, within(WALLS));
  }

  @Test
  void heavier_people_by_the_allowance_take_more_room() {
    Loading loading = new Loading(boat().model(), List.of(helm()), List.of(), 1.05);
    double body = 1.05 * (0.0256 + 0.0544 / 0.85 * 0.2);
    assertThat(LooseWater.of(loading).capacity(Bay.WHOLE)).isCloseTo(WHOLE - body, within(WALLS));
  }

  @Test
  void a_person_on_a_proven_thwart_does_not_take_its_room_twice() {
    BoxBoat boat = boat().proven("thwart", new Span(1.8, 2.2), Span.ALL, new Span(0, 0.3));
    double thwart = 0.4 * 1.4 * 0.3;
    // The legs stand on the floor before the thwart, all of them in the room of the water.
    double legs = 0.32 * 80 / 1000;
    double upper = 0.0544 / 0.85 * 0.2;
    assertThat(capacity(boat, helm())).isCloseTo(WHOLE - thwart - legs - upper, within(WALLS));
  }

  @Test
  void the_boat_with_water_in_it_weighs_that_much_more() {
    FloatingBody wet = water(boat()).in(Bay.WHOLE, 0.056);
    assertThat(wet.mass()).isEqualTo(500);
    assertThat(wet.totalMass()).isCloseTo(556, within(1e-9));
    assertThat(wet.pools()).hasSize(1);
    assertThat(wet.centre()).isEqualTo(AMIDSHIPS);
  }

  @Test
  void water_that_does_not_fit_has_no_depth() {
    LooseWater water = water(boat());
    assertThat(water.depthOver(AMIDSHIPS, UPRIGHT, Bay.WHOLE, 2.81)).isEmpty();
    assertThat(water.depthOver(AMIDSHIPS, UPRIGHT, Bay.WHOLE, 1.4).orElseThrow())
        .isCloseTo(0.05, within(1e-6));
  }

  @Test
  void a_point_above_the_water_inside_has_a_depth_below_nought() {
    assertThat(water(boat()).depthOver(AMIDSHIPS, UPRIGHT, Bay.WHOLE, 0.56).orElseThrow())
        .isCloseTo(-0.1, within(1e-6));
  }
}
