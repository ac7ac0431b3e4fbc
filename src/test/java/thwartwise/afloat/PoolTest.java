package thwartwise.afloat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import thwartwise.boat.Side;
import thwartwise.geometry.ImmersedPart;
import thwartwise.geometry.Immersion;
import thwartwise.geometry.Vector3;
import thwartwise.geometry.WaterPlane;

/** Water in a tray 2 m by 1 m by 0.3 m. */
class PoolTest {
  private static final Vector3 UPRIGHT = Vector3.of(0, 0, 1);
  private static final Lift TRAY = new Lift(Blocks.block(2, 1, 0.3), 1);

  private static ImmersedPart lies(Pool pool, Vector3 up) {
    return pool.lies(up, new Immersion()).orElseThrow();
  }

  @Test
  void a_hundred_litres_stand_fifty_millimetres_deep() {
    ImmersedPart water = lies(new Pool(List.of(TRAY), 0.1), UPRIGHT);
    assertThat(water.plane().height()).isCloseTo(0.05, within(1e-12));
    assertThat(water.volume()).isCloseTo(0.1, within(1e-12));
    assertThat(water.area()).isCloseTo(2, within(1e-12));
  }

  @Test
  void heeled_the_water_runs_to_the_low_side() {
    ImmersedPart water = lies(new Pool(List.of(TRAY), 0.1), WaterPlane.upward(0.05, 0));
    // b2 tan/12h out toward starboard.
    assertThat(water.centroid().y()).isCloseTo(-Math.tan(0.05) / (12 * 0.05), within(1e-10));
  }

  @Test
  void what_stands_in_the_hold_takes_its_room() {
    Pool pool = new Pool(List.of(TRAY, new Lift(Blocks.block(1, 1, 0.2), -1)), 0.1);
    assertThat(pool.capacity()).isCloseTo(0.4, within(1e-12));
    ImmersedPart water = lies(pool, UPRIGHT);
    assertThat(water.plane().height()).isCloseTo(0.1, within(1e-12));
    assertThat(water.area()).isCloseTo(1, within(1e-12));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.6001, -0.1, Double.NaN, Double.POSITIVE_INFINITY})
  void more_than_fits_under_the_lid_or_less_than_none_lies_nowhere(double volume) {
    assertThat(new Pool(List.of(TRAY), volume).lies(UPRIGHT, new Immersion())).isEmpty();
  }

  @Test
  void a_boat_whose_loose_water_does_not_fit_comes_to_rest_nowhere() {
    FloatingBody boat = boat().with(new Pool(List.of(TRAY), 0.61));
    assertThat(Equilibrium.from(boat).exist()).isFalse();
    assertThat(Equilibrium.from(boat).ending()).isEqualTo(Equilibria.Ending.NOT_FOUND);
    assertThat(RightingCurve.toward(Side.PORT, boat, List.of())).isEmpty();
  }

  private static FloatingBody boat() {
    return Blocks.floating(Blocks.block(4, 1.4, 0.6), 0.9, 0.3);
  }

  // No water has no surface: a film of nothing on a flat floor would take its whole second moment.
  @Test
  void a_pool_of_no_water_changes_nothing() {
    Pose dry = Equilibrium.from(boat()).worst().orElseThrow();
    Pose none = Equilibrium.from(boat().with(new Pool(List.of(TRAY), 0))).worst().orElseThrow();
    assertThat(none.metacentricHeight()).isCloseTo(dry.metacentricHeight(), within(1e-12));
    assertThat(none.plane().height()).isCloseTo(dry.plane().height(), within(1e-12));
  }

  @Test
  void no_water_stands_at_the_bottom_of_its_hold() {
    Lift raised =
        new Lift(Blocks.block(2, 1, 0.3).under(new WaterPlane(UPRIGHT.times(-1), -0.1)), 1);
    ImmersedPart none = lies(new Pool(List.of(raised), 0), UPRIGHT);
    assertThat(none.plane().height()).isCloseTo(0.1, within(1e-12));
    assertThat(none.area()).isZero();
    assertThat(lies(new Pool(List.of(), 0), UPRIGHT).volume()).isZero();
  }

  @Test
  void the_weight_of_the_water_comes_on_top() {
    FloatingBody boat = boat().with(new Pool(List.of(TRAY), 0.1));
    assertThat(boat.neededVolume()).isCloseTo(1, within(1e-12));
    assertThat(boat.totalMass()).isCloseTo(1, within(1e-12));
    assertThat(boat.pools()).hasSize(1);
    Pose pose = Equilibrium.from(boat).worst().orElseThrow();
    assertThat(pose.plane().height()).isCloseTo(1 / 5.6, within(1e-9));
  }
}
