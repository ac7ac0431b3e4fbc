package thwartwise.afloat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;
import static thwartwise.afloat.BoxAfloat.meets;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.afloat.EquilibriumUnderForces.Force;
import thwartwise.geometry.Reference;
import thwartwise.geometry.Vector3;

/** Boxes under a horizontal force, and boxes whose load moves all at once. */
class PulledBoxTest {

  static Stream<Reference> held() {
    return Reference.of("couple-rest");
  }

  @ParameterizedTest
  @MethodSource("held")
  void a_couple_heels_or_trims_a_box_until_its_righting_moment_answers(Reference r) {
    Vector3 reaction = Vector3.of(0.4, -0.1, 0.05);
    Vector3 at = reaction.plus(Vector3.of(r.in("armX", 0), r.in("armY", 0), r.in("armZ")));
    Couple couple =
        r.inputs().containsKey("ahead")
            ? Couple.ahead(r.in("ahead"), at, reaction)
            : Couple.toPort(r.in("toPort"), at, reaction);
    Equilibria found = Equilibrium.from(BoxAfloat.of(r).pulledBy(List.of(couple)));
    assertThat(found.reached()).hasSize(1);
    Pose pose = found.reached().get(0);
    assertThat(pose.stable()).isTrue();
    meets(r, "heel", Math.toDegrees(pose.heel()));
    meets(r, "trim", Math.toDegrees(pose.trim()));
    meets(r, "lever", couple.lever(pose.plane()));
  }

  static Stream<Reference> pulled() {
    return Reference.of("pulled-rest");
  }

  @ParameterizedTest
  @MethodSource("pulled")
  void a_pull_is_answered_at_the_middle_of_what_is_seen_under_water(Reference r) {
    Force force = new Force(at(r), r.in("ahead", 0), r.in("toPort", 0));
    EquilibriumUnderForces pulled =
        EquilibriumUnderForces.of(BoxAfloat.of(r), List.of(force), BoxAfloat.hull(r));
    assertThat(pulled.rest().reached()).hasSize(1);
    Pose pose = pulled.rest().reached().get(0);
    meets(r, "heel", Math.toDegrees(pose.heel()));
    meets(r, "trim", Math.toDegrees(pose.trim()));
    assertThat(pulled.couples()).hasSize(1);
    meets(r, "lever", pulled.couples().get(0).lever(pose.plane()));
  }

  private static Vector3 at(Reference r) {
    return r.inputs().containsKey("ahead")
        ? Vector3.of(r.in("at"), 0, r.in("z"))
        : Vector3.of(0, r.in("at"), r.in("z"));
  }

  static Stream<Reference> swung() {
    return Reference.of("swing");
  }

  @ParameterizedTest
  @MethodSource("swung")
  void a_box_swings_to_where_the_closed_form_energy_is_back(Reference r) {
    FloatingBody after = BoxAfloat.of(r);
    double start = Math.toRadians(r.in("start"));
    DynamicHeel swing =
        DynamicHeel.of(after, start, BoxAfloat.side(r), BoxAfloat.rail(r)).orElseThrow();
    if (r.wants("flooding")) {
      assertThat(swing.heel()).isEmpty();
      assertThat(swing.floodingAt()).isEqualTo("rail");
      meets(r, "flooding", Math.toDegrees(swing.flooding().orElseThrow()));
    } else {
      double turns = swing.heel().orElseThrow();
      swing.flooding().ifPresent(f -> assertThat(f).isGreaterThan(turns));
      meets(r, "heel", Math.toDegrees(swing.heel().orElseThrow()));
      double rest = Equilibrium.from(after).worst().orElseThrow().heel();
      meets(r, "static", Math.toDegrees(rest * BoxAfloat.side(r).sign()));
      assertThat(rest).isNotCloseTo(0, within(1e-3));
    }
  }
}
