package thwartwise.measure;

import static thwartwise.Assertions.assertThat;
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
    assertThat(plain(FEET.height(0.3048, UP))).isEqualTo("1 ft");
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

  // 0.4445 m are 17.5 in, 0.1016 m 4 in; 72.5747792 kg are 160 lb, 11.34 kg 25.0 lb.
  @Test
  void what_was_measured_is_told_as_tape_and_scales_gave_it() {
    assertThat(plain(FEET.tape(0.4445))).isEqualTo("1 ft 5 1/2 in");
    assertThat(plain(FEET.tape(0.1016))).isEqualTo("4 in");
    assertThat(plain(FEET.scales(72.5747792))).isEqualTo("160 lb");
    assertThat(plain(FEET.scales(11.34))).isEqualTo("25 lb");
    assertThat(plain(UnitFormat.METRIC.tape(0.4445))).isEqualTo("0.4445 m");
    assertThat(plain(UnitFormat.METRIC.scales(80))).isEqualTo("80 kg");
  }

  // A US gallon is 3.785411784 litres: 8.7 litres are 2.298, 8 litres 2.113.
  @Test
  void a_jug_is_told_in_tenths_of_a_gallon_rounded_down() {
    assertThat(plain(FEET.jug(0.0087))).isEqualTo("2.2 US gallons");
    assertThat(plain(UnitFormat.METRIC.jug(0.0087))).isEqualTo("8.7 litres");
  }

  // 6.35 mm are 1/4 in, 1.5 mm 0.059 in; 750 kg/m3 are 46.82 lb a cubic foot; 500 m 546.8 yards,
  // paced to fifty.
  @Test
  void thickness_density_and_distance_have_units_of_their_own() {
    assertThat(plain(FEET.thickness(0.00635))).isEqualTo("1/4 in");
    assertThat(plain(FEET.thickness(0.0015))).isEqualTo("0.06 in");
    assertThat(plain(FEET.density(750))).isEqualTo("46.9 lb per cubic foot");
    assertThat(plain(FEET.distance(500, DOWN))).isEqualTo("500 yards");
    assertThat(plain(FEET.twist(Math.toRadians(45), DOWN))).isEqualTo("13.7 degrees a foot");
    assertThat(plain(FEET.rain(0.05, UP))).isEqualTo("2 in");
    assertThat(plain(FEET.area(2.8, UP))).isEqualTo("31 square feet");
  }

  @Test
  void a_card_has_both_with_the_readers_own_first() {
    assertThat(plain(FEET.masses(110, DOWN))).isEqualTo("242 lb, 110 kg");
    assertThat(plain(UnitFormat.METRIC.masses(110, DOWN))).isEqualTo("110 kg, 242 lb");
  }

  @Test
  void what_is_not_known_is_said_not_to_be() {
    assertThat(plain(FEET.tape(Double.NaN))).isEqualTo("an unknown number of in");
    assertThat(plain(FEET.scales(Double.NaN))).isEqualTo("an unknown number of lb");
    assertThat(plain(FEET.jug(Double.NaN))).isEqualTo("an unknown number of US gallons");
  }
}
