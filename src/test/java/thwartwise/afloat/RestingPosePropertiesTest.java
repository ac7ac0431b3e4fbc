package thwartwise.afloat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import thwartwise.RandomCases;
import thwartwise.geometry.Immersion;
import thwartwise.geometry.Vector3;
import thwartwise.hull.RandomHull;

/**
 * What must hold of the poses a boat comes to when it is let go; each over three thousand random
 * boats, since every one of them takes whole descents.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RestingPosePropertiesTest {
  /** Directions of one and the same pose; {@link Equilibrium} settles to far less. */
  private static final double SAME = 1e-5;

  private final List<RestingBoat> boats =
      RandomCases.of(3_000, random -> RestingBoat.of(RandomAfloat.loadedAsBoatsAre(random)));

  /** A boat with the poses it comes to. */
  private record RestingBoat(RandomAfloat boat, Equilibria poses) {
    static RestingBoat of(RandomAfloat boat) {
      return new RestingBoat(boat, Equilibrium.from(boat.floating()));
    }
  }

  @Test
  void at_rest_weight_and_buoyancy_balance_on_one_plumb_line() {
    RandomCases.each(
        boats,
        resting -> {
          RandomAfloat boat = resting.boat();
          Equilibria found = resting.poses();
          assertThat(found.exist()).isTrue();
          for (Pose pose : found.reached()) {
            assertThat(pose.part().volume()).isCloseTo(pose.neededVolume(), within(1e-11));
            Vector3 apart = pose.part().centroid().minus(boat.centre());
            assertThat(apart.cross(pose.plane().up()).norm()).isLessThan(1e-6);
          }
        });
  }

  @Test
  void a_mirrored_boat_rests_mirrored() {
    RandomCases.each(
        boats,
        resting -> {
          RandomAfloat boat = resting.boat();
          Equilibria one = resting.poses();
          Equilibria other = Equilibrium.from(boat.mirrored().floating());
          assertThat(other.reached()).hasSameSizeAs(one.reached());
          for (Pose pose : one.reached()) {
            Vector3 up = pose.plane().up().mirrored();
            assertThat(other.reached())
                .anySatisfy(
                    p -> {
                      assertThat(p.plane().up().minus(up).norm()).isLessThan(SAME);
                      assertThat(p.plane().height()).isCloseTo(pose.plane().height(), within(SAME));
                      assertThat(p.stable()).isEqualTo(pose.stable());
                    });
          }
        });
  }

  @Test
  void moving_the_origin_changes_no_pose() {
    RandomCases.each(
        boats,
        (resting, random) -> {
          RandomAfloat boat = resting.boat();
          Vector3 by = RandomAfloat.origin(random);
          Equilibria here = resting.poses();
          Equilibria there = Equilibrium.from(boat.moved(by).floating());
          assertThat(there.reached()).hasSameSizeAs(here.reached());
          for (Pose pose : here.reached()) {
            double height = pose.plane().height() + pose.plane().up().dot(by);
            assertThat(there.reached())
                .anySatisfy(
                    p -> {
                      assertThat(p.plane().up().minus(pose.plane().up()).norm()).isLessThan(SAME);
                      assertThat(p.plane().height()).isCloseTo(height, within(10 * SAME));
                      assertThat(p.stable()).isEqualTo(pose.stable());
                    });
          }
        });
  }

  // Where two energies differ by less than their own last digits the moment decides, and the
  // energy may rise by those digits.
  @Test
  void the_energy_falls_at_every_step_on_the_way_down() {
    RandomCases.each(
        boats,
        resting -> {
          RandomAfloat boat = resting.boat();
          Equilibrium.from(
              boat.floating(),
              Equilibrium.UPRIGHT,
              (before, after) -> {
                double digits = 1e-13 * (1 + Math.abs(before.energy));
                assertThat(after.energy).isLessThan(before.energy + digits);
                assertThat(after.energy < before.energy || after.moment() < before.moment())
                    .isTrue();
              });
        });
  }

  // As long as the energy is still a bowl where it was nudged to. One boat in three thousand rests
  // so near the top of a hill (a few millimetres of metacentric height at more than twenty degrees
  // of heel) that a nudge of two degrees takes it over, although it is stiffer than a pose must be
  // to be called stable.
  @Test
  void a_pose_called_stable_returns_when_nudged() {
    RandomCases.each(
        boats,
        (resting, random) -> {
          RandomAfloat boat = resting.boat();
          double direction = RandomHull.between(-3.1416, 3.1416, random);
          FloatingBody floating = boat.floating();
          for (Pose pose : resting.poses().reached()) {
            if (pose.stable()) {
              returns(floating, pose, Math.toRadians(1), direction);
              returns(floating, pose, Math.toRadians(2), direction);
            }
          }
        });
  }

  private static void returns(FloatingBody floating, Pose pose, double nudge, double direction) {
    Vector3 up = pose.plane().turned(nudge * Math.cos(direction), nudge * Math.sin(direction));
    double height = pose.plane().height();
    HydrostaticState nudged =
        HydrostaticState.at(floating, up, height, new Immersion()).orElseThrow();
    if (nudged.restoring.softest() > 0) {
      Pose end = Equilibrium.letGo(floating, up, height).orElseThrow();
      assertThat(end.plane().up().minus(pose.plane().up()).norm())
          .as("nudged from %s, stiff by %s", pose.plane(), pose.restoring())
          .isLessThan(1e-4);
    }
  }

  // Why more weight may raise a freeboard once the boat is free to trim: it turns about the middle
  // of its waterplane. On paper: block 4 x 1 x 1 floating at 0.3; 60 kg at the foremost end sinks
  // it by 60/1000/4 = 0.015 and trims it by about 60 x 2 / (1000 x 4^3/12) = 0.0225, which lifts
  // the stern, 2 m away, by 0.045.
  @Test
  void weight_added_forward_raises_the_stern_once_the_boat_is_free_to_trim() {
    Lift block = new Lift(Blocks.block(4, 1, 1), 1);
    Vector3 stern = Vector3.of(-2, 0, 1);
    double before =
        height(new FloatingBody(1200, Vector3.of(0, 0, 0.3), List.of(block), 1000), stern);
    Vector3 shifted = Vector3.of(60 * 2.0 / 1260, 0, (1200 * 0.3 + 60 * 0.3) / 1260);
    double after = height(new FloatingBody(1260, shifted, List.of(block), 1000), stern);
    assertThat(before).isCloseTo(0.7, within(1e-9));
    assertThat(after - before).isCloseTo(0.045 - 0.015, within(0.002));
  }

  private static double height(FloatingBody floating, Vector3 point) {
    return Equilibrium.from(floating).worst().orElseThrow().above(point);
  }
}
