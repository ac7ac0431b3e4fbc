package thwartwise.electrics;

import static org.assertj.core.api.Assertions.within;
import static thwartwise.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import thwartwise.electrics.Circuit.Use;
import thwartwise.electrics.CircuitSums.Fault;

class CircuitSumsTest {
  /** A motor of 30 A, 2 m away, on 10 mm2 in open air, guarded by 40 A at the battery. */
  private record Wires(
      double current,
      Optional<Double> mm2,
      Optional<Boolean> alone,
      Optional<Double> fuse,
      Optional<Double> at,
      Optional<Boolean> sheathed,
      Optional<String> switched) {

    static Wires good() {
      return new Wires(
          30,
          Optional.of(10.0),
          Optional.of(true),
          Optional.of(40.0),
          Optional.of(0.15),
          Optional.empty(),
          Optional.of("plug"));
    }

    CircuitSums sums() {
      return CircuitSums.of(
          new Circuit(
              "motor",
              Use.MOTOR,
              current,
              2,
              mm2.map(a -> a * 1e-6),
              Optional.empty(),
              Optional.empty(),
              alone,
              fuse,
              at,
              sheathed,
              switched,
              Optional.empty()),
          12);
    }

    Wires fuse(Optional<Double> amperes) {
      return new Wires(current, mm2, alone, amperes, at, sheathed, switched);
    }

    Wires at(Optional<Double> metres, boolean covered) {
      return new Wires(current, mm2, alone, fuse, metres, Optional.of(covered), switched);
    }

    Wires wire(Optional<Double> area, Optional<Boolean> open) {
      return new Wires(current, area, open, fuse, at, sheathed, switched);
    }
  }

  /** DERIVED: 1.7871e-8 x 2 x 2 x 30 / 10e-6 = 0.2145 V of 12, and AWG 8 stands for 10 mm2. */
  @Test
  void good_wires_have_no_fault() {
    CircuitSums sums = Wires.good().sums();
    assertThat(sums.faults()).isEmpty();
    assertThat(sums.drop().orElseThrow()).isCloseTo(0.21445, within(0.0001));
    assertThat(sums.carries()).hasValue(55.0);
    assertThat(sums.fuse()).isEqualTo(40);
  }

  /** DERIVED: six tenths of 55 A are 33, less than the fuse. */
  @Test
  void in_a_bundle_the_same_wire_is_too_thin_for_its_fuse() {
    CircuitSums sums = Wires.good().wire(Optional.of(10.0), Optional.empty()).sums();
    assertThat(sums.carries().orElseThrow()).isCloseTo(33, within(1e-9));
    assertThat(sums.faults()).containsExactly(Fault.FUSE_OVER_WIRE);
    // 40 A over 0.6 are 66.7: AWG 6 of 80 A, sold as 16 mm2.
    assertThat(WireSize.gauge(sums.wanted())).hasValue(6);
    assertThat(WireSize.metric(sums.wanted())).isCloseTo(16e-6, within(1e-12));
  }

  @Test
  void a_fuse_of_the_wire_and_of_the_draw_is_told_on_both_sides() {
    assertThat(Wires.good().fuse(Optional.of(0.0)).sums().faults()).containsExactly(Fault.NO_FUSE);
    assertThat(Wires.good().fuse(Optional.empty()).sums().faults())
        .containsExactly(Fault.FUSE_NOT_STATED);
    assertThat(Wires.good().fuse(Optional.of(37.0)).sums().faults())
        .containsExactly(Fault.FUSE_UNDER_DRAW);
    assertThat(Wires.good().fuse(Optional.of(37.5)).sums().faults()).isEmpty();
    assertThat(Wires.good().fuse(Optional.of(55.0)).sums().faults()).isEmpty();
    assertThat(Wires.good().fuse(Optional.of(56.0)).sums().faults())
        .containsExactly(Fault.FUSE_OVER_WIRE);
  }

  @Test
  void a_fuse_far_from_the_battery_is_let_be_only_in_a_sheath() {
    assertThat(Wires.good().at(Optional.of(0.1778), false).sums().faults()).isEmpty();
    assertThat(Wires.good().at(Optional.of(0.18), false).sums().faults())
        .containsExactly(Fault.FUSE_TOO_FAR);
    // In a sheath the wire may carry 0.7 x 55 A = 38.5 A.
    Wires fused = Wires.good().fuse(Optional.of(37.5));
    assertThat(fused.at(Optional.of(1.0), true).sums().faults()).isEmpty();
    assertThat(fused.at(Optional.of(1.02), true).sums().faults())
        .containsExactly(Fault.FUSE_TOO_FAR);
    assertThat(fused.at(Optional.empty(), true).sums().faults())
        .containsExactly(Fault.FUSE_PLACE_NOT_STATED);
  }

