package thwartwise.inspection;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import thwartwise.boat.Boat;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.Kit;
import thwartwise.electrics.ElectricMotor;
import thwartwise.electrics.ElectricalSystem;
import thwartwise.geometry.Vector3;

/** A box 4 m long and 1.2 m wide with a motor of 10 kg, on paper. */
class ShallowWaterTest {
  private static final double MASS = 240;
  private static final double DRAFT = MASS / 1000 / 4.8;

  /** Hull and motor about (2, 0, 0.2), so that it floats level. */
  private static Boat boat(Optional<Double> reach, Optional<Double> tilted, Optional<Double> aft) {
    Vector3 motor = Vector3.of(0, 0, 0.3);
    Vector3 hull = Vector3.of((MASS * 2 - 0) / (MASS - 10), 0, (MASS * 0.2 - 3) / (MASS - 10));
    Boat box = BoxBoat.of(4, 1.2, 0.45).hull(MASS - 10, hull).weight("motor", 10, motor).boat();
    ElectricMotor plate =
        new ElectricMotor(
            Optional.of("motor"),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            reach,
            tilted,
            aft);
    return box.withElectrics(ElectricalSystem.NONE.withMotor(Optional.of(plate)));
  }

  private static ShallowWater of(double reach, double tilted, double aft) {
    return ShallowWater.of(
            boat(Optional.of(reach), Optional.of(tilted), Optional.of(aft)), BoxBoat.TODAY)
        .orElseThrow();
  }

  @Test
  void the_water_it_wants_is_the_draft_and_what_the_motor_reaches_below_the_bottom() {
    ShallowWater water = of(0.35, -0.10, 0.5);
    assertThat(water.down().draft()).isCloseTo(DRAFT, within(1e-6));
    assertThat(water.reach().orElseThrow()).isCloseTo(DRAFT + 0.35, within(1e-6));
    assertThat(water.motorAboveBottom()).isFalse();
    assertThat(of(-0.02, -0.10, 0.5).motorAboveBottom()).isTrue();
  }

  /** DERIVED: W GM t = w a, BM = L²/(12 T), and for a box BM grows with t²/2, here nothing. */
  @Test
  void tilting_it_takes_its_weight_aft_and_the_stern_down() {
    ShallowWater water = of(0.35, -0.10, 0.5);
    assertThat(water.moment().orElseThrow()).isCloseTo(10 * 9.80665 * 0.5, within(1e-9));
    double gm = DRAFT / 2 + 16 / (12 * DRAFT) - 0.2;
    double trim = 10 * 0.5 / (MASS * gm);
    RestFigures tilted = water.tilted().orElseThrow();
    assertThat(tilted.trim()).isCloseTo(-trim, within(0.001 * trim));
    assertThat(tilted.draft()).isCloseTo(DRAFT + 2 * trim, within(1e-5));
    assertThat(tilted.freeboard()).isCloseTo(0.45 - DRAFT - 2 * trim, within(1e-5));
    // Half a metre behind the stern and a tenth above the bottom.
    assertThat(water.tiltedReach().orElseThrow())
        .isCloseTo(DRAFT - 0.10 + 2.5 * trim, within(1e-5));
  }

  @Test
  void what_nobody_measured_is_no_figure() {
    assertThat(
            ShallowWater.of(
                boat(Optional.empty(), Optional.empty(), Optional.empty()), BoxBoat.TODAY))
        .isEmpty();
    ShallowWater down =
        ShallowWater.of(boat(Optional.of(0.3), Optional.empty(), Optional.empty()), BoxBoat.TODAY)
            .orElseThrow();
    assertThat(down.tilted()).isEmpty();
    assertThat(down.tiltedReach()).isEmpty();
    assertThat(down.moment()).isEmpty();
    Boat ashore =
        boat(Optional.of(0.3), Optional.empty(), Optional.empty()).withKit(List.<Kit>of());
    assertThat(ShallowWater.of(ashore, BoxBoat.TODAY)).isEmpty();
  }
}
