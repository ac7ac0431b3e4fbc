package thwartwise.passage;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.geometry.Reference;
import thwartwise.passage.MotorSpeed.HullSpeed;

class ReturnTripTest {
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
    ReturnTrip still = ReturnTrip.of(3 * 3600, 1, 0, 0);
    assertThat(still.turnAfter()).isCloseTo(3600, within(1e-9));
    assertThat(still.distance()).isCloseTo(3600, within(1e-9));
  }

  /** DERIVED: out at 1.5 and home at 0.5 m/s, a quarter of the 7200 s is the way out. */
  @Test
  void against_a_stream_it_turns_sooner() {
    ReturnTrip stream = ReturnTrip.of(3 * 3600, 1, 0, 0.5);
    assertThat(stream.turnAfter()).isCloseTo(1800, within(1e-9));
    assertThat(stream.distance()).isCloseTo(2700, within(1e-9));
  }

  /** DERIVED: out and home take exactly what is not kept in hand. */
  @Test
  void the_way_out_and_home_takes_two_thirds_of_the_time() {
    ReturnTrip way = ReturnTrip.of(5000, 1.3, 4, 0.3);
    double all = way.distance() / way.outwardSpeed() + way.distance() / way.homewardSpeed();
    assertThat(all).isCloseTo(5000 * 2 / 3.0, within(1e-6));
  }

  /** DERIVED from the judgement on the page: 0.15 of 4 m/s is lost on the way home alone. */
  @Test
  void a_headwind_takes_its_share_of_the_speed_and_a_wind_from_behind_adds_nothing() {
    ReturnTrip windy = ReturnTrip.of(3 * 3600, 1, 4, 0);
    assertThat(windy.outwardSpeed()).isEqualTo(1);
    assertThat(windy.homewardSpeed()).isCloseTo(0.4, within(1e-12));
    // DERIVED: 1 m/s less 0.75 m/s of stream leaves 0.25; 0.85 leaves less than 0.2, no way home.
    assertThat(ReturnTrip.of(3600, 1, 0, 0.75).getsHome()).isTrue();
    assertThat(ReturnTrip.of(3600, 1, 0, 0.85).getsHome()).isFalse();
    assertThat(ReturnTrip.of(3600, 1, 0, 0.85).turnAfter()).isZero();
    assertThat(Rowing.OARS.time(750, 0, 0.6)).isInfinite();
    assertThat(Rowing.OARS.time(750, 2, 0)).isCloseTo(750 / 0.45, within(1e-9));
  }

  @Test
  void a_boat_slower_than_the_stream_never_gets_home() {
    ReturnTrip carried = ReturnTrip.of(3 * 3600, 0.9, 0, 1);
    assertThat(carried.getsHome()).isFalse();
    assertThat(carried.distance()).isZero();
    assertThat(ReturnTrip.of(3600, Double.NaN, 0, 0).getsHome()).isFalse();
  }

  @Test
  void oars_make_no_way_against_a_stream_as_fast_as_they_row() {
    assertThat(Rowing.OARS.time(750, 0, 0)).isCloseTo(1000, within(1e-9));
    assertThat(Rowing.OARS.time(750, 0, 0.75)).isInfinite();
  }

  /**
   * DERIVED: wind at 1.3 x 1.25 m2 (two people sitting up and the bow), water at 23 N for 1 m/s, a
   * thrust that stays: in still air the boat makes 2 knots, against 4 m/s the balance of forces
   * leaves 0.47 m/s.
   */
  @Test
  void a_boat_of_two_knots_loses_no_more_to_the_wind_than_a_balance_of_forces_says() {
    double speed = MotorSpeed.UNTIMED;
    double left = balanced(speed, 4);
    assertThat(left).isCloseTo(0.473, within(0.005));
    assertThat(ReturnTrip.of(3600, speed, 4, 0).homewardSpeed()).isLessThanOrEqualTo(left);
    assertThat(ReturnTrip.of(3600, 1.5, 4, 0).homewardSpeed())
        .isLessThanOrEqualTo(balanced(1.5, 4));
  }

  /**
   * DERIVED by the same balance: 1.5 m/s stands still in 7.4 m/s; a share of the wind alone would
   * leave it a way home in 8.
   */
  @Test
  void a_wind_of_more_than_four_times_its_speed_lets_nothing_home() {
    assertThat(balanced(1.5, 7.4)).isLessThan(0.02);
    assertThat(ReturnTrip.of(3600, 1.5, 6, 0).getsHome()).isTrue();
    assertThat(ReturnTrip.of(3600, 1.5, 6.1, 0).getsHome()).isFalse();
    assertThat(ReturnTrip.of(3600, 1.5, 6.1, 0).turnAfter()).isZero();
    assertThat(Rowing.OARS.time(100, 3.1, -1)).isInfinite();
  }

  /** Speed over the ground that is left, by halving: m/s. */
  private static double balanced(double still, double wind) {
    double air = 0.5 * 1.25 * 1.3 * 1.25;
    double water = 23;
    double thrust = (water + air) * still * still;
    double low = 0;
    double high = still;
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      double against = water * middle * middle + air * (wind + middle) * (wind + middle);
      low = against < thrust ? middle : low;
      high = against < thrust ? high : middle;
    }
    return low;
  }

  @Test
  void a_paddle_takes_half_as_long_again_as_oars_and_gives_up_sooner() {
    assertThat(Rowing.PADDLES.time(750, 0, 0)).isCloseTo(1500, within(1e-9));
    assertThat(Rowing.PADDLES.time(750, 0, 0.35)).isInfinite();
    assertThat(Rowing.OARS.time(750, 0, 0.35)).isFinite();
  }
}
