package thwartwise.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static thwartwise.measure.UnitFormat.Side.DOWN;
import static thwartwise.measure.UnitFormat.Side.UP;

import org.junit.jupiter.api.Test;

/** Conversions: NIST SP 811, appendix B.8 (FROM MEMORY). */
class UnitFormatTest {
  private static final UnitFormat METRIC = new UnitFormat(UnitSystem.METRIC);
  private static final UnitFormat FEET = new UnitFormat(UnitSystem.FEET_INCHES_POUNDS);

  private static String plain(String shown) {
    return shown.replace('\u00a0', ' ');
  }

  @Test
  void what_the_boat_has_rounds_down_and_what_it_needs_rounds_up() {
    assertThat(plain(METRIC.mass(32.9, DOWN))).isEqualTo("32 kg");
    assertThat(plain(METRIC.mass(32.1, UP))).isEqualTo("33 kg");
    // 32.4 kg are 71.43 lb.
    assertThat(plain(FEET.mass(32.4, DOWN))).isEqualTo("71 lb");
    assertThat(plain(FEET.mass(32.4, UP))).isEqualTo("72 lb");
  }

  @Test
  void a_height_is_said_as_it_is_read_off_a_tape() {
    assertThat(plain(METRIC.height(0.249, DOWN))).isEqualTo("0.24 m");
    assertThat(plain(FEET.height(0.079, DOWN))).isEqualTo("3 in");
    assertThat(plain(FEET.height(0.42, DOWN))).isEqualTo("1 ft 4 in");
    assertThat(plain(FEET.height(0.3048, UP))).isEqualTo("1 ft 0 in");
    assertThat(plain(FEET.height(-0.06, DOWN))).isEqualTo("-3 in");
    assertThat(plain(FEET.height(-0.01, UP))).isEqualTo("0 in");
  }

  @Test
  void a_gallon_says_which_it_is() {
    // 3.785411784 litres.
    assertThat(plain(FEET.volume(0.0757, DOWN))).isEqualTo("19 US gallons");
    assertThat(plain(METRIC.volume(0.0757, UP))).isEqualTo("76 litres");
  }

  @Test
  void moments_powers_pulls_speeds_and_temperatures_have_their_units() {
    // 1.355818 Nm, 745.6999 W, 4.448222 N, 0.44704 m/s.
    assertThat(plain(FEET.moment(639, DOWN))).isEqualTo("471 lb ft");
    assertThat(plain(FEET.power(500, DOWN))).isEqualTo("0.6 hp");
    assertThat(plain(FEET.force(1210, UP))).isEqualTo("273 lb of pull");
    assertThat(plain(FEET.speed(1.5, DOWN))).isEqualTo("3 mph");
    assertThat(plain(FEET.temperature(15, UP))).isEqualTo("59 °F");
    assertThat(plain(METRIC.moment(639.5, DOWN))).isEqualTo("639 Nm");
    assertThat(plain(METRIC.power(500.2, UP))).isEqualTo("501 W");
    assertThat(plain(METRIC.force(1210, UP))).isEqualTo("1210 N");
    assertThat(plain(METRIC.speed(1.55, DOWN))).isEqualTo("1.5 m/s");
    assertThat(plain(METRIC.temperature(15, UP))).isEqualTo("15 °C");
  }

  @Test
  void what_is_not_known_is_never_a_figure() {
    assertThat(plain(FEET.height(Double.NaN, DOWN))).isEqualTo("an unknown number of in");
    assertThat(plain(METRIC.mass(Double.POSITIVE_INFINITY, UP)))
        .isEqualTo("an unknown number of kg");
  }
}
