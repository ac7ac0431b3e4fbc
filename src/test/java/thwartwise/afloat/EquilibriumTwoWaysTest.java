package thwartwise.afloat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Body;
import thwartwise.boat.Loading;
import thwartwise.geometry.Box;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.geometry.WaterPlane;

/**
 * The search for a rest against the slow one that finds the water's height anew at every direction,
 * nudges every balance and adds up every solid by itself: the same poses on random boats, dry and
 * swamped, and the same ending. {@code -Dtwo.ways=3000} tries more of them.
 */
class EquilibriumTwoWaysTest {
  private static final int BOATS = Integer.getInteger("two.ways", 150);

  /** Loads that are tried of each boat beside the first. */
  private static final int LOADS = 4;

  private static final long SEED = 20261126;

  private static final LiftKey RAFT = LiftKey.dry("raft");

  /** Both settle to 1e-11 of the weight times a metre; the least stiffness magnifies that. */
  private static final double SAME = 1e-6;

  /** How a boat lies that is no longer followed: where it was passed is then told to nobody. */
  private static final Predicate<WaterPlane> OVER = plane -> plane.up().z() < 0.5;

  @Test
  void boats_loaded_as_boats_are_rest_alike() {
    each(RandomAfloat::loadedAsBoatsAre, RandomAfloat::floating);
  }

  @Test
  void boats_with_their_weight_anywhere_rest_alike() {
    each(RandomAfloat::any, RandomAfloat::floating);
  }

  @Test
  void swamped_boats_rest_alike() {
    each(SwampedPropertiesTest::swamped, EquilibriumTwoWaysTest::swamped);
  }

  @Test
  void boats_loaded_nearly_as_one_already_at_rest_rest_alike() {
    nextToKnown(RandomAfloat::loadedAsBoatsAre, EquilibriumTwoWaysTest::loadedOtherwise, 0.3);
  }

  @Test
  void boats_with_their_weight_anywhere_rest_as_from_upright_next_to_one_already_at_rest() {
    nextToKnown(RandomAfloat::any, EquilibriumTwoWaysTest::loadedOtherwise, 0.2);
  }

  @Test
  void boats_with_a_measurement_moved_rest_as_from_upright_next_to_the_one_as_measured() {
    nextToMeasured(
        BOATS, RandomAfloat::loadedAsBoatsAre, EquilibriumTwoWaysTest::loadedOtherwise, 0.6);
  }

  @Test
  void swamped_boats_with_a_measurement_moved_rest_as_from_upright_next_to_the_one_as_measured() {
    nextToMeasured(
        BOATS / 2, SwampedPropertiesTest::swamped, EquilibriumTwoWaysTest::seatedOtherwise, 0.2);
  }

  @Test
  void swamped_boats_with_people_a_little_otherwise_rest_alike() {
    nextToKnown(SwampedPropertiesTest::swamped, EquilibriumTwoWaysTest::seatedOtherwise, 0.5);
  }

  // A deck comes under with a nudge and takes the waterplane with it: the way down from upright is
  // a bowl, and so is what is left of it at rest.
  @Test
  void a_deck_hardly_above_the_water_is_nudged_under_next_to_a_balance_too() {
    Box box = new Box(new Span(0, 4), new Span(-0.6, 0.6), new Span(0, 0.4));
    Lift raft = new Lift(Solid.block(box), 1);
    int tried = 0;
    int over = 0;
    int near = 0;
    for (double out : new double[] {0, 0.002, 0.004}) {
      NearBalances known = new NearBalances(Optional.empty());
      for (double side = 0.06; side > 0; side -= 0.0005) {
        double mass = 1000 * 4 * 1.2 * (0.4 - side);
        FloatingBody afloat = new FloatingBody(mass, Vector3.of(2, out, 0.42), List.of(raft), 1000);
        Equilibria slow = SlowEquilibrium.until(afloat, OVER);
        near += Equilibrium.nextTo(known, afloat, OVER, RAFT).isPresent() ? 1 : 0;
        cutShortAlike(
            Equilibrium.until(afloat, OVER, RAFT, known),
            slow,
            "deck " + side + " m up, weight " + out + " m out");
        tried++;
        over += wentOver(slow) ? 1 : 0;
      }
    }
    assertThat(over).isBetween(15, 200);
    assertThat(near).isBetween(50, tried - over);
  }

  // A box on an even keel with its weight too high lolls to either side, tan² of the angle being
  // -2 GM / BM (wall-sided formula of the textbooks, FROM MEMORY): 24 degrees here, where the other
  // box leans that far with its weight to one side.
  @Test
  void a_top_heavy_box_lies_on_the_side_it_falls_to_whatever_side_a_known_one_leans_to() {
    Lift box =
        new Lift(Solid.block(new Box(new Span(0, 4), new Span(-0.6, 0.6), new Span(0, 0.8))), 1);
    NearBalances known = new NearBalances(Optional.empty());
    Equilibria leaning =
        Equilibrium.until(
            new FloatingBody(1440, Vector3.of(2, -0.0626, 0.45), List.of(box), 1000),
            OVER,
            RAFT,
            known);
    double side = Math.signum(leaning.worst().orElseThrow().heel());
    for (double off : new double[] {-0.0005, 0.0005}) {
      FloatingBody high = new FloatingBody(1440, Vector3.of(2, off, 0.59), List.of(box), 1000);
      assertThat(known.near(RAFT, high)).isNotEmpty();
      double heel = SlowEquilibrium.until(high, OVER).worst().orElseThrow().heel();
      assertThat(Math.tan(heel) * Math.tan(heel)).isCloseTo(2 * 0.04 / 0.4, within(0.01));
      assertThat(Equilibrium.nextTo(known, high, OVER, RAFT).isPresent())
          .isEqualTo(heel * side > 0);
      Equilibria found = Equilibrium.until(high, OVER, RAFT, new NearBalances(Optional.of(known)));
      cutShortAlike(found, SlowEquilibrium.until(high, OVER), "weight " + off + " m out");
    }
  }

