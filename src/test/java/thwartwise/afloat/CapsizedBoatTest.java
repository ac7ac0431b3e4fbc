package thwartwise.afloat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import thwartwise.geometry.Vector3;

/**
 * A bar of square section of side a, 3 m long, half under at every heel. About its own middle it is
 * wall-sided up to 45 degrees, a/12 (tan² - 1) sin, and alike every right angle; G adds its own
 * lever.
 */
class CapsizedBoatTest {
  private static final double SIDE = 0.5;
  private static final double MASS = 375;
  private static final double G = 9.80665;

  private static FloatingBody bar(double mass, double y, double belowMiddle) {
    return new FloatingBody(
        mass,
        Vector3.of(0, y, SIDE / 2 - belowMiddle),
        List.of(new Lift(Blocks.block(3, SIDE, SIDE), 1)),
        1000);
  }

  private static double arm(int degree, double y, double belowMiddle) {
    double heel = Math.toRadians(degree);
    double near = Math.toRadians(degree - 90 * Math.round(degree / 90.0));
    double tan = Math.tan(near);
    return SIDE / 12 * (tan * tan - 1) * Math.sin(near)
        + belowMiddle * Math.sin(heel)
        + y * Math.cos(heel);
  }

  /** The most against it over steps of two degrees, N·m, the boat heeled to starboard. */
  private static double onPaper(double y, double belowMiddle) {
    double most = 0;
    for (int degree = 180; degree >= 0; degree -= 2) {
      most = Math.max(most, -arm(degree, y, belowMiddle));
    }
    return most * MASS * G;
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.03, 0.02, 0, -0.02, -0.1, -0.3})
  void it_takes_the_moment_paper_says(double belowMiddle) {
    CapsizedBoat capsized = CapsizedBoat.of(bar(MASS, 0, belowMiddle));
    assertThat(capsized.assessed()).isTrue();
    assertThat(capsized.effort().orElseThrow()).isCloseTo(onPaper(0, belowMiddle), within(1e-4));
    assertThat(capsized.effort().orElseThrow()).isPositive();
  }

  // G out to one side by y: over that side it takes less than over the other.
  @ParameterizedTest
  @CsvSource({"0.03, -0.05", "-0.03, -0.05", "0.03, 0", "-0.06, -0.1"})
  void it_is_turned_over_the_easier_side(double y, double belowMiddle) {
    double easier = Math.min(onPaper(y, belowMiddle), onPaper(-y, belowMiddle));
    assertThat(CapsizedBoat.of(bar(MASS, y, belowMiddle)).effort().orElseThrow())
        .isCloseTo(easier, within(1e-4));
  }

  // Twice as salt, or a bar of twice the mass in water twice as dense: twice the moment.
  @Test
  void the_moment_goes_with_the_weight() {
    FloatingBody light = bar(MASS, 0, 0);
    FloatingBody heavy = new FloatingBody(2 * MASS, light.centre(), light.lifts(), 2000);
    assertThat(CapsizedBoat.of(heavy).effort().orElseThrow())
        .isCloseTo(2 * onPaper(0, 0), within(1e-3));
  }

  // G below the middle by more than a/12 = 0.0417 rights it at every heel.
  @Test
  void with_its_weight_low_it_rolls_back_by_itself_and_stays_up() {
    CapsizedBoat capsized = CapsizedBoat.of(bar(MASS, 0, 0.05));
    assertThat(capsized.effort().orElseThrow()).isZero();
    assertThat(capsized.staysUp()).isTrue();
  }

  // Above that it lolls: G a little under the middle to less than 45 degrees, which is still
  // upright; with G above the middle to more, which is on its side.
  @Test
  void it_stays_up_as_far_as_its_loll_leaves_it_upright() {
    assertThat(CapsizedBoat.of(bar(MASS, 0, 0.01)).staysUp()).isTrue();
    assertThat(CapsizedBoat.of(bar(MASS, 0, -0.01)).staysUp()).isFalse();
  }

  @Test
  void what_sinks_is_not_turned_back_and_that_is_an_answer() {
    CapsizedBoat sunk = CapsizedBoat.of(bar(751, 0, 0.05));
    assertThat(sunk.effort()).isEmpty();
    assertThat(sunk.staysUp()).isFalse();
    assertThat(sunk.assessed()).isTrue();
  }
}
