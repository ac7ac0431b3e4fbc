package thwartwise.afloat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Side;
import thwartwise.geometry.Immersion;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Vector3;
import thwartwise.geometry.WaterPlane;
import thwartwise.hull.FloodPoint;

/** Heeling a box degree by degree: how far, where it ends and why. */
class HeelWalkTest {
  private static final Solid HULL = Blocks.block(4, 1.4, 0.7);
  private static final double DRAUGHT = 1300 / 1000.0 / 5.6;

  private static FloatingBody boat(double mass, Vector3 centre) {
    return new FloatingBody(mass, centre, List.of(new Lift(HULL, 1)), 1000);
  }

  private static final FloatingBody EVEN = boat(1300, Vector3.of(0, 0, 0.35));

  private static RightingCurve curve(Side side, FloodPoint... edges) {
    return RightingCurve.toward(side, EVEN, List.of(edges)).orElseThrow();
  }

  @Test
  void with_nothing_that_floods_it_goes_on_to_a_right_angle() {
    RightingCurve curve = curve(Side.STARBOARD);
    assertThat(curve.points()).hasSize(91);
    assertThat(curve.flooding()).isEmpty();
    assertThat(curve.floodingHeel()).isEmpty();
    assertThat(curve.end()).isEqualTo(new RightingCurve.End("", false));
    assertThat(curve.last()).isEqualTo(curve.points().get(90));
    assertThat(Math.toDegrees(curve.last().heel())).isCloseTo(90, within(1e-9));
    assertThat(curve.mass()).isCloseTo(1300, within(1e-9));
  }

  // On its side the wet part is a block about z = 0.35: the arm is how far G stands from there.
  @Test
  void on_its_side_the_arm_is_what_symmetry_says() {
    assertThat(curve(Side.PORT).last().arm()).isCloseTo(0, within(1e-9));
    FloatingBody low = boat(1300, Vector3.of(0, 0, 0.25));
    RightingCurve curve = RightingCurve.toward(Side.PORT, low, List.of()).orElseThrow();
    assertThat(curve.last().arm()).isCloseTo(0.1, within(1e-9));
    assertThat(curve.moment(curve.last())).isCloseTo(0.1 * 1300 * Gravity.STANDARD, within(1e-5));
  }

  @Test
  void the_edge_that_floods_is_named() {
    FloodPoint port = new FloodPoint("port notch", Vector3.of(0.5, 0.7, 0.4));
    FloodPoint starboard = new FloodPoint("starboard rail", Vector3.of(0.5, -0.7, 0.45));
    assertThat(curve(Side.PORT, port, starboard).end())
        .isEqualTo(new RightingCurve.End("port notch", false));
    RightingCurve curve = curve(Side.STARBOARD, port, starboard);
    assertThat(curve.floodingAt()).isEqualTo("starboard rail");
    double tan = (0.45 - DRAUGHT) / 0.7;
    assertThat(curve.floodingHeel().orElseThrow()).isCloseTo(Math.atan(tan), within(1e-6));
  }

  // Flooding at exactly a whole degree is found as that degree, not the one after.
  @Test
  void an_edge_in_at_a_whole_degree_ends_the_curve_there() {
    double height = DRAUGHT + 0.7 * Math.tan(Math.toRadians(10)) - 1e-9;
    RightingCurve curve = curve(Side.PORT, new FloodPoint("rail", Vector3.of(0, 0.7, height)));
    assertThat(curve.points()).hasSize(10);
    assertThat(Math.toDegrees(curve.floodingHeel().orElseThrow())).isCloseTo(10, within(1e-5));
  }

  @Test
  void a_trim_that_is_lost_says_so() {
    RightingCurve.Point level = new RightingCurve.Point(0, 0, 0, WaterPlane.of(0, 0, 0.2));
    RightingCurve lost =
        new RightingCurve(Side.PORT, List.of(level), Optional.empty(), "", true, 100);
    assertThat(lost.end()).isEqualTo(new RightingCurve.End("", true));
    assertThat(lost.last()).isEqualTo(level);
    assertThat(lost.energy()).isZero();
  }

  @Test
  void a_boat_that_sinks_has_no_curve() {
    FloatingBody heavy = boat(4000, Vector3.of(0, 0, 0.35));
    assertThat(RightingCurve.toward(Side.PORT, heavy, List.of())).isEmpty();
    assertThat(RightingCurve.towardWorseSide(heavy, List.of())).isEmpty();
  }

  // A point y out and z up reaches the water at tan = (z - draught)/y; between whole degrees the
  // height is taken as straight, which errs by under a degree squared of a bend below one.
  @Test
  void a_point_reaches_the_water_where_the_side_goes_down() {
    RightingCurve curve = curve(Side.STARBOARD);
    Vector3 point = Vector3.of(1, -0.6, 0.38);
    double tan = (0.38 - DRAUGHT) / 0.6;
    assertThat(curve.reaches(point).orElseThrow()).isCloseTo(Math.atan(tan), within(4e-5));
    assertThat(curve.reaches(Vector3.of(1, 0, 0.1)).orElseThrow()).isZero();
    assertThat(curve.reaches(Vector3.of(1, 0.6, 5))).isEmpty();
  }

