package thwartwise.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thwartwise.electrics.Battery;
import thwartwise.electrics.Circuit;
import thwartwise.electrics.Circuit.Use;
import thwartwise.electrics.ElectricalSystem;
import thwartwise.electrics.SolarPanel;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.page.LineWrap;

/**
 * The circuits of a boat in characters: battery, main switch, then fuse, switch and end of each.
 */
final class WiringDrawing {
  private static final int SWITCH = 24;
  private static final int NAME = 20;

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
    line("    |");
    line(
        "    +--/ main switch: "
            + electrics.mainSwitch().map(s -> cut(s, 50)).orElse("NONE NAMED"));
    electrics.circuits().stream().filter(c -> c.use() != Use.CHARGE).forEach(this::circuit);
    electrics.circuits().stream().filter(c -> c.use() == Use.CHARGE).forEach(this::circuit);
    electrics.panel().ifPresent(this::panel);
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
            + circuit.switched().map(s -> "/ " + cut(s, SWITCH) + " ").orElse("(no switch)")
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
