package thwartwise.afloat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;
import static thwartwise.afloat.BoxAfloat.meets;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.geometry.Reference;

/** Boxes with their weight off the middle or off amidships, by the wall-sided cubic. */
class LopsidedBoxTest {

  static Stream<Reference> resting() {
    return Reference.of("lopsided-rest");
  }

  @ParameterizedTest
  @MethodSource("resting")
  void a_lopsided_box_rests_where_the_cubic_says(Reference r) {
    Pose pose = Equilibrium.from(BoxAfloat.of(r)).worst().orElseThrow();
    assertThat(pose.stable()).isTrue();
    meets(r, "heel", Math.toDegrees(pose.heel()));
    meets(r, "trim", Math.toDegrees(pose.trim()));
    meets(r, "GM", pose.metacentricHeight());
    meets(r, "aft", BoxAfloat.draughtAt(pose, -r.in("L") / 2, 0));
    meets(r, "fore", BoxAfloat.draughtAt(pose, r.in("L") / 2, 0));
    meets(r, "freeboard", Freeboard.least(BoxAfloat.rail(r), pose.plane()).height());
  }

  static Stream<Reference> arms() {
    return Reference.of("lopsided-arm");
  }

  @ParameterizedTest
  @MethodSource("arms")
  void a_lopsided_box_rights_itself_by_another_arm_on_each_side(Reference r) {
    RightingCurve curve =
        RightingCurve.toward(BoxAfloat.side(r), BoxAfloat.of(r), java.util.List.of()).orElseThrow();
    meets(r, "arm", curve.points().get((int) r.in("heel")).arm());
  }

  static Stream<Reference> flooding() {
    return Reference.of("flooding");
  }

  @ParameterizedTest
  @MethodSource("flooding")
  void a_box_floods_at_the_closed_form_heel_moment_and_energy(Reference r) {
    RightingCurve curve =
        RightingCurve.toward(BoxAfloat.side(r), BoxAfloat.of(r), BoxAfloat.rail(r)).orElseThrow();
    meets(r, "heel", Math.toDegrees(curve.floodingHeel().orElseThrow()));
    meets(r, "moment", curve.moment(curve.flooding().orElseThrow()));
    meets(r, "energy", curve.energy());
    assertThat(curve.end()).isEqualTo(new RightingCurve.End("rail", false));
    assertThat(curve.last().plane().trim()).isCloseTo(0, within(1e-9));
  }
}
