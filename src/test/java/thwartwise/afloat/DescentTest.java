package thwartwise.afloat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import thwartwise.boat.BoatModel;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Side;
import thwartwise.geometry.Box;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;

/** The way down to rest, step by step. */
class DescentTest {

  private static int steps(FloatingBody floating) {
    List<HydrostaticState> taken = new ArrayList<>();
    Equilibrium.from(floating, Equilibrium.UPRIGHT, (before, after) -> taken.add(after));
    return taken.size();
  }

  // Draft 3, BM 2: with a metre of GM the righting moment is a straight line for a degree, and
  // Newton's turn from a nudge leads back; with a hundredth of a millimetre it bends at once, by
  // BM tan^2 / 2.
  @Test
  void a_stiff_boat_comes_straight_back_and_a_tender_one_step_by_step() {
    double breadth = Math.sqrt(72);
    FloatingBody stiff = Blocks.floating(Blocks.block(40, breadth, 8), 120 * breadth, 1.5 + 2 - 1);
    FloatingBody tender = Blocks.floating(Blocks.block(40, breadth, 8), 120 * breadth, 3.5 - 1e-5);
    assertThat(steps(stiff)).isZero();
    assertThat(steps(tender)).isPositive();
  }

  @Test
  void no_step_climbs_whatever_is_let_go() {
    Random random = new Random(31);
    for (int i = 0; i < 300; i++) {
      Vector3 centre =
          Vector3.of(
              2 * random.nextDouble() - 1, random.nextDouble() - 0.5, 1.2 * random.nextDouble());
      Lift block = new Lift(Blocks.block(4, 1.3, 0.6), 1);
      Lift post = new Lift(Blocks.upright(0.3, 1.5, 7), 1);
      FloatingBody floating =
          new FloatingBody(0.1 + 2.5 * random.nextDouble(), centre, List.of(block, post), 1);
      Equilibria found =
          Equilibrium.from(
              floating,
              Equilibrium.UPRIGHT,
              (before, after) ->
                  assertThat(
                          after.energy < before.energy
                              || Math.abs(after.energy - before.energy) < 1e-12
                                  && after.moment() < before.moment())
                      .isTrue());
      assertThat(found.exist()).isTrue();
    }
  }

  // As foreseen: the energy drops as slope and stiffness say, within a tenth, and at both ends
  // there
  // are 0.05 m of metacentric height.
  @Test
  void only_turns_that_go_as_foreseen_are_longer_than_two_degrees_and_none_longer_than_eight() {
    Random random = new Random(31);
    List<Double> longer = new ArrayList<>();
    for (int i = 0; i < 300; i++) {
      RandomAfloat boat = RandomAfloat.loadedAsBoatsAre(random);
      Equilibrium.from(
          boat.floating(),
          Equilibrium.UPRIGHT,
          (before, after) -> {
            double turn = Math.toDegrees(turned(before, after));
            if (turn > 2 + 1e-6) {
              longer.add(turn);
              double foreseen =
                  TrustRegionStep.downhill(before, turned(before, after)).expectedDrop();
              assertThat(before.energy - after.energy)
                  .as(boat.toString())
                  .isCloseTo(foreseen, within(0.1 * foreseen));
              double firm = 0.05 * boat.floating().neededVolume();
              assertThat(before.restoring.softest()).isGreaterThan(firm);
              assertThat(after.restoring.softest()).isGreaterThan(firm);
            }
          });
    }
    assertThat(longer).hasSizeGreaterThan(100);
    assertThat(Collections.max(longer)).isCloseTo(8, within(1e-6));
  }

  private static double turned(HydrostaticState before, HydrostaticState after) {
    Vector3 up = before.plane.up();
    return Math.atan2(up.cross(after.plane.up()).norm(), up.dot(after.plane.up()));
  }

  // The weight to port leans her that way until a board out there holds her; three degrees farther
  // it is well under and she goes over. From six degrees, before the board touches, a turn of eight
  // ends past it, and lower.
  @Test
  void a_boat_leans_on_a_board_that_a_longer_turn_would_leap_over() {
    List<Lift> lifts =
        List.of(bar(0, 0.6, 0, 0.4), bar(-0.95, 0.16, 0.05, 0.3), bar(1.45, 0.24, 0.44, 0.08));
    FloatingBody boat = new FloatingBody(640, Vector3.of(2, 0.1, 0.58), lifts, 1000);
    Pose leaning = SlowEquilibrium.from(boat).worst().orElseThrow();
    Equilibria found = Equilibrium.from(boat);
    assertThat(Math.toDegrees(leaning.heel())).isCloseTo(-11.1, within(0.1));
    assertThat(found.reached()).hasSize(1);
    assertThat(found.worst().orElseThrow().heel()).isCloseTo(leaning.heel(), within(1e-6));
  }

  /** Four metres long; its middle line, breadth, bottom and depth, m. */
  private static Lift bar(double y, double breadth, double z, double depth) {
    Span across = new Span(y - breadth / 2, y + breadth / 2);
    return new Lift(Solid.block(new Box(new Span(0, 4), across, new Span(z, z + depth))), 1);
  }

  @Test
  void let_go_beside_its_rest_a_boat_returns_and_let_go_too_heavy_it_does_not() {
    FloatingBody box = Blocks.floating(Blocks.block(4, 2, 1), 2, 0.3);
    Pose rest = Equilibrium.letGo(box, Vector3.of(0.1, 0.1, 1).unit(), 0.3).orElseThrow();
    assertThat(rest.tilt()).isLessThan(1e-6);
    assertThat(rest.plane().height()).isCloseTo(0.25, within(1e-9));
    FloatingBody heavy = Blocks.floating(Blocks.block(4, 2, 1), 9, 0.3);
    assertThat(Equilibrium.letGo(heavy, Vector3.of(0, 0, 1), 0.3)).isEmpty();
  }

  // A hundred-millionth of a metre off the middle line is no reason to name a side.
  @Test
  void a_curve_alike_both_ways_goes_to_starboard() {
    BoatModel model = BoxBoat.of(3, 1.2, 0.5).hull(540, 0.2).model();
    FloatingBody floating =
        new FloatingBody(
            540, Vector3.of(1.5, 1e-8, 0.2), List.of(new Lift(model.form().outside(), 1)), 1000);
    Optional<RightingCurve> curve = RightingCurve.towardWorseSide(floating, model.edges());
    assertThat(curve.orElseThrow().side().word()).isEqualTo("starboard");
    assertThat(Side.PORT.word()).isEqualTo("port");
  }
}
