package thwartwise.afloat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import thwartwise.geometry.Immersion;
import thwartwise.geometry.Vector3;
import thwartwise.geometry.WaterPlane;

/** Turns on a lopsided body, whose stiffness couples heel and trim. */
class TrustRegionStepTest {
  private final FloatingBody floating =
      new FloatingBody(
          0.4,
          Vector3.of(0.2, -0.07, 0.33),
          List.of(
              new Lift(Blocks.block(4, 1.3, 0.6), 0.7),
              new Lift(
                  Blocks.prism(
                      2.5,
                      List.of(
                          new double[] {0.1, -0.2},
                          new double[] {0.9, 0.5},
                          new double[] {-0.6, 0.8})),
                  1)),
          1);

  private HydrostaticState at(double heel, double trim) {
    return HydrostaticState.at(floating, WaterPlane.upward(heel, trim), 0.1, new Immersion())
        .orElseThrow();
  }

  /** What the quadratic model says is lost by a turn. */
  private static double lost(HydrostaticState at, double heel, double trim) {
    RestoringStiffness k = at.restoring;
    return -at.heelMoment * heel
        - at.trimMoment * trim
        - k.heel() * heel * heel / 2
        - k.product() * heel * trim
        - k.trim() * trim * trim / 2;
  }

  @Test
  void in_a_bowl_the_turn_leads_to_where_no_moment_is_left() {
    HydrostaticState here = at(0.12, 0.05);
    RestoringStiffness k = here.restoring;
    assertThat(k.softest()).isPositive();
    assertThat(k.product()).as("coupled").isNotCloseTo(0, within(1e-3));
    TrustRegionStep turn = TrustRegionStep.downhill(here, 10);
    assertThat(here.heelMoment + k.heel() * turn.heel() + k.product() * turn.trim())
        .isCloseTo(0, within(1e-12));
    assertThat(here.trimMoment + k.product() * turn.heel() + k.trim() * turn.trim())
        .isCloseTo(0, within(1e-12));
    assertThat(turn.expectedDrop())
        .isPositive()
        .isCloseTo(lost(here, turn.heel(), turn.trim()), within(1e-14));
  }

  @Test
  void no_turn_of_the_same_length_is_expected_to_lose_more() {
    Random random = new Random(21);
    double radius = Math.toRadians(2);
    int bowls = 0;
    for (int i = 0; i < 100; i++) {
      HydrostaticState here = at(6 * random.nextDouble() - 3, 2 * random.nextDouble() - 1);
      bowls += here.restoring.softest() > 0 ? 1 : 0;
      TrustRegionStep turn = TrustRegionStep.downhill(here, radius);
      assertThat(turn.size()).isLessThanOrEqualTo(radius * (1 + 1e-9));
      assertThat(turn.expectedDrop())
          .isCloseTo(lost(here, turn.heel(), turn.trim()), within(1e-14));
      for (int j = 0; j < 360; j++) {
        double angle = Math.toRadians(j);
        double rim = lost(here, radius * Math.cos(angle), radius * Math.sin(angle));
        assertThat(turn.expectedDrop()).isGreaterThanOrEqualTo(rim - 1e-9);
      }
    }
    assertThat(bowls).as("bowls and others both tried").isBetween(10, 90);
  }

  @Test
  void where_the_energy_is_no_bowl_the_whole_length_is_used() {
    HydrostaticState here = at(2.2, 0.3);
    assertThat(here.restoring.softest()).isNegative();
    for (double radius : new double[] {1e-3, 0.01, 0.03}) {
      assertThat(TrustRegionStep.downhill(here, radius).size()).isCloseTo(radius, within(1e-9));
    }
  }

  // The level fore-and-aft line through the middle of the waterplane stays at the surface: what is
  // left out is of second order.
  @Test
  void the_water_pivots_on_the_middle_of_the_waterplane() {
    double h = 1e-4;
    for (double[] turn : new double[][] {{h, 0}, {0, h}, {-h, 2 * h}}) {
      HydrostaticState here = at(0.4, 0.2);
      double height =
          HydrostaticState.at(floating, here.plane.turned(turn[0], turn[1]), 0.1, new Immersion())
              .orElseThrow()
              .plane
              .height();
      assertThat(here.heightAfter(turn[0], turn[1])).isCloseTo(height, within(20 * h * h));
      assertThat(here.plane.height()).isNotCloseTo(height, within(20 * h * h));
    }
  }

  @Test
  void what_weighs_as_much_as_all_that_lifts_has_no_height_to_float_at() {
    FloatingBody level =
        new FloatingBody(
            floating.liftVolume(), floating.centre(), floating.lifts(), floating.density());
    assertThat(HydrostaticState.at(level, Vector3.of(0, 0, 1), 0.1, new Immersion())).isEmpty();
    assertThat(Equilibrium.from(level).ending()).isEqualTo(Equilibria.Ending.SINKS);
  }
}
