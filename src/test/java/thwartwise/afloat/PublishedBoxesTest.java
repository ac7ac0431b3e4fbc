package thwartwise.afloat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;
import org.hipparchus.optim.univariate.UnivariatePointValuePair;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.boat.Side;
import thwartwise.geometry.ImmersedPart;
import thwartwise.geometry.Reference;
import thwartwise.geometry.Solid;
import thwartwise.geometry.WaterPlane;

/** Box boats with published or closed-form answers, fed through equilibrium and righting curve. */
class PublishedBoxesTest {

  static Stream<Reference> boxes() {
    return Reference.of("box-at-rest");
  }

  @ParameterizedTest
  @MethodSource("boxes")
  void a_box_rests_at_its_draft_with_the_published_heights(Reference r) {
    Solid block = Blocks.block(r.in("L"), r.in("B"), r.in("D"));
    double volume = r.in("L") * r.in("B") * r.in("d");
    Equilibria found = Equilibrium.from(Blocks.floating(block, volume, r.in("KG")));
    assertThat(found.reached()).hasSize(1);
    Pose pose = found.reached().get(0);
    assertThat(pose.plane().height()).isCloseTo(r.in("d"), within(1e-9));
    assertThat(pose.tilt()).isLessThan(1e-6);
    meets(r, "KB", pose.part().centroid().z());
    meets(r, "BM", pose.part().transverseInertia() / pose.part().volume());
    meets(r, "GM", pose.metacentricHeight());
  }

  static Stream<Reference> arms() {
    return Reference.of("wall-sided-arm");
  }

  @ParameterizedTest
  @MethodSource("arms")
  void a_wall_sided_box_rights_itself_with_the_published_arm(Reference r) {
    FloatingBody box = wallSided(r);
    RightingCurve curve = RightingCurve.toward(Side.STARBOARD, box, List.of()).orElseThrow();
    RightingCurve.Point point = curve.points().get((int) r.in("heel"));
    assertThat(Math.toDegrees(point.heel())).isCloseTo(r.in("heel"), within(1e-9));
    meets(r, "arm", point.arm());
    meets(r, "moment", curve.moment(point) / Gravity.STANDARD);
    double smallArm =
        Equilibrium.from(box).reached().get(0).metacentricHeight()
            * Math.sin(Math.toRadians(r.in("heel")));
    meets(r, "smallArm", smallArm);
    meets(r, "smallMoment", smallArm * r.in("W"));
  }

  /** Ten beams long, so that trim is stiff; the arm does not depend on the length. */
  private static FloatingBody wallSided(Reference r) {
    double length = 10 * r.in("B");
    Solid block = Blocks.block(length, r.in("B"), r.in("D"));
    double volume = length * r.in("B") * r.in("d");
    return new FloatingBody(
        r.in("W"),
        Blocks.floating(block, volume, r.in("KG")).centre(),
        List.of(new Lift(block, 1)),
        r.in("W") / volume);
  }

  static Stream<Reference> leastKm() {
    return Reference.of("least-km");
  }

  @ParameterizedTest
  @MethodSource("leastKm")
  void the_metacentre_of_a_box_is_lowest_at_beam_over_root_six(Reference r) {
    Solid block = Blocks.block(40, r.in("B"), r.in("B"));
    UnivariatePointValuePair least =
        new BrentOptimizer(1e-9, 1e-12)
            .optimize(
                new MaxEval(500),
                new UnivariateObjectiveFunction(d -> metacentre(block, d)),
                GoalType.MINIMIZE,
                new SearchInterval(1, 0.9 * r.in("B")));
    meets(r, "KM", least.getValue());
    meets(r, "draft", least.getPoint());
  }

  private static double metacentre(Solid block, double draft) {
    ImmersedPart part = ImmersedPart.of(block, WaterPlane.of(0, 0, draft));
    return part.centroid().z() + part.transverseInertia() / part.volume();
  }

  static Stream<Reference> lolls() {
    return Reference.of("loll");
  }

  @ParameterizedTest
  @MethodSource("lolls")
  void a_tender_box_lolls_by_the_published_formula(Reference r) {
    double draft = 3;
    double breadth = Math.sqrt(12 * draft * r.in("BM"));
    double heightOfG = draft / 2 + r.in("BM") - r.in("GM");
    FloatingBody box =
        Blocks.floating(Blocks.block(40, breadth, 8), 40 * breadth * draft, heightOfG);
    Equilibria found = Equilibrium.from(box);
    assertThat(found.reached()).hasSize(2).allMatch(Pose::stable);
    for (Pose pose : found.reached()) {
      meets(r, "angle", Math.abs(Math.toDegrees(pose.heel())));
      meets(r, "GMloll", pose.metacentricHeight());
    }
    assertThat(found.reached().get(0).heel() + found.reached().get(1).heel())
        .isCloseTo(0, within(1e-8));
    // The arm is nought where it lolls, and negative on the way there.
    RightingCurve curve = RightingCurve.toward(Side.PORT, box, List.of()).orElseThrow();
    int whole = (int) r.wanted("angle");
    assertThat(curve.points().get(whole).arm()).isNegative();
    assertThat(curve.points().get(whole + 1).arm()).isPositive();
  }

  private static void meets(Reference r, String name, double ours) {
    if (r.wants(name)) {
      assertThat(ours).as(name).isCloseTo(r.wanted(name), within(r.near(name)));
    }
  }
}
