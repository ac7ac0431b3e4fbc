package thwartwise.afloat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.geometry.ImmersedPart;
import thwartwise.geometry.Reference;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Vector3;
import thwartwise.geometry.WaterPlane;

/** Prisms, logs and cylinders with closed-form or published metacentric heights. */
class ShapesAtRestTest {

  static Stream<Reference> triangles() {
    return Reference.of("triangular-prism");
  }

  @ParameterizedTest
  @MethodSource("triangles")
  void a_triangular_prism_floats_apex_down_with_the_published_heights(Reference r) {
    double length = 6 * r.in("b");
    Solid prism =
        Blocks.prism(
            length,
            List.of(
                new double[] {0, 0},
                new double[] {r.in("b") / 2, r.in("D")},
                new double[] {-r.in("b") / 2, r.in("D")}));
    double wet = r.in("b") / r.in("D") * r.in("d");
    double volume = length * wet * r.in("d") / 2;
    FloatingBody floating = Blocks.floating(prism, volume, r.in("KG", 2 * r.in("D") / 3));
    Pose pose = Equilibrium.from(floating).worst().orElseThrow();
    assertThat(pose.tilt()).isLessThan(1e-6);
    assertThat(pose.stable()).isTrue();
    assertThat(pose.plane().height()).isCloseTo(r.in("d"), within(1e-8));
    meets(r, "KB", pose.part().centroid().z());
    meets(r, "BM", pose.part().transverseInertia() / pose.part().volume());
    meets(r, "GM", pose.metacentricHeight());
  }

  static Stream<Reference> logs() {
    return Reference.of("square-log");
  }

  /** The metacentric height of the flat log, stable or not, is the slope of its righting arm. */
  @ParameterizedTest
  @MethodSource("logs")
  void a_square_log_has_the_closed_form_metacentric_height(Reference r) {
    double a = r.in("a", 1);
    double s = r.in("S");
    HydrostaticState flat = settled(Blocks.block(6 * a, a, a), 6 * a * a * a * s, a / 2, 0);
    meets(r, "GM", flat.restoring.heelTrimFree() / (6 * a * a * a * s));
  }

  static Stream<Reference> edgeLogs() {
    return Reference.of("square-log-on-edge");
  }

  @ParameterizedTest
  @MethodSource("edgeLogs")
  void a_square_log_half_under_or_near_it_rests_on_its_edge(Reference r) {
    double a = r.in("a");
    double length = 8 * a;
    double volume = length * a * a * r.in("S");
    FloatingBody log = Blocks.floating(Blocks.block(length, a, a), volume, a / 2);
    Equilibria found = Equilibrium.from(log);
    assertThat(found.reached()).allMatch(Pose::stable);
    for (Pose pose : found.reached()) {
      assertThat(Math.abs(Math.toDegrees(pose.heel()))).isCloseTo(45, within(1e-5));
      meets(r, "GM", pose.metacentricHeight());
      meets(r, "BM", pose.part().transverseInertia() / pose.part().volume());
      meets(r, "w", pose.part().area() / length);
    }
  }

  static Stream<Reference> standing() {
    return Reference.of("upright-prism");
  }

  @ParameterizedTest
  @MethodSource("standing")
  void a_square_prism_on_end_is_neutral_at_the_published_ratio(Reference r) {
    meets(r, "ratio", neutral(side -> stiffness(Blocks.block(side, side, 1), r.in("S"))));
  }

  static Stream<Reference> cylinders() {
    return Reference.of("vertical-cylinder");
  }

  @ParameterizedTest
  @MethodSource("cylinders")
  void a_cylinder_on_end_is_neutral_at_the_closed_form_ratio(Reference r) {
    meets(r, "ratio", neutral(d -> stiffness(Blocks.upright(d / 2, 1, 720), r.in("S"))));
  }

  static Stream<Reference> uprightCylinders() {
    return Reference.of("cylinder-upright");
  }

  /** Unstable as it stands: held upright, not let go. */
  @ParameterizedTest
  @MethodSource("uprightCylinders")
  void a_cylinder_on_end_has_the_published_heights(Reference r) {
    double height = r.in("H");
    Solid solid = Blocks.upright(r.in("D") / 2, height, 720);
    HydrostaticState upright = settled(solid, solid.volume() * r.in("S"), height / 2, 0);
    double volume = upright.part.volume();
    meets(r, "draft", upright.plane.height());
    meets(r, "KB", upright.part.centroid().z());
    meets(r, "BM", upright.part.transverseInertia() / volume);
    meets(r, "GM", upright.restoring.heelTrimFree() / volume);
  }

  private static double neutral(DoubleUnaryOperator stiffness) {
    return new BrentSolver(1e-10).solve(200, stiffness::applyAsDouble, 0.8, 2);
  }

