package thwartwise.afloat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Body;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Loading;
import thwartwise.geometry.ImmersedPart;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Vector3;
import thwartwise.geometry.WaterPlane;
import thwartwise.hull.FloodPoint;

/** What is read off a pose, and when none is reached. */
class PoseTest {
  private static final Solid BLOCK = Blocks.block(4, 1, 1);

  private static Pose pose(Vector3 up, RestoringStiffness restoring) {
    WaterPlane plane = new WaterPlane(up, 0.3);
    return new Pose(plane, ImmersedPart.of(BLOCK, plane), restoring, 2);
  }

  private static Pose lying(double x, double y, double z) {
    return pose(Vector3.of(x, y, z), new RestoringStiffness(1, 1, 0));
  }

  // [2 2; 2 5]: eigenvalues 1 and 6; with trim free 2 - 2 x 2 / 5.
  @Test
  void stiffnesses_are_those_of_the_matrix() {
    RestoringStiffness k = new RestoringStiffness(2, 5, 2);
    assertThat(k.softest()).isCloseTo(1, within(1e-12));
    assertThat(k.stiffest()).isCloseTo(6, within(1e-12));
    assertThat(k.heelTrimFree()).isCloseTo(1.2, within(1e-12));
  }

  @Test
  void without_stiffness_in_trim_heel_stands_alone() {
    assertThat(new RestoringStiffness(2, 0, 2).heelTrimFree()).isEqualTo(2);
    assertThat(new RestoringStiffness(2, -5, 2).heelTrimFree()).isEqualTo(2);
  }

  // Two cubic metres times a millimetre.
  @Test
  void a_pose_is_stable_only_when_it_is_stiffer_than_weight_times_a_millimetre() {
    Vector3 up = Vector3.of(0, 0, 1);
    assertThat(pose(up, new RestoringStiffness(0.00201, 9, 0)).stable()).isTrue();
    assertThat(pose(up, new RestoringStiffness(0.00199, 9, 0)).stable()).isFalse();
    assertThat(pose(up, new RestoringStiffness(0.002, 0.002, 0)).stable()).isFalse();
    assertThat(pose(up, new RestoringStiffness(9, 0.00199, 0)).stable()).isFalse();
    assertThat(pose(up, new RestoringStiffness(9, -9, 0)).stable()).isFalse();
    assertThat(pose(up, new RestoringStiffness(Double.NaN, 9, 0)).stable()).isFalse();
  }

  @Test
  void the_water_is_read_off_the_boats_own_axis_unless_that_lies_flat() {
    assertThat(lying(0, 0.6, 0.8).waterAtOrigin().orElseThrow()).isCloseTo(0.375, within(1e-12));
    assertThat(lying(0, Math.sqrt(0.96), 0.2).waterAtOrigin().orElseThrow())
        .isCloseTo(1.5, within(1e-12));
    assertThat(lying(0, Math.sqrt(0.97), Math.sqrt(0.03)).waterAtOrigin()).isEmpty();
    assertThat(lying(0, 0.6, -0.8).waterAtOrigin()).isEmpty();
  }

  @Test
  void one_word_tells_how_it_lies() {
    assertThat(lying(0.1, 0.2, 0.9).word()).isEqualTo("upright");
    assertThat(lying(0.1, 0.2, -0.9).word()).isEqualTo("upside down");
    assertThat(lying(0.1, 0.9, 0.2).word()).isEqualTo("on its side");
    assertThat(lying(0.1, -0.9, 0.2).word()).isEqualTo("on its side");
    assertThat(lying(0.9, 0.1, 0.2).word()).isEqualTo("bow up");
    assertThat(lying(-0.9, 0.1, 0.2).word()).isEqualTo("stern up");
  }

  @Test
  void of_two_edges_alike_the_first_is_named() {
    List<FloodPoint> edges =
        List.of(
            new FloodPoint("high", Vector3.of(0, 0, 2)),
            new FloodPoint("first", Vector3.of(1, 0, 1)),
            new FloodPoint("second", Vector3.of(2, 0, 1)));
    Freeboard least = Freeboard.least(edges, WaterPlane.of(0, 0, 0.25));
    assertThat(least.at()).isEqualTo("first");
    assertThat(least.height()).isEqualTo(0.75);
  }

