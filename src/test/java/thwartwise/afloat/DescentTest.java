package thwartwise.afloat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import thwartwise.boat.BoatModel;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Side;
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