  private static double stiffness(Solid solid, double gravity) {
    double volume = solid.volume() * gravity;
    return settled(solid, volume, 0.5, 0).restoring.heelTrimFree() / volume;
  }

  // Closed form (references A25): the metacentre of a round log lies on its axis, so GM = 0 at any
  // gravity. A log of N flats misses by what its outline misses of a circle: r (2 pi/N)^2 or less.
  @Test
  void a_round_log_does_not_care_how_it_is_turned() {
    double radius = 0.5;
    for (double gravity : List.of(0.2, 0.5, 0.77)) {
      double coarse = Math.abs(roundLogMetacentricHeight(radius, 90, gravity));
      double fine = Math.abs(roundLogMetacentricHeight(radius, 720, gravity));
      assertThat(coarse).isLessThan(radius * Math.pow(2 * Math.PI / 90, 2));
      assertThat(fine).isLessThan(radius * Math.pow(2 * Math.PI / 720, 2));
    }
  }

  private static double roundLogMetacentricHeight(double radius, int flats, double gravity) {
    List<double[]> outline = new ArrayList<>();
    for (int i = 0; i < flats; i++) {
      double angle = 2 * Math.PI * (i + 0.37) / flats;
      outline.add(new double[] {radius * Math.cos(angle), radius * Math.sin(angle)});
    }
    Solid log = Blocks.prism(5, outline);
    double volume = log.volume() * gravity;
    return settled(log, volume, 0, 0).restoring.heelTrimFree() / volume;
  }

  static Stream<Reference> shifted() {
    return Reference.of("shifted-weight");
  }

  /** A box with KB far up and the stated BM stands for the ship. */
  @ParameterizedTest
  @MethodSource("shifted")
  void a_weight_moved_across_lists_as_published(Reference r) {
    double draft = 30;
    double breadth = Math.sqrt(12 * draft * r.in("BM"));
    double length = 10 * breadth;
    double heightOfG = draft / 2 + r.in("BM") - r.in("GM");
    double volume = length * breadth * draft;
    Vector3 centre = Vector3.of(0, -r.in("w") * r.in("moved") / r.in("W"), heightOfG);
    Solid block = Blocks.block(length, breadth, 2 * draft);
    FloatingBody ship =
        new FloatingBody(r.in("W"), centre, List.of(new Lift(block, 1)), r.in("W") / volume);
    Pose pose = Equilibrium.from(ship).worst().orElseThrow();
    meets(r, "tan", Math.tan(pose.heel()));
  }

  static Stream<Reference> along() {
    return Reference.of("shifted-along");
  }

  @ParameterizedTest
  @MethodSource("along")
  void a_weight_moved_aft_trims_by_the_stern_as_published(Reference r) {
    double length = r.in("L");
    double volume = length * r.in("B") * r.in("d");
    double weight = volume / 35; // salt water, cubic feet a ton
    double longitudinalGm = r.in("MCT") * 12 * length / weight;
    double heightOfG = r.in("d") / 2 + length * length / (12 * r.in("d")) - longitudinalGm;
    Vector3 centre = Vector3.of(-r.in("w") * r.in("moved") / weight, 0, heightOfG);
    Solid block = Blocks.block(length, r.in("B"), r.in("D"));
    FloatingBody box = new FloatingBody(weight, centre, List.of(new Lift(block, 1)), 1.0 / 35);
    Pose pose = Equilibrium.from(box).worst().orElseThrow();
    meets(r, "trim", -Math.tan(pose.trim()) * length);
  }

  private static HydrostaticState settled(
      Solid solid, double volume, double heightOfG, double heel) {
    FloatingBody floating = Blocks.floating(solid, volume, heightOfG);
    return HydrostaticState.at(
            floating, WaterPlane.upward(heel, 0), 0.1, new thwartwise.geometry.Immersion())
        .orElseThrow();
  }

  private static void meets(Reference r, String name, double ours) {
    if (r.wants(name)) {
      assertThat(ours).as(name).isCloseTo(r.wanted(name), within(r.near(name)));
    }
  }

  // A corner of the program's own sums: the arm's slope is what the stiffness says.
  @Test
  void the_slope_of_the_arm_is_the_metacentric_height() {
    Solid block = Blocks.block(6, 1, 1);
    double volume = 6 * 0.15;
    double step = Math.toRadians(0.01);
    double there = settled(block, volume, 0.5, step).heelMoment / volume;
    double slope = there / step;
    assertThat(settled(block, volume, 0.5, 0).restoring.heelTrimFree() / volume)
        .isCloseTo(slope, within(1e-6));
    ImmersedPart part = ImmersedPart.of(block, WaterPlane.of(0, 0, 0.15));
    assertThat(part.volume()).isCloseTo(volume, within(1e-12));
  }
}
