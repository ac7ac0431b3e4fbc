package thwartwise.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thwartwise.boat.Boat;
import thwartwise.boat.Kit;
import thwartwise.boat.Propulsion;
import thwartwise.electrics.Battery;
import thwartwise.electrics.Circuit;
import thwartwise.electrics.CircuitSums;
import thwartwise.electrics.ElectricalSystem;
import thwartwise.electrics.SolarPanel;
import thwartwise.measure.UnitFormat;

/** What is wrong with battery, panel, main wire and circuits, each fault in sentences. */
final class WiringFaultList {
  private final Boat boat;
  private final ElectricalSystem electrics;
  private final UnitFormat units;
  private final List<String[]> faults = new ArrayList<>();

  private WiringFaultList(Boat boat) {
    this.boat = boat;
    this.electrics = boat.electrics();
    this.units = ReaderUnits.of(boat);
  }

  /** The faults in the order in which the page lists them. */
  static List<String[]> of(Boat boat, Optional<CircuitSums> main, List<CircuitSums> circuits) {
    WiringFaultList list = new WiringFaultList(boat);
    list.systemFaults();
    main.filter(wire -> !wire.faults().isEmpty()).ifPresent(list::mainFaults);
    circuits.stream()
        .filter(each -> !each.faults().isEmpty())
        .forEach(each -> list.faults.add(WiringFaultWords.of(each, list.units)));
    return list.faults;
  }

  private void systemFaults() {
    electrics.battery().ifPresent(this::batteryFaults);
    if (electrics.mainSwitch().isEmpty() && !electrics.circuits().isEmpty()) {
      faults.add(
          new String[] {
            "No main switch is named", "One switch in reach of the helm should cut off everything"
          });
    }
    if (!electrics.circuits().isEmpty() && isMotorUnwired(boat)) {
      faults.add(
          new String[] {
            "The motor's own wires are not stated, so nothing of them is worked out",
            ElectricalFigures.entered("wires")
          });
    }
    electrics.panel().ifPresent(this::panelFaults);
  }

  /** Whether there is an electric motor, as far as anybody said, and no wire to it. */
  static boolean isMotorUnwired(Boat boat) {
    ElectricalSystem electrics = boat.electrics();
    boolean driven =
        electrics.motor().isPresent()
            || boat.propulsion() instanceof Propulsion.Outboard
                && boat.kit().stream().noneMatch(Kit::isOfPetrol);
    return driven && electrics.circuits().stream().noneMatch(c -> c.use() == Circuit.Use.MOTOR);
  }

  private void mainFaults(CircuitSums wire) {
    faults.add(
        electrics.mainWire().isPresent()
            ? WiringFaultWords.of(wire, units)
            : WiringFaultWords.noMainFuse(wire, units));
  }

  private void batteryFaults(Battery battery) {
    if (boat.kit().stream().noneMatch(kit -> kit.name().equals(battery.kit()))) {
      faults.add(new String[] {ElectricalFigures.ashore("The battery", battery.kit())});
    }
    if (!battery.terminalsCovered().orElse(false)) {
      faults.add(
          new String[] {
            notStated(battery.terminalsCovered(), "The battery's terminals are not covered"),
            "A spanner or a chain across both burns hands and wood; cover them"
          });
    }
    if (!battery.strapped().orElseGet(() -> isFastened(battery))) {
      faults.add(
          new String[] {
            notStated(battery.strapped(), "The battery is not held by tray and strap"),
            "Upside down it falls out, or onto somebody; it must hold with the boat turned over"
          });
    }
    if (battery.starter().orElse(false)) {
      faults.add(
          new String[] {
            "The battery is made to start an engine, and drives the motor here",
            "Drawn down deeply it soon dies; range counts a fifth of it. Take a traction battery"
          });
    }
  }

  /**
   * Whether it is held when the boat is upside down, which is what the question about fastened kit
   * asks.
   */
  private boolean isFastened(Battery battery) {
    return boat.kit().stream().anyMatch(k -> k.name().equals(battery.kit()) && k.fastened());
  }

  private static String notStated(Optional<Boolean> said, String words) {
    return said.isPresent() ? words : words + ", as far as anybody said";
  }

  private void panelFaults(SolarPanel panel) {
    if (!(panel.panelFuse().orElse(0.0) > 0)) {
      faults.add(new String[] {noFuse("panel and controller", panel.panelFuse())});
    }
    if (!(panel.batteryFuse().orElse(0.0) > 0)) {
      faults.add(
          new String[] {
            noFuse("controller and battery", panel.batteryFuse()),
            "The battery feeds a short there as it does any other"
          });
    }
    if (!panel.connectedToBattery().orElse(false)) {
      faults.add(
          new String[] {
            panel.connectedToBattery().isPresent()
                ? "Solar panel: the battery is taken off the controller in sun"
                : "Solar panel: nobody said that the battery stays on the controller in sun",
            "Without a battery the panel's voltage kills the controller: cover the panel first"
          });
    }
  }

  private static String noFuse(String between, Optional<Double> said) {
    return "Solar panel: no fuse between " + between + (said.isPresent() ? "" : " is stated");
  }
}