  @Test
  void a_point_is_not_reached_when_the_boat_floods_before() {
    FloodPoint rail = new FloodPoint("rail", Vector3.of(0, -0.7, 0.36));
    RightingCurve curve = curve(Side.STARBOARD, rail);
    assertThat(curve.reaches(Vector3.of(0, -0.7, 0.37))).isEmpty();
    // Between the last whole degree, 10, and flooding at 10.3.
    double tan = (0.358 - DRAUGHT) / 0.7;
    assertThat(curve.reaches(Vector3.of(0, -0.7, 0.358)).orElseThrow())
        .isCloseTo(Math.atan(tan), within(4e-5));
  }

  // With an end weight the box lies trimmed all along; heeling leaves the trim free.
  @Test
  void trim_stays_balanced_all_the_way() {
    FloatingBody aft = boat(1300, Vector3.of(-0.2, 0, 0.35));
    RightingCurve curve = RightingCurve.toward(Side.PORT, aft, List.of()).orElseThrow();
    for (RightingCurve.Point point : curve.points().subList(0, 60)) {
      HydrostaticState held =
          HydrostaticState.at(aft, point.plane().up(), point.plane().height(), new Immersion())
              .orElseThrow();
      assertThat(held.trimMoment).isCloseTo(0, within(1e-9));
    }
    assertThat(curve.points().get(0).plane().trim()).isNegative();
  }

  @Test
  void the_greatest_arm_may_stand_at_flooding() {
    FloodPoint low = new FloodPoint("notch", Vector3.of(0, 0.7, 0.3));
    RightingCurve curve = curve(Side.PORT, low);
    assertThat(curve.greatest()).isEqualTo(curve.flooding().orElseThrow());
    RightingCurve whole = curve(Side.PORT);
    assertThat(whole.greatest().arm())
        .isEqualTo(
            whole.points().stream().mapToDouble(RightingCurve.Point::arm).max().getAsDouble());
  }

  // Between two planes 0.2 and 0.3 up: a point as high as the second is reached just there.
  @Test
  void a_point_just_touched_by_the_last_water_is_reached() {
    RightingCurve.Point before = new RightingCurve.Point(0, 0, 0, WaterPlane.of(0, 0, 0.2));
    RightingCurve.Point after = new RightingCurve.Point(0.02, 0, 0, WaterPlane.of(0, 0, 0.3));
    RightingCurve curve =
        new RightingCurve(Side.PORT, List.of(before, after), Optional.empty(), "", false, 100);
    assertThat(curve.reaches(Vector3.of(0, 0, 0.2)).orElseThrow()).isZero();
    assertThat(curve.reaches(Vector3.of(0, 0, 0.25)).orElseThrow()).isCloseTo(0.01, within(1e-12));
    assertThat(curve.reaches(Vector3.of(0, 0, 0.3)).orElseThrow()).isCloseTo(0.02, within(1e-12));
    assertThat(curve.reaches(Vector3.of(0, 0, 0.31))).isEmpty();
  }

  @Test
  void the_greatest_arm_may_stand_before_flooding() {
    FloodPoint high = new FloodPoint("coaming", Vector3.of(0, 0.3, 0.9));
    RightingCurve curve = curve(Side.PORT, high);
    double flooding = curve.flooding().orElseThrow().arm();
    assertThat(curve.greatest().arm()).isGreaterThan(flooding + 0.01);
    assertThat(curve.greatest().heel()).isLessThan(curve.floodingHeel().orElseThrow());
  }

  @Test
  void starboard_is_named_when_both_sides_are_alike() {
    List<FloodPoint> both =
        List.of(
            new FloodPoint("port", Vector3.of(0, 0.7, 0.6)),
            new FloodPoint("starboard", Vector3.of(0, -0.7, 0.6)));
    assertThat(worse(both)).isEqualTo(Side.STARBOARD);
    assertThat(worse(List.of(new FloodPoint("bung", Vector3.of(0, 0, 0.1)))))
        .isEqualTo(Side.STARBOARD);
  }

  @Test
  void the_side_that_floods_a_little_sooner_is_the_worse_one() {
    FloodPoint port = new FloodPoint("port", Vector3.of(0, 0.7, 0.6));
    FloodPoint lower = new FloodPoint("starboard", Vector3.of(0, -0.7, 0.599));
    FloodPoint higher = new FloodPoint("starboard", Vector3.of(0, -0.7, 0.601));
    assertThat(worse(List.of(port, lower))).isEqualTo(Side.STARBOARD);
    assertThat(worse(List.of(port, higher))).isEqualTo(Side.PORT);
  }

  private static Side worse(List<FloodPoint> edges) {
    return RightingCurve.towardWorseSide(EVEN, edges).orElseThrow().side();
  }
}
