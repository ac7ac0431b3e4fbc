package thwartwise.electrics;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.time.Month;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.electrics.UsableCharge.Peukert;
import thwartwise.geometry.Reference;

/** Every row of electrics.csv, put to the sums. */
class ElectricsReferenceTest {
  private static final double CIRCULAR_MIL = Math.PI / 4 * 0.0254e-3 * 0.0254e-3;
  private static final double POUND_FORCE = 4.4482216152605;

  static Stream<Reference> one_ampere() {
    return Reference.of("peukert-one-ampere");
  }

  @ParameterizedTest
  @MethodSource
  void one_ampere(Reference r) {
    // In hours and ampere-hours, as the form is published.
    near(r, "hours", Peukert.oneAmpere(r.in("Ah"), r.in("n"), r.in("A")));
  }

  static Stream<Reference> rated() {
    return Reference.of("peukert-rated");
  }

  @ParameterizedTest
  @MethodSource
  void rated(Reference r) {
    double seconds = Peukert.rated(r.in("Ah") * 3600, r.in("R") * 3600, r.in("n"), r.in("A"));
    near(r, "hours", seconds / 3600);
  }

  /** The one-ampere form on a 20-hour label says 28 % too little at 10 A. */
  @Test
  void the_two_forms_disagree_on_a_label_of_20_hours() {
    double right = Peukert.rated(100, 20, 1.2, 10);
    double wrong = Peukert.oneAmpere(100, 1.2, 10);
    assertThat(1 - wrong / right).isCloseTo(0.275, within(0.001));
    // DERIVED: they agree where the label's current is one ampere.
    assertThat(Peukert.rated(100, 100, 1.2, 7))
        .isCloseTo(Peukert.oneAmpere(100, 1.2, 7), within(1e-9));
  }

  @Test
  void a_slow_draw_gives_no_more_than_the_label() {
    assertThat(Peukert.rated(100, 20, 1.2, 1)).isGreaterThan(100);
    assertThat(Peukert.withinLabel(100, 20, 1.2, 1)).isEqualTo(100);
    assertThat(Peukert.withinLabel(100, 20, 1.2, 10)).isEqualTo(Peukert.rated(100, 20, 1.2, 10));
  }

  static Stream<Reference> gauges() {
    return Reference.of("wire-gauge");
  }

  @ParameterizedTest
  @MethodSource
  void gauges(Reference r) {
    near(r, "mm2", WireSize.ofGauge((int) r.in("awg")) * 1e6);
  }

  static Stream<Reference> resistances() {
    return Reference.of("wire-resistance");
  }

  @ParameterizedTest
  @MethodSource
  void resistances(Reference r) {
    // A kilometre one way is half a kilometre there and back.
    near(r, "ohmPerKm", CircuitSums.drop(1, 500, WireSize.ofGauge((int) r.in("awg"))));
  }

  static Stream<Reference> wires() {
    return Reference.of("wire-for-drop");
  }

  @ParameterizedTest
  @MethodSource
  void wires(Reference r) {
    double area =
        CircuitSums.areaFor(
            r.in("A"), r.in("ft") / 2 * 0.3048, r.in("volts") * r.in("percent") / 100);
    if (r.wants("cm")) {
      near(r, "cm", area / CIRCULAR_MIL);
    }
    near(r, "awg", WireSize.gauge(area).orElseThrow());
  }

  static Stream<Reference> drops() {
    return Reference.of("voltage-drop");
  }

  @ParameterizedTest
  @MethodSource
  void drops(Reference r) {
    double drop = CircuitSums.drop(r.in("A"), r.in("metres") / 2, r.in("mm2") * 1e-6);
    near(r, "volts", drop);
    assertThat(drop).isGreaterThan(r.wanted("volts"));
  }

  static Stream<Reference> fuses() {
    return Reference.of("fuse-over-wire");
  }

