package thwartwise.afloat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Loading;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;

/** Boxes of 3 by 1.2 by 0.5 m that fill through a hole in the bottom of 3 cm² net. */
class InflowTest {
  private static final double NET = 3e-4;
  private static final double G = 9.80665;
  private static final Vector3 BOTTOM = Vector3.of(1.5, 0, 0);

  private static BoxBoat boat(double mass) {
    return BoxBoat.of(3, 1.2, 0.5).hull(mass, 0.1).weightlessShell();
  }

  private static BoxBoat tanks(double mass) {
    return boat(mass).proven("stern tank", new Span(0, 0.7)).proven("bow tank", new Span(2.3, 3));
  }

  private static LooseWater water(BoxBoat boat) {
    return LooseWater.of(new Loading(boat.model(), List.of(), List.of(), 1));
  }

  // Every litre sinks boat and water inside alike: the head stays m/(rho A), the rate
  // a sqrt(2 g m/(rho A)).
  @Test
  void a_box_without_chambers_fills_at_a_constant_rate() {
    Inflow inflow = Inflow.of(water(boat(720)), BOTTOM, NET, 0.5);
    double rate = NET * Math.sqrt(2 * G * 0.2);
    assertThat(inflow.first()).isCloseTo(rate, within(1e-6 * rate));
    assertThat(inflow.seconds()).isCloseTo(0.5 / rate, within(1e-5 * 0.5 / rate));
    assertThat(inflow.levelAt()).isEmpty();
  }

  @Test
  void salt_water_holds_the_boat_higher_and_so_runs_in_more_slowly() {
    Inflow inflow = Inflow.of(water(boat(720).salt()), BOTTOM, NET, 0.3);
    double rate = NET * Math.sqrt(2 * G * 0.2 / 1.025);
    assertThat(inflow.first()).isCloseTo(rate, within(1e-6 * rate));
    assertThat(inflow.seconds()).isCloseTo(0.3 / rate, within(1e-5 * 0.3 / rate));
  }

  // The water inside counts only once it stands over the hole: 0.1 m up the hole feels d - 0.1 at
  // first, then h rises past it.
  @Test
  void water_inside_below_the_hole_does_not_hold_the_sea_back() {
    Vector3 hole = Vector3.of(1.5, 0, 0.1);
    Inflow inflow = Inflow.of(water(boat(720)), hole, NET, 0.36);
    // Up to w = 0.36 the water inside is below the hole: head 0.2 + w/3.6 - 0.1.
    double k = NET * Math.sqrt(2 * G);
    double onPaper = 2 * 3.6 / k * (Math.sqrt(0.2) - Math.sqrt(0.1));
    assertThat(inflow.first()).isCloseTo(k * Math.sqrt(0.1), within(1e-9));
    assertThat(inflow.seconds()).isCloseTo(onPaper, within(1e-3 * onPaper));
  }

  // Two tanks hold the boat up: head m/(rho A) - w (1/1.92 - 1/3.6), the time its integral.
  @Test
  void it_slows_down_as_the_water_inside_nears_the_sea() {
    double slope = 1 / 1.92 - 1 / 3.6;
    double head = 0.3 / 3.6;
    Inflow inflow = Inflow.of(water(tanks(300)), BOTTOM, NET, 0.25);
    double k = NET * Math.sqrt(2 * G);
    double onPaper = 2 / (k * slope) * (Math.sqrt(head) - Math.sqrt(head - slope * 0.25));
    assertThat(inflow.seconds()).isCloseTo(onPaper, within(2e-3 * onPaper));
    assertThat(inflow.levelAt()).isEmpty();
  }

  // Level at 0.3/3.6 over that slope, 0.343 m³, so at the eleventh of 32 parts of 0.96 m³.
  @Test
  void it_stops_where_the_water_inside_is_level_with_the_sea() {
    Inflow inflow = Inflow.of(water(tanks(300)), BOTTOM, NET, 0.96);
    assertThat(inflow.levelAt().orElseThrow()).isCloseTo(0.33, within(1e-9));
    double slope = 1 / 1.92 - 1 / 3.6;
    double head = 0.3 / 3.6;
    double k = NET * Math.sqrt(2 * G);
    double onPaper = 2 / (k * slope) * (Math.sqrt(head) - Math.sqrt(head - slope * 0.33));
    assertThat(inflow.seconds()).isCloseTo(onPaper, within(0.03 * onPaper));
  }

  // Draft 0.2: a hole a little under it lets water in, one a little above does not.
  @Test
  void a_hole_above_the_water_lets_nothing_in() {
    Inflow above = Inflow.of(water(boat(720)), Vector3.of(1.5, 0, 0.2001), NET, 0.5);
    assertThat(above.first()).isZero();
    assertThat(above.seconds()).isZero();
    assertThat(above.levelAt()).isEmpty();
    assertThat(Inflow.of(water(boat(720)), Vector3.of(1.5, 0, 0.1998), NET, 0.5).first())
        .isPositive();
    assertThat(Inflow.of(water(boat(720)), Vector3.of(1.5, 0, 0.19995), NET, 0.5).first())
        .as("less than a tenth of a millimetre of head is none")
        .isZero();
  }

  @Test
  void a_boat_that_sinks_has_no_rate() {
    assertThat(Inflow.of(water(boat(1900)), BOTTOM, NET, 0.5).first()).isZero();
  }

  // 1.8 m3 in all under the rail, 720 kg of boat: it sinks at 1.08 m3, which is no filling up to
  // the sea.
  @Test
  void a_boat_that_sinks_on_the_way_is_not_level_with_the_sea() {
    Inflow inflow = Inflow.of(water(boat(720)), BOTTOM, NET, 1.5);
    assertThat(inflow.levelAt()).isEmpty();
    assertThat(inflow.seconds()).isPositive();
    assertThat(inflow.seconds()).isLessThan(1.08 / (NET * Math.sqrt(2 * G * 0.2)));
  }
}