  /** Nobody said that a sheath covers it, so none does. */
  @Test
  void a_fuse_as_far_as_a_sheath_allows_is_too_far_where_nobody_spoke_of_one() {
    Wires far =
        new Wires(
            30,
            Optional.of(10.0),
            Optional.of(true),
            Optional.of(40.0),
            Optional.of(0.5),
            Optional.empty(),
            Optional.of("plug"));
    assertThat(far.sums().faults()).containsExactly(Fault.FUSE_TOO_FAR);
  }

  /** Trade practice, FROM MEMORY: 0.7 for three wires, 0.6 for six, 0.5 for 24, 0.4 for more. */
  @ParameterizedTest
  @CsvSource({"2, 0.7", "3, 0.7", "4, 0.6", "6, 0.6", "7, 0.5", "24, 0.5", "25, 0.4"})
  void wires_that_lie_together_carry_less_the_more_they_are(int wires, double share) {
    assertThat(Ampacity.together(wires)).isEqualTo(share);
  }

  /**
   * DERIVED: 55 A of AWG 8 at 60 C, alone, in a pipe of its own, with one, with three others. Alone
   * in the open air and in a sheath contradict each other; the sheath counts.
   */
  @ParameterizedTest
  @CsvSource({
    "1, true, false, 55",
    "1, false, true, 38.5",
    "1, true, true, 38.5",
    "1, false, false, 33",
    "2, false, true, 33",
    "3, false, false, 33",
    "4, false, false, 27.5",
    "4, true, false, 55"
  })
  void the_circuits_of_a_boat_count_as_lying_together(
      int circuits, boolean alone, boolean piped, double carries) {
    List<Circuit> all =
        IntStream.range(0, circuits)
            .mapToObj(i -> circuit("lamp " + i, Optional.of(alone), Optional.of(piped)))
            .toList();
    assertThat(CircuitSums.of(system(all)))
        .hasSize(circuits)
        .allSatisfy(
            sums -> assertThat(sums.carries().orElseThrow()).isCloseTo(carries, within(1e-9)));
  }

  /** A pipe to the bow warms no bundle at the stern. */
  @Test
  void a_pipe_and_a_bundle_are_counted_each_by_itself() {
    List<Circuit> all =
        List.of(
            circuit("bow lamp", Optional.of(false), Optional.of(true)),
            circuit("pump", Optional.of(false), Optional.of(false)),
            circuit("socket", Optional.empty(), Optional.empty()),
            circuit("motor", Optional.of(true), Optional.of(false)));
    assertThat(CircuitSums.of(system(all)))
        .extracting(s -> s.share())
        .containsExactly(0.7, 0.6, 0.6, 1.0);
  }

  /** A charger is not behind the main fuse: its wire begins at the battery. */
  @Test
  void behind_a_main_fuse_a_lamp_counts_from_the_block_and_a_charger_from_the_battery() {
    Circuit lamp = fusedAt(Use.LAMP, 0.6);
    Circuit charger = fusedAt(Use.CHARGE, 0.6);
    MainWire main =
        new MainWire(
            Optional.of(30.0),
            Optional.of(0.1),
            Optional.of(0.5),
            Optional.of(10e-6),
            Optional.empty(),
            Optional.empty(),
            Optional.of(true),
            Optional.of(false));
    List<CircuitSums> sums =
        CircuitSums.of(
            ElectricalSystem.NONE.withCircuits(
                List.of(lamp, charger), Optional.of("key"), Optional.of(main)));
    assertThat(sums.get(0).faults()).isEmpty();
    assertThat(sums.get(0).fuseWithin()).isCloseTo(0.5 + 0.1778, within(1e-9));
    assertThat(sums.get(1).faults()).containsExactly(Fault.FUSE_TOO_FAR);
  }

  /**
   * 0.5 m of 10 mm2 carry 31 A, then 1.5 m of 1.5 mm2 the lamp's one. DERIVED: 1.78706e-8 x 2 x
   * (0.5 x 31 / 10e-6 + 1.5 x 1 / 1.5e-6) = 0.0554 + 0.0357 V; the charger is not behind it.
   */
  @Test
  void a_lamp_loses_by_what_the_motor_draws_through_the_main_wire() {
    List<CircuitSums> sums = behindMainWire(0.5, 10e-6);
    CircuitSums lamp = sums.get(1);
    assertThat(lamp.main().volts()).isCloseTo(0.0554, within(1e-4));
    assertThat(lamp.drop().orElseThrow()).isCloseTo(0.0911, within(1e-4));
    // 0.36 V less 0.0554 are left to 1.5 m of its own.
    assertThat(lamp.areaFor(0.03)).isCloseTo(1.7601e-7, within(1e-10));
    assertThat(lamp.isMainTooThin()).isFalse();
    assertThat(sums.get(2).main().volts()).isZero();
  }

