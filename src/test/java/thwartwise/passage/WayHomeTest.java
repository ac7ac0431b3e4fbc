package thwartwise.passage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.geometry.Reference;

class WayHomeTest {
  static Stream<Reference> lengths() {
    return Reference.of("hull-speed");
  }

  @ParameterizedTest
  @MethodSource
  void lengths(Reference r) {
    double knots = HullSpeed.of(r.in("ft") * 0.3048) / HullSpeed.KNOT;
    assertThat(knots).isCloseTo(r.wanted("knots"), within(r.near("knots")));
  }

  /** DERIVED: two thirds of three hours are two; one out, one back at 1 m/s. */
  @Test
  void in_still_water_it_turns_after_a_third() {
    WayHome still = WayHome.of(3 * 3600, 1, 0, 0);
    assertThat(still.turnAfter()).isCloseTo(3600, within(1e-9));
    assertThat(still.distance()).isCloseTo(3600, within(1e-9));
  }

  /** DERIVED: out at 1.5 and home at 0.5 m/s, a quarter of the 7200 s is the way out. */
  @Test
  void against_a_stream_it_turns_sooner() {
    WayHome stream = WayHome.of(3 * 3600, 1, 0, 0.5);
    assertThat(stream.turnAfter()).isCloseTo(1800, within(1e-9));
    assertThat(stream.distance()).isCloseTo(2700, within(1e-9));
  }

  /** DERIVED: out and home take exactly what is not kept in hand. */
  @Test
  void the_way_out_and_home_takes_two_thirds_of_the_time() {
    WayHome way = WayHome.of(5000, 1.3, 4, 0.3);
    double all = way.distance() / way.out() + way.distance() / way.home();
    assertThat(all).isCloseTo(5000 * 2 / 3.0, within(1e-6));
  }

  /** DERIVED from the judgement on the page: a tenth of 4 m/s is lost on the way home alone. */
  @Test
  void a_headwind_takes_a_tenth_of_its_speed_and_a_wind_from_behind_adds_nothing() {
    WayHome windy = WayHome.of(3 * 3600, 1, 4, 0);
    assertThat(windy.out()).isEqualTo(1);
    assertThat(windy.home()).isCloseTo(0.6, within(1e-12));
    // DERIVED: 1 m/s less 0.75 m/s of stream leaves 0.25; 0.85 leaves less than 0.2, no way home.
    assertThat(WayHome.of(3600, 1, 0, 0.75).getsHome()).isTrue();
    assertThat(WayHome.of(3600, 1, 0, 0.85).getsHome()).isFalse();
    assertThat(WayHome.of(3600, 1, 0, 0.85).turnAfter()).isZero();
    assertThat(Rowing.time(750, 0, 0.6)).isInfinite();
    assertThat(Rowing.time(750, 2, 0)).isCloseTo(750 / 0.55, within(1e-9));
  }

  @Test
  void a_boat_slower_than_the_stream_never_gets_home() {
    WayHome carried = WayHome.of(3 * 3600, 0.9, 0, 1);
    assertThat(carried.getsHome()).isFalse();
    assertThat(carried.distance()).isZero();
    assertThat(WayHome.of(3600, Double.NaN, 0, 0).getsHome()).isFalse();
  }

  @Test
  void oars_make_no_way_against_a_stream_as_fast_as_they_row() {
    assertThat(Rowing.time(750, 0, 0)).isCloseTo(1000, within(1e-9));
    assertThat(Rowing.time(750, 0, 0.75)).isInfinite();
  }
}
