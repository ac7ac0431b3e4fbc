package thwartwise.afloat;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.geometry.Immersion;
import thwartwise.geometry.Vector3;
import thwartwise.geometry.WaterPlane;

/** A boat held at a heel, its trim free. */
class TrimBalanceTest {
  private final FloatingBody wedge =
      new FloatingBody(
          1.2,
          Vector3.of(0.3, 0.05, 0.3),
          List.of(
              new Lift(Blocks.block(4, 1.2, 0.7), 1),
              new Lift(
                  Blocks.prism(
                      1,
                      List.of(
                          new double[] {-0.2, -0.4},
                          new double[] {0.5, 0.1},
                          new double[] {-0.5, 0.1})),
                  0.6)),
          1);

  private static Optional<HeldHeel> held(FloatingBody floating, double heel, double trim) {
    return TrimBalance.at(floating, heel, trim, 0.2, new Immersion());
  }

  /** The boat at the plane of a balance, with its height found finely. */
  private HydrostaticState exactly(HeldHeel found) {
    return HydrostaticState.at(wedge, found.plane().up(), found.plane().height(), new Immersion())
        .orElseThrow();
  }

  @Test
  void from_any_trim_it_comes_to_the_same_balance() {
    for (double heel : new double[] {0, 0.3, -0.6}) {
      double trim = held(wedge, heel, 0).orElseThrow().plane().trim();
      for (double start : new double[] {-0.5, -0.1, -0.02, 0.02, 0.1, 0.5}) {
        HeldHeel found = held(wedge, heel, start).orElseThrow();
        assertThat(found.plane().heel()).isCloseTo(heel, within(1e-12));
        assertThat(found.plane().trim()).isCloseTo(trim, within(1e-9));
        HydrostaticState exact = exactly(found);
        assertThat(Math.abs(exact.trimMoment)).isLessThan(1e-10);
        assertThat(found.plane().height()).isCloseTo(exact.plane.height(), within(1e-10));
        assertThat(found.energy()).isCloseTo(exact.energy, within(1e-12));
        assertThat(found.heelMoment()).isCloseTo(exact.heelMoment, within(1e-10));
      }
    }
  }

  @Test
  void the_balance_has_less_energy_than_any_trim_beside_it() {
    for (double heel = -1.2; heel < 1.3; heel += 0.2) {
      HeldHeel found = held(wedge, heel, 0).orElseThrow();
      for (double by : new double[] {-0.05, -0.01, 0.01, 0.05}) {
        HydrostaticState beside =
            HydrostaticState.at(
                    wedge,
                    WaterPlane.upward(heel, found.plane().trim() + by),
                    found.plane().height(),
                    new Immersion())
                .orElseThrow();
        assertThat(beside.energy).isGreaterThan(found.energy());
      }
    }
  }

  // References A25 (DERIVED, wall-sided loll: tan = sqrt(-2 GM / BM)), here lengthwise: a box of
  // draft 3 with BM 2.0 and GM -0.10 comes to rest at 17.548 degrees.
  @Test
  void where_the_energy_is_no_bowl_it_still_goes_down() {
    Lift box = new Lift(Blocks.block(Math.sqrt(72), 40, 8), 1);
    FloatingBody tender =
        new FloatingBody(3 * 40 * Math.sqrt(72), Vector3.of(0, 0, 3.6), List.of(box), 1);
    HydrostaticState start =
        HydrostaticState.at(tender, WaterPlane.upward(0, 0.01), 3, new Immersion()).orElseThrow();
    assertThat(start.restoring.trim()).isNegative();
    HeldHeel found = held(tender, 0, 0.01).orElseThrow();
    assertThat(Math.toDegrees(found.plane().trim())).isCloseTo(17.548, within(0.0006));
    assertThat(found.state().restoring.trim()).isPositive();
  }

  @Test
  void what_sinks_has_no_balance() {
    FloatingBody heavy = new FloatingBody(100, wedge.centre(), wedge.lifts(), 1);
    assertThat(held(heavy, 0.1, 0)).isEmpty();
  }
}
