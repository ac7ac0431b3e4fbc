package thwartwise.boat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thwartwise.boat.Filling.SealTest;

/** Against closed forms of hydraulics, FROM MEMORY: sharp-edged orifice, laminar flow in a slot. */
class SwampedLeakTest {
  private static final double G = 9.80665;
  private static final double SHARE = 1e-12;

  /** Q = C A sqrt(2 g h), m³/s, of a hole of 1 mm² with C = 0.6. */
  private static double hole(double head) {
    return 0.6 * 1e-6 * Math.sqrt(2 * G * head);
  }

  /**
   * Q = w s³ rho g h / (12 mu L), m³/s: a joint 0.5 m long and 20 mm deep that gapes 0.05 mm; water
   * of 1000 kg/m³ and 1.3 mPa s.
   */
  private static double seep(double head) {
    return 0.5 * Math.pow(0.05e-3, 3) * 1000 * G * head / (12 * 1.3e-3 * 0.02);
  }

  private static SealTest test(double flow, double minutes, double head) {
    return new SealTest(
        LocalDate.of(2026, 5, 2),
        "held under",
        minutes,
        flow * minutes * 60 * 1000,
        "owner",
        Optional.of(head));
  }

  // Tried deeper than it lies swamped: a hole slows down the least.
  @Test
  void a_hole_that_was_tried_under_more_water_runs_slower_by_the_root_of_the_head() {
    assertThat(SwampedLeak.of(test(hole(0.6), 10, 0.6), 0.3, 0.4).rate())
        .isCloseTo(hole(0.4), within(SHARE * hole(0.4)))
        .isGreaterThan(seep(0.4) / seep(0.6) * hole(0.6));
  }

  // The leak at half of 0.3 m: 0.15 m of water over it in the test and 0.45 m swamped.
  @Test
  void a_seep_that_was_tried_under_less_water_runs_faster_by_the_head() {
    assertThat(SwampedLeak.of(test(seep(0.15), 10, 0.3), 0.3, 0.6).rate())
        .isCloseTo(seep(0.45), within(SHARE * seep(0.45)));
  }

  @Test
  void under_the_same_water_it_runs_as_in_the_test() {
    assertThat(SwampedLeak.of(test(1e-6, 20, 0.4), 0.3, 0.4).rate())
        .isCloseTo(1e-6, within(SHARE * 1e-6));
  }

  /** Wherever the leak is in the lower half of what was under water, and whatever it is. */
  @ParameterizedTest
  @CsvSource({"0.1, 0.5", "0.28, 0.45", "0.3, 0.35", "0.45, 0.45", "0.5, 0.45", "1.0, 0.45"})
  void it_never_runs_slower_than_a_hole_or_a_seep_would(double tested, double swamped) {
    double depth = 0.28;
    double leaking = SwampedLeak.of(test(1e-6, 10, tested), depth, swamped).rate();
    for (double at = 0; at <= Math.min(tested, depth) / 2; at += 0.01) {
      assertThat(leaking * (1 + SHARE))
          .isGreaterThanOrEqualTo(1e-6 * hole(swamped - at) / hole(tested - at))
          .isGreaterThanOrEqualTo(1e-6 * seep(swamped - at) / seep(tested - at));
    }
  }

  // 0.4 litres in 10 minutes are 2.4 litres an hour: 10 of 20 litres after 4 h 10 min, and after
  // one
  // hour 17.6 of 20 are left.
  @Test
  void a_rate_says_how_long_a_chamber_lifts() {
    SealTest test =
        new SealTest(LocalDate.of(2026, 5, 2), "held under", 10, 0.4, "me", Optional.of(0.45));
    SwampedLeak leak = SwampedLeak.of(test, 0.3, 0.45);
    assertThat(leak.halfGone(0.020)).isCloseTo(15_000, within(1e-6));
    assertThat(leak.left(0.020, 3600)).isCloseTo(0.88, within(1e-12));
    assertThat(leak.left(0.002, 3600)).isZero();
  }

  /**
   * A tank with upright sides fills through a hole at its bottom in t = 2 S (sqrt H - sqrt(H - z))
   * / (C A sqrt(2 g)), FROM MEMORY: later than it is taken to.
   */
  @Test
  void it_fills_no_later_than_a_tank_whose_water_holds_the_sea_back() {
    double floor = 0.1;
    double head = 0.45;
    SwampedLeak leak = SwampedLeak.of(test(hole(head), 10, head), 0.3, head);
    for (double z = 0.01; z <= 0.3; z += 0.01) {
      double closed =
          2 * floor * (Math.sqrt(head) - Math.sqrt(head - z)) / (0.6e-6 * Math.sqrt(2 * G));
      assertThat(leak.halfGone(2 * floor * z)).isLessThan(closed).isGreaterThan(0.5 * closed);
    }
  }

  /**
   * The less stood over a leak the faster it runs when swamped, so nobody gains by leaving it out.
   * By hand: the leak halfway up 0.1 m has 0.05 m over it in the test and 0.4 m swamped.
   */
  @Test
  void a_test_without_a_head_counts_as_one_under_a_hand_of_water() {
    SealTest unknown = new SealTest(LocalDate.of(2026, 5, 2), "water poured in", 10, 0.4, "me");
    double rate = 0.4e-3 / 600;
    assertThat(SwampedLeak.of(unknown, 0.28, 0.45).rate())
        .isCloseTo(8 * rate, within(SHARE))
        .isGreaterThan(SwampedLeak.of(test(rate, 10, 0.28), 0.28, 0.45).rate());
  }

  /** A chamber lower than a hand was full, at most. */
  @Test
  void no_more_water_is_taken_than_the_chamber_is_deep() {
    SealTest unknown = new SealTest(LocalDate.of(2026, 5, 2), "water poured in", 10, 0.4, "me");
    SealTest full = test(0.4e-3 / 600, 10, 0.06);
    assertThat(SwampedLeak.of(unknown, 0.06, 0.45).rate())
        .isEqualTo(SwampedLeak.of(full, 0.06, 0.45).rate());
  }
}
