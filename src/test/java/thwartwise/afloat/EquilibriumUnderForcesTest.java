package thwartwise.afloat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.afloat.EquilibriumUnderForces.Force;
import thwartwise.boat.Side;
import thwartwise.geometry.Profile;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Vector3;

class EquilibriumUnderForcesTest {
  private static final Solid HULL = Blocks.block(4, 1.4, 0.6);
  private static final FloatingBody BOAT =
      new FloatingBody(800, Vector3.of(0, 0, 0.3), List.of(new Lift(HULL, 1)), 1000);
  private static final Vector3 POST = Vector3.of(1, 0.2, 0.9);

  private static EquilibriumUnderForces pulled(Force... forces) {
    return EquilibriumUnderForces.of(BOAT, List.of(forces), HULL);
  }

  @Test
  void without_a_force_it_rests_as_it_did() {
    EquilibriumUnderForces pulled = pulled();
    assertThat(pulled.couples()).isEmpty();
    assertThat(pulled.rest().reached()).hasSize(1);
    assertThat(pulled.rest().reached().get(0).tilt()).isLessThan(1e-9);
  }

  @Test
  void a_force_of_nothing_is_no_couple() {
    assertThat(pulled(new Force(POST, 0, 0)).couples()).isEmpty();
  }

  @Test
  void an_oblique_force_has_a_couple_each_way() {
    EquilibriumUnderForces pulled = pulled(new Force(POST, 120, -90));
    assertThat(pulled.couples()).extracting(Couple::ahead).containsExactly(120.0, 0.0);
    assertThat(pulled.couples()).extracting(Couple::toPort).containsExactly(0.0, -90.0);
    Pose pose = pulled.rest().reached().get(0);
    assertThat(pose.heel()).as("pulled to starboard").isPositive();
    assertThat(pose.trim()).as("pulled ahead").isPositive();
  }

  @Test
  void two_forces_add_up() {
    EquilibriumUnderForces both = pulled(new Force(POST, 0, 60), new Force(POST, 0, 40));
    EquilibriumUnderForces one = pulled(new Force(POST, 0, 100));
    assertThat(both.couples()).hasSize(2);
    double heel = both.rest().reached().get(0).heel();
    assertThat(heel).isNegative();
    assertThat(heel).isCloseTo(one.rest().reached().get(0).heel(), within(1e-6));
  }

  // The reaction is where the hull is seen from the side at the pose itself, not upright.
  @Test
  void the_reaction_stands_where_the_hull_lies_in_the_end() {
    EquilibriumUnderForces pulled = pulled(new Force(POST, 0, 700));
    Pose pose = pulled.rest().reached().get(0);
    assertThat(Math.toDegrees(Math.abs(pose.heel()))).isGreaterThan(4);
    Vector3 seen = Profile.of(HULL.under(pose.plane()), pose.plane().athwart()).centre();
    double lever = pose.plane().up().dot(POST.minus(seen));
    assertThat(pulled.couples().get(0).lever(pose.plane())).isCloseTo(lever, within(1e-5));
  }

  // Moment and answer: weight times arm against force times lever, at whatever pose it ends.
  @Test
  void at_rest_the_righting_moment_answers_the_pull() {
    EquilibriumUnderForces pulled = pulled(new Force(POST, 0, -700));
    Pose pose = pulled.rest().reached().get(0);
    double arm = Vector3.of(0, 0, 0.3).minus(pose.part().centroid()).dot(pose.plane().athwart());
    double moment = 800 * Gravity.STANDARD * arm;
    double pull = 700 * pulled.couples().get(0).lever(pose.plane());
    assertThat(moment).isCloseTo(pull, within(700 * 1.2e-5));
  }

  @Test
  void a_boat_that_sinks_stays_sunk() {
    FloatingBody heavy = new FloatingBody(4000, BOAT.centre(), BOAT.lifts(), 1000);
    EquilibriumUnderForces pulled =
        EquilibriumUnderForces.of(heavy, List.of(new Force(POST, 0, 100)), HULL);
    assertThat(pulled.rest().exist()).isFalse();
    assertThat(pulled.rest().ending()).isEqualTo(Equilibria.Ending.SINKS);
  }

  // Its greatest righting arm is under 0.3 m, 2350 N m; 3000 N stand over 0.8 m above the reaction.
  @Test
  void a_pull_beyond_the_greatest_righting_moment_turns_the_boat_over() {
    RightingCurve curve = RightingCurve.toward(Side.PORT, BOAT, List.of()).orElseThrow();
    assertThat(curve.moment(curve.greatest())).isLessThan(3000 * 0.8);
    Equilibria rest = pulled(new Force(POST, 0, 3000)).rest();
    assertThat(rest.worst().orElseThrow().word()).isEqualTo("upside down");
  }

  @Test
  void a_pull_that_nothing_answers_says_so_and_is_no_open_question() {
    Equilibria rest = pulled(new Force(POST, 0, 20_000)).rest();
    assertThat(rest.exist()).isFalse();
    assertThat(rest.assessed()).isTrue();
    assertThat(rest.ending()).isEqualTo(Equilibria.Ending.OVERPOWERED);
  }
}