  /** DERIVED: 1.78706e-8 x 2 x 2 x 31 / 5e-6 = 0.443 V, more than 3 % of 12 V. */
  @Test
  void behind_a_main_wire_that_loses_too_much_no_wire_of_its_own_is_thick_enough() {
    CircuitSums lamp = behindMainWire(2, 5e-6).get(1);
    assertThat(lamp.faults()).contains(Fault.DROP_TOO_GREAT);
    assertThat(lamp.isMainTooThin()).isTrue();
    assertThat(lamp.areaFor(0.03)).isNaN();
    assertThat(lamp.wanted()).isNaN();
  }

  private static List<CircuitSums> behindMainWire(double length, double area) {
    MainWire main =
        new MainWire(
            Optional.of(40.0),
            Optional.of(0.1),
            Optional.of(length),
            Optional.of(area),
            Optional.empty(),
            Optional.empty(),
            Optional.of(true),
            Optional.empty());
    List<Circuit> circuits =
        List.of(drawing(Use.MOTOR, 30), drawing(Use.LIGHTS, 1), drawing(Use.CHARGE, 1));
    return CircuitSums.of(
        ElectricalSystem.NONE.withCircuits(circuits, Optional.of("key"), Optional.of(main)));
  }

  private static Circuit drawing(Use use, double current) {
    return new Circuit(
        use.word(),
        use,
        current,
        2,
        Optional.of(1.5e-6),
        Optional.empty(),
        Optional.empty(),
        Optional.of(true),
        Optional.of(2.0),
        Optional.of(0.1),
        Optional.empty(),
        Optional.of("toggle"),
        Optional.empty());
  }

  private static Circuit fusedAt(Use use, double at) {
    return new Circuit(
        use.word(),
        use,
        1,
        2,
        Optional.of(10e-6),
        Optional.empty(),
        Optional.empty(),
        Optional.of(true),
        Optional.of(5.0),
        Optional.of(at),
        Optional.empty(),
        Optional.of("toggle"),
        Optional.empty());
  }

  private static ElectricalSystem system(List<Circuit> circuits) {
    return ElectricalSystem.NONE.withCircuits(circuits, Optional.of("key"), Optional.empty());
  }

  private static Circuit circuit(String name, Optional<Boolean> alone, Optional<Boolean> piped) {
    return new Circuit(
        name,
        Use.LAMP,
        1,
        2,
        Optional.of(10e-6),
        Optional.empty(),
        Optional.empty(),
        alone,
        Optional.of(5.0),
        Optional.of(0.1),
        piped,
        Optional.of("toggle"),
        Optional.empty());
  }

  /** 33 CFR 183.425, table 5, READ. */
  @Test
  void insulation_between_two_columns_counts_as_the_weaker() {
    double awg12 = WireSize.ofGauge(12);
    assertThat(Ampacity.ofArea(awg12, 60)).hasValue(25);
    assertThat(Ampacity.ofArea(awg12, 74)).hasValue(25);
    assertThat(Ampacity.ofArea(awg12, 90)).hasValue(40);
    assertThat(Ampacity.ofArea(awg12, 104)).hasValue(40);
    assertThat(Ampacity.ofArea(awg12, 105)).hasValue(45);
    assertThat(Ampacity.ofArea(WireSize.ofGauge(2), 60)).hasValue(140);
    assertThat(Ampacity.ofArea(WireSize.ofGauge(18), 200)).hasValue(25);
  }

  @Test
  void a_thin_wire_loses_too_much_or_may_carry_nothing() {
    assertThat(Wires.good().wire(Optional.of(4.0), Optional.of(true)).sums().faults())
        .containsExactly(Fault.FUSE_OVER_WIRE, Fault.WIRE_UNDER_DRAW, Fault.DROP_TOO_GREAT);
    assertThat(Wires.good().wire(Optional.of(0.8), Optional.of(true)).sums().faults())
        .contains(Fault.WIRE_TOO_THIN);
    CircuitSums unknown = Wires.good().wire(Optional.empty(), Optional.of(true)).sums();
    assertThat(unknown.faults()).containsExactly(Fault.WIRE_NOT_STATED);
    assertThat(unknown.drop()).isEmpty();
    assertThat(unknown.carries()).isEmpty();
  }

  @Test
  void what_no_wire_or_fuse_can_do_is_not_a_number() {
    CircuitSums huge =
        new Wires(
                390,
                Optional.of(70.0),
                Optional.of(true),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty())
            .sums();
    assertThat(huge.fuse()).isNaN();
    assertThat(huge.wanted()).isNaN();
    assertThat(huge.faults()).contains(Fault.NO_SWITCH, Fault.WIRE_UNDER_DRAW);
  }
}
