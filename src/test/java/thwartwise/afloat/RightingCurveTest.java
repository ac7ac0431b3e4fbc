package thwartwise.afloat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.Test;
import thwartwise.boat.BoatModel;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Opening;
import thwartwise.boat.Side;
import thwartwise.geometry.Vector3;
import thwartwise.hull.FloodPoint;

class RightingCurveTest {
  private static final double DRAFT = 0.15;

  private static BoxBoat boat() {
    return BoxBoat.of(3, 1.2, 0.5).hull(3 * 1.2 * DRAFT * 1000, 0.2);
  }

  private static FloatingBody afloat(BoatModel model, Vector3 centre) {
    return new FloatingBody(
        model.boat().hull().mass(), centre, List.of(new Lift(model.form().outside(), 1)), 1000);
  }

  private static RightingCurve curve(BoatModel model, Vector3 centre) {
    return RightingCurve.towardWorseSide(afloat(model, centre), model.edges()).orElseThrow();
  }

  private static final Vector3 MIDDLE = Vector3.of(1.5, 0, 0.2);

  // On paper: while the bottom stays under (tan < 0.25) the box turns about the middle of its
  // waterline, and a point y out and z up floods when z = draft + y tan: here the opening's end.
  @Test
  void a_wide_opening_floods_at_its_lower_end() {
    BoatModel model =
        boat().opening(new Opening("cut-out", Vector3.of(0, 0.1, 0.25), 0.8, true)).model();
    RightingCurve curve = curve(model, MIDDLE);
    // Its port end stands 0.5 out, its starboard end 0.3: port floods first, at tan = 0.10/0.5.
    RightingCurve port =
        RightingCurve.toward(Side.PORT, afloat(model, MIDDLE), model.edges()).orElseThrow();
    assertThat(port.floodingHeel().orElseThrow()).isCloseTo(Math.atan(0.1 / 0.5), within(1e-6));
    assertThat(port.floodingAt()).isEqualTo("cut-out");
    assertThat(curve.side()).isEqualTo(Side.PORT);
  }

  @Test
  void points_stand_at_every_whole_degree_up_to_flooding() {
    RightingCurve curve = curve(boat().model(), MIDDLE);
    double flooding = Math.toDegrees(curve.floodingHeel().orElseThrow());
    assertThat(curve.points()).hasSize((int) Math.floor(flooding) + 1);
    for (int i = 0; i < curve.points().size(); i++) {
      assertThat(Math.toDegrees(curve.points().get(i).heel())).isCloseTo(i, within(1e-12));
    }
    // Paper: one bottom edge is out; the wet part is a triangle or trapezoid of area 0.18 whose
    // corner is the low chine, and the rail 0.5 up that side is at the water:
    // 0.5^2 / tan / 2 = 0.18 with 0.5 / tan < 1.2, that is tan = 0.125/0.18.
    assertThat(curve.floodingHeel().orElseThrow()).isCloseTo(Math.atan(0.125 / 0.18), within(1e-6));
    assertThat(curve.floodingAt()).startsWith("rail, near ");
  }

  // Decked over its after end, the cut-out there still floods, the rail does not; with a lengthwise
  // weight forward the open rail forward floods first.
  @Test
  void a_decked_length_does_not_flood() {
    BoatModel open = boat().model();
    BoatModel decked = boat().decked(0, 1.5).model();
    Vector3 aft = Vector3.of(1.3, 0, 0.2);
    double all = curve(open, aft).floodingHeel().orElseThrow();
    double half = curve(decked, aft).floodingHeel().orElseThrow();
    assertThat(half).isGreaterThan(all);
    BoatModel whole = boat().decked(0, 3).opening(new Opening("hatch", MIDDLE, 0.1, true)).model();
    assertThat(whole.edges()).extracting(FloodPoint::name).containsOnly("hatch");
  }

  @Test
  void the_curve_goes_toward_the_side_the_weight_is_on() {
    for (double y : new double[] {0.05, -0.05}) {
      RightingCurve curve = curve(boat().model(), Vector3.of(1.5, y, 0.2));
      assertThat(curve.side()).isEqualTo(y > 0 ? Side.PORT : Side.STARBOARD);
      // Upright the weight still pulls it over: the arm is minus the offset.
      assertThat(curve.points().get(0).arm()).isCloseTo(-0.05, within(1e-9));
      // It rests where (GM + BM tan^2/2) tan = offset: there the arm changes sign.
      double bm = 1.2 * 1.2 / (12 * DRAFT);
      double gm = DRAFT / 2 + bm - 0.2;
      double tan =
          new BrentSolver(1e-12).solve(100, t -> (gm + bm * t * t / 2) * t - 0.05, 0, 0.25);
      int rest = (int) Math.floor(Math.toDegrees(Math.atan(tan)));
      assertThat(curve.points().get(rest).arm()).isNegative();
      assertThat(curve.points().get(rest + 1).arm()).isPositive();
    }
  }

  // The work to heel it is weight times the rise of G over B: potential energy at flooding less
  // that upright, by the same paper triangle; trapezia over whole degrees and the last part degree
  // left out take up to one degree of the greatest arm.
  @Test
  void energy_is_the_work_up_to_flooding() {
    RightingCurve curve = curve(boat().model(), MIDDLE);
    double tan = 0.125 / 0.18;
    double phi = Math.atan(tan);
    // Centre of the wet triangle, from its low chine (-0.6, 0): a third of its legs.
    double y = -0.6 + 0.5 / tan / 3;
    double z = 0.5 / 3;
    double over = Math.sin(phi) * (0 - y) + Math.cos(phi) * (0.2 - z);
    double upright = 0.2 - DRAFT / 2;
    double work = 540 * Gravity.STANDARD * (over - upright);
    double lastDegree = curve.moment(curve.greatest()) * Math.toRadians(1);
    assertThat(curve.energy()).isBetween(work - lastDegree, work + 0.01 * work);
  }

  @Test
  void a_boat_already_flooded_has_its_first_point_only() {
    BoatModel model =
        boat().opening(new Opening("bung hole", Vector3.of(0, 0, 0.05), 0.02, true)).model();
    RightingCurve curve = curve(model, MIDDLE);
    assertThat(curve.points()).hasSize(1);
    assertThat(curve.floodingHeel().orElseThrow()).isZero();
    assertThat(curve.floodingAt()).isEqualTo("bung hole");
  }
}
