package thwartwise.afloat;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.function.Function;
import java.util.function.Predicate;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.RandomGenerator;
import thwartwise.boat.Loading;
import thwartwise.geometry.WaterPlane;

/**
 * The search for a rest against the slow one that finds the water's height anew at every direction,
 * nudges every balance and adds up every solid by itself: the same poses on random boats, dry and
 * swamped, and the same ending. {@code -Dtwo.ways=3000} tries more of them.
 */
class EquilibriumTwoWaysTest {
  private static final int BOATS = Integer.getInteger("two.ways", 150);
  private static final long SEED = 20261126;

  /** Both settle to 1e-11 of the weight times a metre; the least stiffness magnifies that. */
  private static final double SAME = 1e-6;

  /** How a boat lies that is no longer followed: where it was passed is then told to nobody. */
  private static final Predicate<WaterPlane> OVER = plane -> plane.up().z() < 0.5;

  @Example
  void boats_loaded_as_boats_are_rest_alike() {
    each(RandomAfloat.loadedAsBoatsAre(), RandomAfloat::floating);
  }

  @Example
  void boats_with_their_weight_anywhere_rest_alike() {
    each(RandomAfloat.any(), RandomAfloat::floating);
  }

  @Example
  void swamped_boats_rest_alike() {
    each(new SwampedPropertiesTest().swamped(), EquilibriumTwoWaysTest::swamped);
  }

  private static Floating swamped(Loading loading) {
    return Swamping.of(loading, 1).floating(List.of());
  }

  private static <T> void each(Arbitrary<T> boats, Function<T, Floating> afloat) {
    RandomGenerator<T> generator = boats.generator(1000);
    Random random = new Random(SEED);
    for (int i = 0; i < BOATS; i++) {
      T boat = generator.next(random).value();
      Floating floating = afloat.apply(boat);
      String which = "boat " + i + ": " + boat;
      alike(Equilibrium.from(floating), SlowEquilibrium.from(floating), which);
      cutShortAlike(
          Equilibrium.until(floating, OVER), SlowEquilibrium.until(floating, OVER), which);
    }
  }

  private static void alike(Equilibria found, Equilibria slow, String which) {
    assertThat(found.ending()).as(which).isEqualTo(slow.ending());
    assertThat(found.reached()).as(which).hasSameSizeAs(slow.reached());
    for (int i = 0; i < slow.reached().size(); i++) {
      Pose pose = found.reached().get(i);
      Pose other = slow.reached().get(i);
      assertThat(apart(pose, other))
          .as("%s, %s and %s", which, pose.plane(), other.plane())
          .isLessThan(SAME);
    }
  }

  // Where either went over, only the verdict counts: one boat in a thousand rests just short of
  // there, and one of the ways swings past it.
  private static void cutShortAlike(Equilibria found, Equilibria slow, String which) {
    assertThat(found.ending()).as(which).isEqualTo(slow.ending());
    assertThat(found.allUpright()).as(which).isEqualTo(slow.allUpright());
    if (!wentOver(found) && !wentOver(slow)) {
      alike(found, slow, which);
    }
  }

  private static boolean wentOver(Equilibria found) {
    return found.reached().stream().anyMatch(pose -> OVER.test(pose.plane()));
  }

  private static double apart(Pose pose, Pose other) {
    double turned = pose.plane().up().minus(other.plane().up()).norm();
    return Math.max(turned, Math.abs(pose.plane().height() - other.plane().height()));
  }
}
