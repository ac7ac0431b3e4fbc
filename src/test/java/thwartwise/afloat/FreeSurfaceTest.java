package thwartwise.afloat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;
import static thwartwise.afloat.BoxAfloat.meets;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.geometry.Reference;

/** Loose water in a box: what it takes upright, heeled and where the boat comes to rest. */
class FreeSurfaceTest {

  static Stream<Reference> upright() {
    return Reference.of("free-surface");
  }

  @ParameterizedTest
  @MethodSource("upright")
  void a_free_surface_takes_its_second_moment_over_the_displacement(Reference r) {
    Pose loose = onlyPose(BoxAfloat.of(r));
    Pose frozen = onlyPose(BoxAfloat.frozen(r));
    assertThat(loose.tilt()).isLessThan(1e-6);
    assertThat(loose.plane().height()).isCloseTo(frozen.plane().height(), within(1e-9));
    meets(r, "GM", loose.metacentricHeight());
    double loss = frozen.metacentricHeight() - loose.metacentricHeight();
    meets(r, "i", loss * loose.neededVolume());
  }

  private static Pose onlyPose(FloatingBody floating) {
    Equilibria found = Equilibrium.from(floating);
    assertThat(found.reached()).hasSize(1);
    return found.reached().get(0);
  }

  static Stream<Reference> heeled() {
    return Reference.of("loose-arm");
  }

  @ParameterizedTest
  @MethodSource("heeled")
  void loose_water_heels_with_the_boat_by_no_small_angle_rule(Reference r) {
    RightingCurve curve =
        RightingCurve.toward(BoxAfloat.side(r), BoxAfloat.of(r), List.of()).orElseThrow();
    meets(r, "arm", curve.points().get((int) r.in("heel")).arm());
    assertThat(curve.mass()).isCloseTo(r.in("m") + 1000 * r.in("w"), within(1e-9));
  }

  static Stream<Reference> resting() {
    return Reference.of("loose-rest");
  }

  @ParameterizedTest
  @MethodSource("resting")
  void a_boat_with_loose_water_comes_to_rest_where_the_cubic_says(Reference r) {
    Equilibria found = Equilibrium.from(BoxAfloat.of(r));
    assertThat(found.reached()).hasSize((int) r.in("poses"));
    assertThat(found.allStable()).isTrue();
    for (Pose pose : found.reached()) {
      meets(r, "tilt", Math.toDegrees(Math.abs(pose.heel())));
      meets(r, "heel", Math.toDegrees(pose.heel()));
      meets(r, "GM", pose.metacentricHeight());
      assertThat(pose.trim()).isCloseTo(0, within(1e-8));
    }
  }
}