  @ParameterizedTest
  @MethodSource
  void fuses(Reference r) {
    double carries =
        Ampacity.ofArea(WireSize.ofGauge((int) r.in("awg")), r.in("insulation")).orElseThrow();
    assertThat(r.wanted("fuse")).isLessThanOrEqualTo(carries);
    assertThat(r.wanted("fuse")).isGreaterThan(carries * Ampacity.together(2));
  }

  static Stream<Reference> ampacities() {
    return Reference.of("ampacity");
  }

  @ParameterizedTest
  @MethodSource
  void ampacities(Reference r) {
    double copper = WireSize.ofGauge((int) r.in("awg"));
    for (int degrees : new int[] {60, 75, 80, 90, 105, 125, 200}) {
      double wanted = r.wanted("c" + degrees);
      assertThat(Ampacity.ofArea(copper, degrees)).hasValue(wanted);
      // The wire between this gauge and the next counts as this one, and no thinner one will do.
      assertThat(Ampacity.ofArea(copper * 1.2, degrees)).hasValue(wanted);
      assertThat(Ampacity.areaFor(wanted, degrees)).isEqualTo(copper);
    }
  }

  static Stream<Reference> rules() {
    return Reference.of("fuse-by-rule");
  }

  /** Ours is the stricter: the rule lets half as much again through. */
  @ParameterizedTest
  @MethodSource
  void rules(Reference r) {
    double carries =
        Ampacity.ofArea(WireSize.ofGauge((int) r.in("awg")), r.in("insulation")).orElseThrow();
    near(r, "most", 1.5 * carries);
  }

  static Stream<Reference> distances() {
    return Reference.of("fuse-distance");
  }

  @ParameterizedTest
  @MethodSource
  void distances(Reference r) {
    near(
        r,
        "metres",
        r.in("sheathed") > 0 ? CircuitSums.FUSE_WITHIN_SHEATHED : CircuitSums.FUSE_WITHIN);
  }

  static Stream<Reference> motors() {
    return Reference.of("motor-current");
  }

  @ParameterizedTest
  @MethodSource
  void motors(Reference r) {
    ElectricMotor motor =
        new ElectricMotor(
            Optional.empty(),
            Optional.of(r.in("lb") * POUND_FORCE),
            Optional.empty(),
            Optional.empty());
    near(r, "A", motor.currentAt(r.in("volts")).orElseThrow());
  }

  static Stream<Reference> days() {
    return Reference.of("sun-outside-air");
  }

  @ParameterizedTest
  @MethodSource
  void days(Reference r) {
    near(r, "MJ", SolarDay.outsideAir(Math.toRadians(r.in("latitude")), (int) r.in("day")) / 1e6);
  }

  static Stream<Reference> months() {
    return Reference.of("sun-of-month");
  }

  @ParameterizedTest
  @MethodSource
  void months(Reference r) {
    double outside =
        SolarDay.outsideAir(Math.toRadians(r.in("latitude")), Month.of((int) r.in("month")));
    near(r, "MJ", outside / 1e6);
  }

  /** DERIVED: the closed form against a sum over the hours of the day. */
  @Test
  void a_day_of_sun_is_the_sum_of_its_moments() {
    double latitude = Math.toRadians(52);
    double delta = SolarDay.declination(172);
    double distance = 1 + 0.033 * Math.cos(2 * Math.PI * 172 / 365.0);
    double sum = 0;
    int steps = 86400;
    for (int i = 0; i < steps; i++) {
      double hour = 2 * Math.PI * (i + 0.5) / steps - Math.PI;
      double height =
          Math.sin(latitude) * Math.sin(delta)
              + Math.cos(latitude) * Math.cos(delta) * Math.cos(hour);
      sum += Math.max(0, height) * SolarDay.SOLAR_CONSTANT * distance;
    }
    assertThat(SolarDay.outsideAir(latitude, 172)).isCloseTo(sum, within(1e-6 * sum));
  }

  private static void near(Reference r, String name, double found) {
    assertThat(found).as(r.what()).isCloseTo(r.wanted(name), within(r.near(name) + 1e-12));
  }
}
