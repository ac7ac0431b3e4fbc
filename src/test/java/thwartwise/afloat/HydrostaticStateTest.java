package thwartwise.afloat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import thwartwise.geometry.Immersion;
import thwartwise.geometry.Vector3;
import thwartwise.geometry.WaterPlane;

/** Slopes of the energy and of the moments against differences, at poses of every kind. */
class HydrostaticStateTest {
  private static final double STEP = 1e-5;

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

  private HydrostaticState turned(HydrostaticState from, double heel, double trim) {
    return HydrostaticState.at(
            floating, from.plane.turned(heel, trim), from.plane.height(), new Immersion())
        .orElseThrow();
  }

  private HydrostaticState any(Random random) {
    WaterPlane plane =
        WaterPlane.of(6 * random.nextDouble() - 3, 2.6 * random.nextDouble() - 1.3, 0);
    return HydrostaticState.at(floating, plane.up(), 0.1, new Immersion()).orElseThrow();
  }

  // Central differences err by h^2 of the third slope, about 1e-10 x 30, and by 1e-16/h = 1e-11.
  @Test
  void the_moments_are_the_slopes_of_the_energy() {
    Random random = new Random(11);
    for (int i = 0; i < 200; i++) {
      HydrostaticState here = any(random);
      double heel = (turned(here, STEP, 0).energy - turned(here, -STEP, 0).energy) / (2 * STEP);
      double trim = (turned(here, 0, STEP).energy - turned(here, 0, -STEP).energy) / (2 * STEP);
      assertThat(here.heelMoment).as("%s", here.plane).isCloseTo(heel, within(1e-7));
      assertThat(here.trimMoment).as("%s", here.plane).isCloseTo(trim, within(1e-7));
    }
  }

  // Second differences along any turn: 1e-16/h^2 = 1e-6 with h = 1e-5, so a longer step of 1e-4
  // (1e-8 + 1e-8 x fourth slope); poses within a step of a corner crossing are bent, hence a
  // median over many and a bound on nearly all.
  @Test
  void the_stiffness_is_the_bend_of_the_energy_along_any_turn() {
    Random random = new Random(12);
    double h = 1e-4;
    int near = 0;
    int all = 200;
    for (int i = 0; i < all; i++) {
      HydrostaticState here = any(random);
      double angle = 2 * Math.PI * random.nextDouble();
      double a = Math.cos(angle);
      double b = Math.sin(angle);
      double bend =
          (turned(here, h * a, h * b).energy
                  - 2 * here.energy
                  + turned(here, -h * a, -h * b).energy)
              / (h * h);
      RestoringStiffness k = here.restoring;
      double ours = k.heel() * a * a + 2 * k.product() * a * b + k.trim() * b * b;
      near += Math.abs(bend - ours) < 1e-5 * Math.max(1, Math.abs(ours)) ? 1 : 0;
    }
    assertThat(near).isGreaterThanOrEqualTo(all - 4);
  }

  @Test
  void the_energy_and_stiffness_are_those_of_the_mirrored_pose_when_mirrored() {
    FloatingBody even =
        new FloatingBody(
            0.4, Vector3.of(0.2, 0, 0.33), List.of(new Lift(Blocks.block(4, 1.3, 0.6), 1)), 1);
    for (double heel = 0.1; heel < 3; heel += 0.3) {
      HydrostaticState one =
          HydrostaticState.at(even, WaterPlane.upward(heel, 0.2), 0.1, new Immersion())
              .orElseThrow();
      HydrostaticState other =
          HydrostaticState.at(even, WaterPlane.upward(-heel, 0.2), 0.1, new Immersion())
              .orElseThrow();
      assertThat(other.energy).isCloseTo(one.energy, within(1e-12));
      assertThat(other.heelMoment).isCloseTo(-one.heelMoment, within(1e-12));
      assertThat(other.restoring.product()).isCloseTo(-one.restoring.product(), within(1e-11));
    }
  }

  @Test
  void more_weight_never_raises_the_boat_at_a_fixed_heel_and_trim() {
    for (double heel = -3; heel < 3; heel += 0.7) {
      double before = Double.NEGATIVE_INFINITY;
      for (double mass = 0.05; mass < 3; mass += 0.1) {
        FloatingBody heavier = new FloatingBody(mass, floating.centre(), floating.lifts(), 1);
        if (mass < heavier.liftVolume()) {
          double height =
              HydrostaticState.at(heavier, WaterPlane.upward(heel, 0.3), 0, new Immersion())
                  .orElseThrow()
                  .plane
                  .height();
          assertThat(height).isGreaterThanOrEqualTo(before);
          before = height;
        }
      }
    }
  }
}
