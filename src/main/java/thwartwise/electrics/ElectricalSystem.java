package thwartwise.electrics;

import java.util.List;
import java.util.Optional;

/**
 * The electrical equipment of a boat.
 *
 * @param latitude where the boat is kept, rad, south negative
 * @param mainSwitch what cuts off everything at once
 * @param mainWire from the battery to where the circuits part, with its fuse
 */
public record ElectricalSystem(
    Optional<Battery> battery,
    Optional<ElectricMotor> motor,
    List<TimedRun> runs,
    Optional<SolarPanel> panel,
    Optional<Double> latitude,
    Optional<String> mainSwitch,
    Optional<MainWire> mainWire,
    List<Circuit> circuits) {

  public static final ElectricalSystem NONE =
      new ElectricalSystem(
          Optional.empty(),
          Optional.empty(),
          List.of(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          List.of());

  private static final double COMMON_VOLTS = 12;

  public ElectricalSystem {
    runs = List.copyOf(runs);
    circuits = List.copyOf(circuits);
  }

  /**
   * A copy without a battery, motor or panel whose name is not among the kit: it was carried
   * ashore, and returns with all that is known of it.
   */
  public ElectricalSystem aboard(List<String> kit) {
    return new ElectricalSystem(
        battery.filter(b -> kit.contains(b.kit())),
        motor.filter(m -> m.kit().map(kit::contains).orElse(true)),
        runs,
        panel.filter(p -> p.kit().map(kit::contains).orElse(true)),
        latitude,
        mainSwitch,
        mainWire,
        circuits);
  }

  public ElectricalSystem withBattery(Optional<Battery> other) {
    return new ElectricalSystem(
        other, motor, runs, panel, latitude, mainSwitch, mainWire, circuits);
  }

  /** A copy with this motor; without a motor it has no timed runs. */
  public ElectricalSystem withMotor(Optional<ElectricMotor> other) {
    List<TimedRun> timed = other.isPresent() ? runs : List.of();
    return new ElectricalSystem(
        battery, other, timed, panel, latitude, mainSwitch, mainWire, circuits);
  }

  public ElectricalSystem withRuns(List<TimedRun> others) {
    return new ElectricalSystem(
        battery, motor, others, panel, latitude, mainSwitch, mainWire, circuits);
  }

  public ElectricalSystem withPanel(Optional<SolarPanel> other) {
    return new ElectricalSystem(
        battery, motor, runs, other, latitude, mainSwitch, mainWire, circuits);
  }

  /** A copy at that latitude, rad. */
  public ElectricalSystem at(Optional<Double> where) {
    return new ElectricalSystem(battery, motor, runs, panel, where, mainSwitch, mainWire, circuits);
  }

  public ElectricalSystem withCircuits(
      List<Circuit> others, Optional<String> cutOffBy, Optional<MainWire> through) {
    return new ElectricalSystem(battery, motor, runs, panel, latitude, cutOffBy, through, others);
  }

  /** A copy in which the battery, if it is the kit of that name, is made to start an engine. */
  public ElectricalSystem startingEngines(String kit) {
    return isBattery(kit) ? withBattery(battery.map(Battery::startingEngines)) : this;
  }

  /** A copy in which the battery, if it is the kit of that name, is held by nothing. */
  public ElectricalSystem unstrapped(String kit) {
    return isBattery(kit) ? withBattery(battery.map(Battery::unstrapped)) : this;
  }

  /** The voltage of the battery, or the usual 12 V. */
  public double volts() {
    return battery.map(Battery::volts).orElse(COMMON_VOLTS);
  }

  /** The current of lamps, sockets and the rest, all on, A. */
  public double otherDraw() {
    return circuits.stream().filter(c -> c.use().isOtherDraw()).mapToDouble(Circuit::current).sum();
  }

  /** The current with everything on, A, the motor included even if nobody described its wires. */
  public double drawn() {
    double stated =
        circuits.stream()
            .filter(c -> c.use() != Circuit.Use.CHARGE)
            .mapToDouble(Circuit::current)
            .sum();
    return stated + motorWithoutWires().flatMap(m -> m.currentAt(volts())).orElse(0.0);
  }

  /** A motor whose wires nobody described. */
  public Optional<ElectricMotor> motorWithoutWires() {
    return motor.filter(m -> circuits.stream().noneMatch(c -> c.use() == Circuit.Use.MOTOR));
  }

  /** Whether the kit of that name is the battery, whatever the name says. */
  public boolean isBattery(String kit) {
    return battery.filter(b -> b.kit().equals(kit)).isPresent();
  }

  /** Whether the kit of that name is the motor, whatever the name says. */
  public boolean isMotor(String kit) {
    return motor.flatMap(ElectricMotor::kit).filter(kit::equals).isPresent();
  }

  public boolean isEmpty() {
    return equals(NONE);
  }
}
