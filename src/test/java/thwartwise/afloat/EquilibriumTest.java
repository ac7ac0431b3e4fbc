package thwartwise.afloat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EquilibriumTest {

  // References A2 (READ, Barrass & Derrett, Ship Stability for Masters and Mates, p. 130, Ex. 2):
  // box 65 x 12 m, draft 4, KG 4: KB 2, BM 3, KM 5, GM 1 m.
  @Test
  void a_box_floats_upright_with_the_published_metacentric_height() {
    FloatingBody box = Blocks.floating(Blocks.block(65, 12, 8), 65 * 12 * 4, 4);
    Equilibria found = Equilibrium.from(box);
    assertThat(found.reached()).hasSize(1);
    Pose pose = found.reached().get(0);
    assertThat(pose.plane().height()).isCloseTo(4, within(1e-9));
    assertThat(pose.part().centroid().z()).isCloseTo(2, within(1e-9));
    assertThat(pose.metacentricHeight()).isCloseTo(1, within(1e-9));
    assertThat(pose.word()).isEqualTo("upright");
    assertThat(pose.stable()).isTrue();
  }

  // References A25 (DERIVED, wall-sided loll: tan φ = sqrt(-2 GM / BM)):
  // GM -0.10, BM 2.0 -> 17.548 deg; GM at loll -2 GM / cos φ = 0.2098 m.
  @ParameterizedTest
  @CsvSource({"-0.10, 2.0, 17.548, 0.2098", "-0.05, 1.2, 16.102, 0.1041"})
  void a_tender_box_lolls_to_both_sides(double gm, double bm, double angle, double gmAtLoll) {
    double draft = 3;
    double breadth = Math.sqrt(12 * draft * bm);
    double heightOfG = draft / 2 + bm - gm;
    FloatingBody box =
        Blocks.floating(Blocks.block(40, breadth, 8), 40 * breadth * draft, heightOfG);
    Equilibria found = Equilibrium.from(box);
    assertThat(found.reached()).hasSize(2).allMatch(Pose::stable);
    assertThat(found.reached())
        .extracting(p -> Math.toDegrees(p.heel()))
        .anySatisfy(h -> assertThat(h).isCloseTo(angle, within(0.0006)))
        .anySatisfy(h -> assertThat(h).isCloseTo(-angle, within(0.0006)));
    assertThat(found.reached().get(0).metacentricHeight()).isCloseTo(gmAtLoll, within(0.00006));
  }

  // References A17, A25 (DERIVED, well known): a homogeneous square log floats flat only when its
  // specific gravity is under 0.2113 or over 0.7887.
  @ParameterizedTest
  @CsvSource({"0.2110, true", "0.2117, false", "0.5, false", "0.7883, false", "0.7890, true"})
  void a_square_log_floats_flat_only_outside_the_band(double gravity, boolean flat) {
    FloatingBody log = Blocks.floating(Blocks.block(4, 1, 1), 4 * gravity, 0.5);
    Equilibria found = Equilibrium.from(log);
    assertThat(found.exist()).isTrue();
    double tilt = Math.toDegrees(found.worst().orElseThrow().tilt());
    if (flat) {
      assertThat(tilt).isLessThan(0.01);
    } else {
      assertThat(tilt).isGreaterThan(0.5);
    }
  }

  @Test
  void what_displaces_less_than_it_weighs_sinks() {
    Equilibria found = Equilibrium.from(Blocks.floating(Blocks.block(1, 1, 1), 1.001, 0.5));
    assertThat(found.exist()).isFalse();
    assertThat(found.ending()).isEqualTo(Equilibria.Ending.SINKS);
  }
}