  /** The same hull with its weight a little more or less, and a little elsewhere. */
  private static FloatingBody loadedOtherwise(RandomAfloat boat, Random random) {
    FloatingBody floating = boat.floating();
    Vector3 by = Vector3.of(little(random), little(random) / 4, little(random));
    return new FloatingBody(
        floating.mass() * (1 + little(random)),
        floating.centre().plus(by),
        floating.lifts(),
        floating.density());
  }

  /** The same weights on a hull a little longer or shorter, wider or narrower, deeper or not. */
  private static FloatingBody builtOtherwise(FloatingBody floating, Random random) {
    Vector3 by = Vector3.of(1 + little(random), 1 + little(random), 1 + little(random));
    List<Lift> lifts =
        floating.lifts().stream().map(l -> new Lift(scaled(l.solid(), by), l.factor())).toList();
    return new FloatingBody(floating.mass(), floating.centre(), lifts, floating.density());
  }

  private static Solid scaled(Solid solid, Vector3 by) {
    List<Vector3> vertices =
        IntStream.range(0, solid.triangleCount())
            .boxed()
            .flatMap(i -> solid.triangle(i).stream())
            .map(r -> Vector3.of(by.x() * r.x(), by.y() * r.y(), by.z() * r.z()))
            .toList();
    List<int[]> triangles =
        IntStream.range(0, solid.triangleCount())
            .mapToObj(i -> new int[] {3 * i, 3 * i + 1, 3 * i + 2})
            .toList();
    return Solid.of(vertices, triangles);
  }

  private static FloatingBody seatedOtherwise(Loading loading, Random random) {
    List<Body> people =
        loading.people().stream()
            .map(b -> b.withMass(b.mass() * (1 + 2 * little(random))))
            .map(b -> b.at(b.y() + little(random) / 2))
            .toList();
    return swamped(loading.with(people));
  }

  /** Up to 0.06 either way. */
  private static double little(Random random) {
    return 0.12 * (random.nextDouble() - 0.5);
  }

  private static <T> void nextToKnown(
      Function<Random, T> boats, BiFunction<T, Random, FloatingBody> otherwise, double mostly) {
    Random random = new Random(SEED);
    int bowls = 0;
    int near = 0;
    for (int i = 0; i < BOATS; i++) {
      T boat = boats.apply(random);
      LiftKey key = LiftKey.dry(boat);
      NearBalances known = new NearBalances(Optional.empty());
      Random loads = new Random(i);
      Equilibrium.until(otherwise.apply(boat, loads), OVER, key, known);
      for (int load = 0; load < LOADS; load++) {
        FloatingBody floating = otherwise.apply(boat, loads);
        String which = "boat " + i + ", load " + load + ": " + boat;
        if (known.near(key, floating).findAny().isPresent()) {
          bowls++;
          near += Equilibrium.nextTo(known, floating, OVER, key).isPresent() ? 1 : 0;
        }
        cutShortAlike(
            Equilibrium.until(floating, OVER, key, known),
            SlowEquilibrium.until(floating, OVER),
            which);
      }
    }
    assertThat(bowls).isGreaterThan(BOATS * LOADS / 5);
    assertThat((double) near).isGreaterThan(mostly * bowls);
  }

  /** Each boat with several loads as measured, and one of these with each measurement moved. */
  private static <T> void nextToMeasured(
      int count,
      Function<Random, T> boats,
      BiFunction<T, Random, FloatingBody> otherwise,
      double mostly) {
    Random random = new Random(SEED);
    int near = 0;
    for (int i = 0; i < count; i++) {
      T boat = boats.apply(random);
      LiftKey key = new LiftKey(boat, i);
      NearBalances measured = new NearBalances(Optional.empty());
      Random other = new Random(i);
      List<FloatingBody> loads =
          Stream.generate(() -> otherwise.apply(boat, other)).limit(LOADS).toList();
      loads.forEach(load -> Equilibrium.keeping(load, OVER, false, key, measured));
      for (int load = 0; load < LOADS; load++) {
        NearBalances known = new NearBalances(Optional.of(measured));
        LiftKey moved = new LiftKey(List.of(boat, load), i);
        FloatingBody floating = builtOtherwise(loads.get(load), other);
        near += Equilibrium.nextTo(known, floating, OVER, moved).isPresent() ? 1 : 0;
        cutShortAlike(
            Equilibrium.until(floating, OVER, moved, known),
            SlowEquilibrium.until(floating, OVER),
            "boat " + i + ", load " + load + ", moved: " + boat);
      }
    }
    assertThat((double) near).isGreaterThan(mostly * count * LOADS);
  }

  private static FloatingBody swamped(Loading loading) {
    return Swamping.of(loading, 1).floating(List.of());
  }

  private static <T> void each(Function<Random, T> boats, Function<T, FloatingBody> afloat) {
    Random random = new Random(SEED);
    for (int i = 0; i < BOATS; i++) {
      T boat = boats.apply(random);
      FloatingBody floating = afloat.apply(boat);
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
