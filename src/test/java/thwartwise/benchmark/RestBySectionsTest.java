package thwartwise.benchmark;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.afloat.Equilibria;
import thwartwise.afloat.Equilibrium;
import thwartwise.afloat.FloatingBody;
import thwartwise.afloat.Lift;
import thwartwise.afloat.Pose;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Vector3;

/** The two ways to rest that the benchmark compares give the same answer, to 1e-6 m and rad. */
class RestBySectionsTest {
  private static final double CLOSE = 1e-6;

  @Test
  void the_benchmarked_punt_rests_where_sections_and_a_solver_say() {
    agree(LoadedPunt.outside(), LoadedPunt.dry(), LoadedPunt.PIECES);
  }

  @Test
  void a_round_hull_rests_where_sections_and_a_solver_say() {
    Solid hull = RoundHull.of(5);
    Vector3 centre = Vector3.of(2.1, 0.04, 0.2);
    agree(hull, new FloatingBody(400, centre, List.of(new Lift(hull, 1)), 1000), 2);
  }

  // The demo boat's forefoot leaves the water, a bend in the areas that only many sections follow:
  // with 1, 2, 4, 8 pieces the water's height differed by 2e-4, 8e-5, 3e-5, 3e-6.
  @Test
  void the_demo_boat_rests_nearer_to_the_sections_the_more_there_are() {
    double few = waterDifference(SampleBoat.outside(), SampleBoat.dry(), 1);
    double many = waterDifference(SampleBoat.outside(), SampleBoat.dry(), 8);
    assertThat(many).isLessThan(few / 30).isLessThan(1e-5);
  }

  // Six times the tetrahedra's volume is what is summed, so a lost factor would show here.
  @Test
  void the_bare_pass_sums_the_volume_of_the_hull() {
    Solid hull = SampleBoat.outside();
    assertThat(FlatTriangles.of(hull).barePass()).isCloseTo(hull.volume(), within(1e-12));
  }

  private static void agree(Solid hull, FloatingBody boat, int pieces) {
    Pose ours = ours(boat);
    RestBySections theirs = theirs(hull, boat, pieces);
    assertThat(Math.abs(ours.heel())).isGreaterThan(0.01);
    assertThat(ours.heel()).isCloseTo(theirs.heel(), within(CLOSE));
    assertThat(ours.trim()).isCloseTo(theirs.trim(), within(CLOSE));
    assertThat(ours.waterAtOrigin().orElseThrow()).isCloseTo(theirs.waterAtOrigin(), within(CLOSE));
  }

  private static double waterDifference(Solid hull, FloatingBody boat, int pieces) {
    double ours = ours(boat).waterAtOrigin().orElseThrow();
    return Math.abs(ours - theirs(hull, boat, pieces).waterAtOrigin());
  }

  private static Pose ours(FloatingBody boat) {
    Equilibria found = Equilibrium.from(boat);
    assertThat(found.reached()).hasSize(1);
    return found.reached().get(0);
  }

  private static RestBySections theirs(Solid hull, FloatingBody boat, int pieces) {
    return RestBySections.of(SectionedHull.of(hull, pieces), boat.neededVolume(), boat.centre());
  }
}
