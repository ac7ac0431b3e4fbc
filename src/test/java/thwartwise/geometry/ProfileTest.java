package thwartwise.geometry;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Blocks 4 x 1.4 x 0.6 seen from somewhere. */
class ProfileTest {
  private static final Solid BLOCK = Shapes.block(4, 1.4, 0.6);

  private static void near(Vector3 ours, Vector3 wanted) {
    assertThat(ours.minus(wanted).norm()).as("%s", ours).isLessThan(1e-12);
  }

  @Test
  void a_block_shows_one_face_along_each_axis() {
    Profile side = Profile.of(BLOCK, Vector3.of(0, 1, 0));
    assertThat(side.area()).isCloseTo(2.4, within(1e-12));
    near(side.centre(), Vector3.of(2, 0.7, 0.3));
    Profile bow = Profile.of(BLOCK, Vector3.of(1, 0, 0));
    assertThat(bow.area()).isCloseTo(0.84, within(1e-12));
    near(bow.centre(), Vector3.of(4, 0, 0.3));
    Profile other = Profile.of(BLOCK, Vector3.of(0, -1, 0));
    assertThat(other.area()).isCloseTo(2.4, within(1e-12));
    near(other.centre(), Vector3.of(2, -0.7, 0.3));
  }

  // Heeled with nothing out, seen level from the high side: side and bottom, L (h cos + B sin) by
  // what each reaches down; the centre lies halfway down.
  @ParameterizedTest
  @ValueSource(doubles = {0.05, 0.2, 0.6})
  void a_heeled_block_is_seen_to_its_low_chine(double heel) {
    WaterPlane plane = WaterPlane.of(heel, 0, 5);
    Profile seen = Profile.of(BLOCK, plane.athwart());
    double reach = 0.6 * Math.cos(heel) + 1.4 * Math.sin(heel);
    assertThat(seen.area()).isCloseTo(4 * reach, within(1e-12));
    double top = plane.up().dot(Vector3.of(0, 0.7, 0.6));
    assertThat(plane.up().dot(seen.centre())).isCloseTo(top - reach / 2, within(1e-12));
    assertThat(seen.centre().x()).isCloseTo(2, within(1e-12));
  }

  @Test
  void only_what_is_under_water_is_seen_of_a_cut_block() {
    WaterPlane water = WaterPlane.of(0, 0, 0.2);
    Profile seen = Profile.of(BLOCK.under(water), water.athwart());
    assertThat(seen.area()).isCloseTo(0.8, within(1e-12));
    near(seen.centre(), Vector3.of(2, 0.7, 0.1));
  }

  // An ellipsoid's shadow is an ellipse; n facets fall short by (pi/n)2 of a bit under one.
  @Test
  void an_ellipsoid_shows_an_ellipse() {
    Solid solid = Shapes.ellipsoid(2, 0.6, 0.4, 96);
    Profile seen = Profile.of(solid, Vector3.of(0, 1, 0));
    assertThat(seen.area()).isCloseTo(Math.PI * 2 * 0.4, within(0.003));
    assertThat(seen.centre().x()).isCloseTo(0, within(1e-9));
    assertThat(seen.centre().z()).isCloseTo(0, within(1e-9));
  }

  @Test
  void nothing_shows_nothing() {
    Profile none = Profile.of(Solid.EMPTY, Vector3.of(0, 1, 0));
    assertThat(none.area()).isZero();
    assertThat(none.centre()).isEqualTo(Vector3.ZERO);
  }
}
