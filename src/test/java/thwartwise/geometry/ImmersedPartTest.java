package thwartwise.geometry;

import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class ImmersedPartTest {
  private static final double NUMERIC = 1e-12;

  static Stream<Reference> ellipsoids() {
    return Reference.of("ellipsoid");
  }

  @ParameterizedTest
  @MethodSource("ellipsoids")
  void the_lower_half_of_an_ellipsoid_has_the_closed_form_figures(Reference r) {
    Solid whole = Shapes.ellipsoid(r.in("a"), r.in("b"), r.in("c"), 96);
    // Water through the middle, up to the draft c: heights are counted from the keel.
    ImmersedPart part = ImmersedPart.of(whole, WaterPlane.of(0, 0, 0));
    meets(r, "V", part.volume());
    meets(r, "KB", part.centroid().z() + r.in("c"));
    meets(r, "BM", part.transverseInertia() / part.volume());
    // Half as many facets miss four times as much: the error is that of the facets alone.
    double error = r.wanted("V") - part.volume();
    Solid coarse = Shapes.ellipsoid(r.in("a"), r.in("b"), r.in("c"), 48);
    double coarseError = r.wanted("V") - ImmersedPart.of(coarse, WaterPlane.of(0, 0, 0)).volume();
    assertThat(coarseError / error).isBetween(3.8, 4.2);
  }

  static Stream<Reference> caps() {
    return Reference.of("sphere-cap");
  }

  @ParameterizedTest
  @MethodSource("caps")
  void a_cap_of_a_sphere_has_the_closed_form_volume_under_any_tilt(Reference r) {
    Solid sphere = Shapes.ellipsoid(1, 1, 1, 192);
    for (double heel : new double[] {0, 0.4, -2}) {
      WaterPlane plane = WaterPlane.of(heel, heel / 3, r.in("h") - 1);
      ImmersedPart part = ImmersedPart.of(sphere, plane);
      meets(r, "V", part.volume());
      meets(r, "centroid", part.centroid().norm());
      assertThat(part.centroid().unit().plus(plane.up()).norm()).isLessThan(1e-4);
      // The waterplane of a sphere is a circle of radius^2 = 1 - (1 - h)^2.
      double square = 1 - Math.pow(1 - r.in("h"), 2);
      assertThat(part.area()).isCloseTo(Math.PI * square, within(0.001));
      assertThat(part.transverseInertia()).isCloseTo(Math.PI * square * square / 4, within(0.001));
    }
  }

  @Test
  void under_and_over_any_plane_make_the_whole() {
    for (Solid solid : List.of(Shapes.trough(), Shapes.ellipsoid(2, 0.6, 0.4, 12))) {
      for (WaterPlane plane : planes(solid)) {
        ImmersedPart under = ImmersedPart.of(solid, plane);
        ImmersedPart over = ImmersedPart.of(solid, Shapes.turnedOver(plane));
        assertThat(under.volume() + over.volume())
            .as("%s", plane)
            .isCloseTo(solid.volume(), within(1e-11));
        assertThat(under.volume()).as("%s", plane).isBetween(-1e-12, solid.volume() + 1e-12);
        assertThat(moment(under).plus(moment(over)).minus(solid.moment()).norm())
            .as("%s", plane)
            .isLessThan(1e-10);
        Solid cut = solid.under(plane);
        assertThat(cut.volume()).as("%s", plane).isCloseTo(under.volume(), within(1e-11));
        assertThat(cut.moment().minus(moment(under)).norm()).as("%s", plane).isLessThan(1e-10);
      }
    }
  }

  private static Vector3 moment(ImmersedPart part) {
    return Math.abs(part.volume()) > 0 ? part.centroid().times(part.volume()) : Vector3.ZERO;
  }

  /** Five hundred at random, and those that meet corners, edges and faces squarely. */
  private static List<WaterPlane> planes(Solid solid) {
    Random random = new Random(20261125);
    List<WaterPlane> planes = new ArrayList<>();
    for (int i = 0; i < 500; i++) {
      Vector3 up = direction(random);
      Span reach = solid.extent(up);
      planes.add(new WaterPlane(up, reach.from() + random.nextDouble() * reach.length()));
    }
    for (int i = 0; i < solid.triangleCount(); i += 7) {
      List<Vector3> t = solid.triangle(i);
      Vector3 face = t.get(1).minus(t.get(0)).cross(t.get(2).minus(t.get(0))).unit();
      planes.add(new WaterPlane(face, face.dot(t.get(0))));
      planes.add(Shapes.turnedOver(planes.get(planes.size() - 1)));
      Vector3 up = direction(random);
      planes.add(new WaterPlane(up, up.dot(t.get(0))));
      Vector3 alongEdge = t.get(1).minus(t.get(0)).cross(up).unit();
      planes.add(new WaterPlane(alongEdge, alongEdge.dot(t.get(0))));
    }
    return planes;
  }

  private static Vector3 direction(Random random) {
    return Vector3.of(random.nextGaussian(), random.nextGaussian(), random.nextGaussian()).unit();
  }

  @Test
  void a_face_lying_in_the_water_takes_or_gives_nothing() {
    Solid block = Shapes.block(3, 2, 1);
    assertThat(ImmersedPart.of(block, WaterPlane.of(0, 0, 0)).volume()).isZero();
    assertThat(ImmersedPart.of(block, WaterPlane.of(0, 0, 1)).volume())
        .isCloseTo(6, within(NUMERIC));
    // The slot's bottom at the water: under it is 4 x 2 x 0.4.
    assertThat(ImmersedPart.of(Shapes.trough(), WaterPlane.of(0, 0, 0.4)).volume())
        .isCloseTo(3.2, within(NUMERIC));
  }

  @Test
  void a_hollow_waterplane_is_not_bridged() {
    ImmersedPart part = ImmersedPart.of(Shapes.trough(), WaterPlane.of(0, 0, 0.7));
    assertThat(part.volume()).isCloseTo(3.2 + 4 * 0.3, within(NUMERIC));
    assertThat(part.area()).isCloseTo(4, within(NUMERIC));
    // Two strips 0.5 wide about y = 0.75: 2 x 4 x (0.5^3/12 + 0.5 x 0.75^2).
    double inertia = 2 * 4 * (0.125 / 12 + 0.5 * 0.5625);
    assertThat(part.transverseInertia()).isCloseTo(inertia, within(NUMERIC));
  }

  @Test
  void nothing_under_water_has_no_centre() {
    ImmersedPart dry = ImmersedPart.of(Shapes.block(1, 1, 1), WaterPlane.of(0.2, 0.1, -2));
    assertThat(dry.volume()).isZero();
    assertThat(dry.area()).isZero();
    assertThatThrownBy(dry::centroid)
        .isInstanceOf(IllegalStateException.class)
        .hasMessage("Centre of buoyancy where nothing is immersed");
  }

  @Test
  void all_under_water_is_the_solid_itself() {
    Solid trough = Shapes.trough();
    ImmersedPart part = ImmersedPart.of(trough, WaterPlane.of(1.1, -0.4, 50));
    assertThat(part.volume()).isCloseTo(5.6, within(1e-11));
    assertThat(part.area()).isZero();
    assertThat(part.centroid().minus(trough.centroid()).norm()).isLessThan(1e-10);
  }

  @ParameterizedTest
  @ValueSource(doubles = {Math.PI / 2, -Math.PI / 2})
  void a_boat_standing_on_its_end_is_cut_like_any_other(double trim) {
    Solid block = Shapes.block(3, 2, 1);
    double submerged = 0.75;
    // Bow down: up is -x, and what lies under is x >= 3 - 0.75.
    double height = trim > 0 ? -(3 - submerged) : submerged;
    ImmersedPart part = ImmersedPart.of(block, WaterPlane.of(0, trim, height));
    assertThat(part.volume()).isCloseTo(2 * submerged, within(NUMERIC));
    double middle = trim > 0 ? 3 - submerged / 2 : submerged / 2;
    assertThat(part.centroid().minus(Vector3.of(middle, 0, 0.5)).norm()).isLessThan(1e-12);
    assertThat(part.area()).isCloseTo(2, within(NUMERIC));
    assertThat(part.transverseInertia()).isCloseTo(8.0 / 12, within(NUMERIC));
    assertThat(part.longitudinalInertia()).isCloseTo(2.0 / 12, within(NUMERIC));
  }

  @Test
  void a_mirrored_solid_gives_the_mirrored_answer() {
    Solid lopsided = Shapes.moved(Shapes.trough(), Vector3.of(0.3, 0.7, -0.2));
    Random random = new Random(3);
    for (int i = 0; i < 100; i++) {
      double heel = (random.nextDouble() - 0.5) * 6;
      double trim = (random.nextDouble() - 0.5) * 3;
      double height = random.nextDouble() - 0.5;
      ImmersedPart one = ImmersedPart.of(lopsided, WaterPlane.of(heel, trim, height));
      ImmersedPart other =
          ImmersedPart.of(Shapes.mirrored(lopsided), WaterPlane.of(-heel, trim, height));
      assertThat(other.volume()).isCloseTo(one.volume(), within(NUMERIC));
      assertThat(other.areaUU()).isCloseTo(one.areaUU(), within(1e-11));
      assertThat(other.areaVV()).isCloseTo(one.areaVV(), within(1e-11));
      assertThat(other.areaUV()).isCloseTo(-one.areaUV(), within(1e-11));
      assertThat(moment(other).mirrored().minus(moment(one)).norm()).isLessThan(1e-11);
    }
  }

  @Test
  void moving_the_origin_changes_nothing() {
    Vector3 by = Vector3.of(-7, 3.3, 11);
    Random random = new Random(4);
    for (int i = 0; i < 100; i++) {
      Vector3 up = direction(random);
      Solid trough = Shapes.trough();
      double height = up.dot(Vector3.of(2, 0, 0.4)) + 0.5 * (random.nextDouble() - 0.5);
      ImmersedPart here = ImmersedPart.of(trough, new WaterPlane(up, height));
      ImmersedPart there =
          ImmersedPart.of(Shapes.moved(trough, by), new WaterPlane(up, height + up.dot(by)));
      assertThat(there.volume()).isCloseTo(here.volume(), within(1e-11));
      assertThat(there.centroid().minus(here.centroid()).minus(by).norm()).isLessThan(1e-10);
      assertThat(there.transverseInertia()).isCloseTo(here.transverseInertia(), within(1e-9));
      assertThat(there.productInertia()).isCloseTo(here.productInertia(), within(1e-9));
    }
  }

  // dV/dd is the waterplane's area, d(momentU)/dd its first moment: by central differences.
  @Test
  void the_waterplane_is_the_slope_of_the_volume() {
    Random random = new Random(5);
    Solid solid = Shapes.ellipsoid(2, 0.6, 0.4, 16);
    double h = 1e-6;
    for (int i = 0; i < 50; i++) {
      WaterPlane plane = new WaterPlane(direction(random), (random.nextDouble() - 0.5) * 0.5);
      ImmersedPart at = ImmersedPart.of(solid, plane);
      ImmersedPart less = ImmersedPart.of(solid, plane.withHeight(plane.height() - h));
      ImmersedPart more = ImmersedPart.of(solid, plane.withHeight(plane.height() + h));
      assertThat((more.volume() - less.volume()) / (2 * h)).isCloseTo(at.area(), within(1e-7));
      assertThat((more.momentU() - less.momentU()) / (2 * h)).isCloseTo(at.areaU(), within(1e-7));
      assertThat((more.momentV() - less.momentV()) / (2 * h)).isCloseTo(at.areaV(), within(1e-7));
    }
  }

  private static void meets(Reference r, String name, double ours) {
    assertThat(ours).as(name).isCloseTo(r.wanted(name), within(r.near(name)));
  }
}