  @Test
  void poses_are_all_stable_only_when_there_are_some_and_each_is() {
    Vector3 up = Vector3.of(0, 0, 1);
    Pose stiff = pose(up, new RestoringStiffness(1, 1, 0));
    Pose tender = pose(up, new RestoringStiffness(-1, 1, 0));
    Equilibria.Ending rests = Equilibria.Ending.RESTS;
    assertThat(new Equilibria(List.of(stiff, stiff), rests).allStable()).isTrue();
    assertThat(new Equilibria(List.of(stiff, tender), rests).allStable()).isFalse();
    assertThat(Equilibria.none(Equilibria.Ending.SINKS).allStable()).isFalse();
  }

  // Two decks with air between: the lower one alone carries the weight, so nothing breaks the
  // surface, and nothing tells which way it would turn.
  @Test
  void what_hangs_without_a_waterplane_is_not_assessed() {
    Solid lower = Blocks.block(4, 1, 1);
    Solid upper = Blocks.prism(4, square(2));
    FloatingBody decks =
        new FloatingBody(
            lower.volume(),
            Vector3.of(0, 0, 0.3),
            List.of(new Lift(lower, 1), new Lift(upper, 1)),
            1);
    Equilibria found = Equilibrium.from(decks);
    assertThat(found.ending()).isEqualTo(Equilibria.Ending.NOT_FOUND);
    assertThat(found.assessed()).isFalse();
    assertThat(found.exist()).isFalse();
  }

  private static List<double[]> square(double from) {
    return List.of(
        new double[] {-0.5, from},
        new double[] {0.5, from},
        new double[] {0.5, from + 1},
        new double[] {-0.5, from + 1});
  }

  @Test
  void what_rests_or_sinks_is_assessed() {
    assertThat(Equilibria.none(Equilibria.Ending.SINKS).assessed()).isTrue();
    Equilibria rests = Equilibrium.from(Blocks.floating(BLOCK, 1, 0.3));
    assertThat(rests.assessed()).isTrue();
    assertThat(rests.ending()).isEqualTo(Equilibria.Ending.RESTS);
  }

  // A square log on end is tender every way, so that after no nudge it comes straight back.
  @Test
  void the_boat_is_let_go_from_a_nudge_to_each_of_the_four_sides() {
    List<Vector3> starts = new ArrayList<>();
    FloatingBody log = Blocks.floating(Blocks.block(1, 1, 3), 1.5, 1.5);
    Equilibrium.from(log, Equilibrium.UPRIGHT, (before, after) -> starts.add(before.plane.up()));
    double nudge = Math.toRadians(1);
    for (double[] way : new double[][] {{1, 0}, {-1, 0}, {0, 1}, {0, -1}}) {
      Vector3 up = WaterPlane.upward(nudge * way[0], nudge * way[1]);
      assertThat(starts).anyMatch(start -> start.minus(up).norm() < 1e-12);
    }
  }

  @Test
  void a_dry_boat_weighs_what_is_aboard_and_is_lifted_by_its_outside() {
    Loading loading =
        new Loading(BoxBoat.of(3, 1, 0.5).hull(90, 0.2).model(), List.of(), List.of(), 1.1);
    FloatingBody dry = FloatingBody.dry(loading);
    assertThat(dry.mass()).isCloseTo(99, within(1e-9));
    assertThat(dry.liftVolume()).isCloseTo(1.5, within(1e-9));
    assertThat(dry.centre().minus(Vector3.of(1.5, 0, 0.2)).norm()).isLessThan(1e-12);
  }

  @Test
  void what_lifts_nothing_takes_no_room() {
    Solid high = Blocks.prism(1, square(2));
    FloatingBody floating =
        new FloatingBody(
            0.1, Vector3.ZERO, List.of(new Lift(Solid.EMPTY, 1), new Lift(high, 1)), 1);
    assertThat(floating.extent(Vector3.of(0, 0, 1)).from()).isEqualTo(2);
  }

  // A body is as much water as it weighs: allow a tenth for the scales, and it lifts a tenth more.
  @Test
  void in_the_water_a_heavier_person_is_also_larger() {
    BoxBoat boat = BoxBoat.of(4, 1.6, 0.6).hull(90, 0.2).place("seat", 2, 0.3, 0.3, 1);
    List<Body> people = boat.aboard("guest", 80, "seat", 0).model().aboard();
    Loading asMeasured = new Loading(boat.model(), people, List.of(), 1);
    Loading allowed = new Loading(boat.model(), people, List.of(), 1.1);
    double more =
        Swamping.of(allowed, 1).floating(List.of()).liftVolume()
            - Swamping.of(asMeasured, 1).floating(List.of()).liftVolume();
    assertThat(more).isCloseTo(0.1 * 80 / 1000, within(1e-9));
  }
}
