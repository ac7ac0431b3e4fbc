package thwartwise.afloat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thwartwise.geometry.Box;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.geometry.WaterPlane;

/** Which balance a search begins at, and how far from it the search may end. */
class NearBalancesTest {
  private static final LiftKey RAFT = LiftKey.dry("raft");
  private static final LiftKey OTHERWISE = LiftKey.dry("raft with a measurement moved");
  private static final Predicate<WaterPlane> OVER = plane -> plane.up().z() < 0.5;
  private static final List<Lift> BOX = List.of(bar(0, 1.2, 0, 0.8));
  private static final FloatingBody LOADED = loaded(0, 0, 0, 0);

  /** Four metres long; its middle line, breadth, bottom and depth, m. */
  private static Lift bar(double y, double breadth, double z, double depth) {
    Span across = new Span(y - breadth / 2, y + breadth / 2);
    return new Lift(Solid.block(new Box(new Span(0, 4), across, new Span(z, z + depth))), 1);
  }

  /** A box of four square metres and a fifth in 0.3 m of water, loaded a little otherwise. */
  private static FloatingBody loaded(double mass, double along, double across, double up) {
    return new FloatingBody(
        1440 + mass, Vector3.of(2 + along, across, 0.3 + up), BOX, RandomAfloat.DENSITY);
  }

  private static NearBalances of(List<FloatingBody> loads) {
    NearBalances known = new NearBalances(Optional.empty());
    loads.forEach(load -> Equilibrium.keeping(load, OVER, false, RAFT, known));
    return known;
  }

  // 48 kg a centimetre.
  @ParameterizedTest
  @CsvSource({"216, true", "264, false", "-216, true", "-264, false"})
  void a_search_ends_no_more_than_five_centimetres_deeper_or_less_deep(double mass, boolean near) {
    NearBalances known = of(List.of(LOADED));
    FloatingBody boat = loaded(mass, 0, 0, 0);
    assertThat(known.near(RAFT, boat)).isNotEmpty();
    assertThat(Equilibrium.nextTo(known, boat, OVER, RAFT).isPresent()).isEqualTo(near);
  }

  // A board to starboard, clear of the water while the boat is upright, holds her at 24 degrees.
  // With 130 kg less, and five and a half centimetres less deep, it could at 25; but she comes to
  // rest at ten, before the board touches.
  @Test
  void a_boat_much_lighter_than_a_known_one_rests_where_she_does_from_upright() {
    List<Lift> lifts = List.of(bar(0, 0.9, 0, 0.3), bar(-0.8, 0.2, 0.4, 0.25));
    Vector3 centre = Vector3.of(2, -0.11, 0.5);
    NearBalances known = of(List.of(new FloatingBody(340, centre, lifts, 1000)));
    FloatingBody light = new FloatingBody(210, centre, lifts, 1000);
    Pose held = known.near(RAFT, light).findFirst().map(NearBalancesTest::pose).orElseThrow();
    double rests = SlowEquilibrium.until(light, OVER).worst().orElseThrow().heel();
    Equilibria found = Equilibrium.until(light, OVER, RAFT, known);
    assertThat(Math.toDegrees(held.heel())).isCloseTo(23.9, within(0.1));
    assertThat(Math.toDegrees(rests)).isCloseTo(9.5, within(0.1));
    assertThat(found.worst().orElseThrow().heel()).isCloseTo(rests, within(1e-6));
  }

  private static Pose pose(NearBalances.Balance balance) {
    return Equilibrium.from(balance.floating(), balance.part().plane()).worst().orElseThrow();
  }

  // Eight kilograms, eight centimetres along or up and two across count alike.
  @Test
  void a_boat_with_a_measurement_moved_begins_at_the_nearest_of_several_loads() {
    beginsAt(loaded(6, 0, 0, 0), loaded(0, 0.07, 0, 0));
    beginsAt(loaded(6, 0, 0, 0), loaded(0, 0, -0.02, 0));
    beginsAt(loaded(0, -0.07, 0, 0), loaded(0, 0, 0.02, 0));
    beginsAt(loaded(0, 0, 0, 0.07), loaded(-9, 0, 0, 0));
    beginsAt(loaded(0, 0, 0.015, 0), loaded(0, 0, 0, -0.07));
    beginsAt(loaded(0, 0, 0.015, 0), loaded(0, 0.07, 0, 0));
    beginsAt(loaded(-7, 0, 0, 0), loaded(6, 0.06, 0, 0));
    beginsAt(loaded(30, 0, 0, 0), loaded(-40, 0, 0, 0));
  }

  private static void beginsAt(FloatingBody nearest, FloatingBody other) {
    FloatingBody far = loaded(60, 0.3, 0.02, 0);
    for (List<FloatingBody> loads :
        List.of(List.of(nearest, other, far), List.of(far, other, nearest))) {
      NearBalances moved = new NearBalances(Optional.of(of(loads)));
      assertThat(moved.near(OTHERWISE, LOADED).map(NearBalances.Balance::floating))
          .containsExactly(nearest);
    }
  }

  @Test
  void a_boat_with_a_measurement_moved_begins_at_no_balance_of_another_kind_or_of_its_own() {
    NearBalances moved = new NearBalances(Optional.of(of(List.of(LOADED))));
    Equilibrium.keeping(loaded(1, 0, 0, 0), OVER, false, OTHERWISE, moved);
    assertThat(moved.near(new LiftKey("raft", "swamped"), LOADED)).isEmpty();
    assertThat(moved.near(OTHERWISE, loaded(1, 0, 0, 0)).map(NearBalances.Balance::floating))
        .containsExactly(LOADED);
  }
}
