package thwartwise.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thwartwise.electrics.Battery;
import thwartwise.electrics.Circuit;
import thwartwise.electrics.Circuit.Use;
import thwartwise.electrics.ElectricalSystem;
import thwartwise.electrics.MainWire;
import thwartwise.electrics.SolarPanel;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.page.LineWrap;

/**
 * The circuits of a boat drawn in characters: the battery, its chargers, then in line the main fuse
 * and the main switch, and behind them fuse, switch and end of each circuit.
 */
final class WiringDrawing {
  private static final int SWITCH = 24;
  private static final int NAME = 20;
  private static final String NO_FUSE = "(NO MAIN FUSE)";

  private final ElectricalSystem electrics;
  private final UnitFormat units;
  private final List<String> lines = new ArrayList<>();

  private WiringDrawing(ElectricalSystem electrics, UnitFormat units) {
    this.electrics = electrics;
    this.units = units;
  }

  static List<String> of(ElectricalSystem electrics, UnitFormat units) {
    WiringDrawing drawing = new WiringDrawing(electrics, units);
    drawing.draw();
    return List.copyOf(drawing.lines);
  }

  private void draw() {
    line("[ battery " + electrics.battery().map(WiringDrawing::label).orElse("not stated") + " ]");
    charging();
    if (electrics.circuits().stream().anyMatch(c -> c.use() != Use.CHARGE)) {
      inLine();
      electrics.circuits().stream().filter(c -> c.use() != Use.CHARGE).forEach(this::circuit);
    }
  }

  /** A charger, which stays on the battery when the main switch is off. */
  private void charging() {
    List<Circuit> chargers =
        electrics.circuits().stream().filter(c -> c.use() == Use.CHARGE).toList();
    if (chargers.isEmpty() && electrics.panel().isEmpty()) {
      return;
    }
    line("    |");
    line("    |  charging, before the main switch and fuse:");
    electrics.panel().ifPresent(this::panel);
    chargers.forEach(this::circuit);
  }

  private void inLine() {
    Optional<MainWire> main = electrics.mainWire();
    line("    |");
    line(
        main.flatMap(MainWire::fuse)
                .map(a -> a > 0 ? "[main fuse " + ElectricalFigures.label(a, "A") + "]" : NO_FUSE)
                .orElse("(main fuse ?)")
            + main.flatMap(MainWire::fuseDistance)
                .map(at -> " " + units.height(at, Side.UP) + " from the battery")
                .orElse(""));
    line("    |");
    line(
        electrics
            .mainSwitch()
            .map(s -> "    / main switch: " + cut(s, 50))
            .orElse("    | (no main switch)"));
  }

  private static String label(Battery battery) {
    return ElectricalFigures.label(battery.volts(), "V")
        + ", "
        + ElectricalFigures.label(battery.charge() / 3600, "Ah");
  }

  private void circuit(Circuit circuit) {
    line("    |");
    line(
        "    +--"
            + fuse(circuit.fuse())
            + "--"
            + switched(circuit)
            + (circuit.use() == Use.CHARGE ? "--<< " : "--> ")
            + cut(circuit.name(), NAME)
            + ", "
            + ElectricalFigures.amperes(circuit.current()));
    line(
        "    |       "
            + ElectricalFigures.wire(circuit)
            + ", "
            + units.height(circuit.length(), Side.UP)
            + " there and as much back");
  }

  /** The switch; a charger is switched off at its other end. */
  private static String switched(Circuit circuit) {
    return circuit
        .switched()
        .map(s -> "/ " + cut(s, SWITCH) + " ")
        .orElse(circuit.use() == Use.CHARGE ? "" : "(no switch)");
  }

  private void panel(SolarPanel panel) {
    line("    |");
    line(
        "    +--"
            + fuse(panel.batteryFuse())
            + "--<< controller --"
            + fuse(panel.panelFuse())
            + "--<< "
            + "panel, "
            + ElectricalFigures.label(panel.watts(), "W"));
  }

  private static String fuse(Optional<Double> amperes) {
    return amperes
        .map(a -> a > 0 ? "[fuse " + ElectricalFigures.label(a, "A") + "]" : "(NO FUSE)")
        .orElse("(fuse ?)");
  }

  private static String cut(String name, int width) {
    List<String> all = LineWrap.lines(name, "", "", width - 2);
    return all.size() > 1 ? all.get(0) + ".." : all.get(0);
  }

  private void line(String line) {
    lines.add(line.replace(UnitFormat.TIED, " "));
  }
}
