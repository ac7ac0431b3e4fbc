package thwartwise.report;

import static thwartwise.report.ElectricalFigures.amperes;
import static thwartwise.report.ElectricalFigures.label;

import java.util.ArrayList;
import java.util.List;
import thwartwise.electrics.Circuit;
import thwartwise.electrics.CircuitSums;
import thwartwise.electrics.CircuitSums.Fault;
import thwartwise.measure.Rounding;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;

/** What is wrong with a circuit, the consequence and what to do. */
final class WiringFaultWords {
  private final CircuitSums sums;
  private final UnitFormat units;

  private WiringFaultWords(CircuitSums sums, UnitFormat units) {
    this.sums = sums;
    this.units = units;
  }

  /** The circuit with all its faults, and its requirement once. */
  static String[] of(CircuitSums sums, UnitFormat units) {
    WiringFaultWords words = new WiringFaultWords(sums, units);
    List<String> all = new ArrayList<>();
    sums.faults().forEach(fault -> all.add(words.of(fault)));
    all.set(0, sums.circuit().name() + ": " + all.get(0));
    all.add(words.wanted());
    return all.toArray(String[]::new);
  }

  /** The fault of a boat whose main wire nobody described. */
  static String[] noMainFuse(CircuitSums main, UnitFormat units) {
    return new String[] {
      "No main fuse is stated, so the wire that carries everything counts as unguarded",
      new WiringFaultWords(main, units).wanted()
    };
  }

  /** The fault without its figures. */
  static String brief(Fault fault) {
    return switch (fault) {
      case NO_FUSE -> "no fuse";
      case FUSE_NOT_STATED -> "nobody said which fuse guards it";
      case FUSE_OVER_WIRE -> "the fuse lets more through than the wire may carry";
      case FUSE_UNDER_DRAW -> "the fuse blows just when all is on";
      case WIRE_UNDER_DRAW -> "more is drawn than the wire may carry";
      case FUSE_TOO_FAR -> "the fuse is too far from the battery";
      case FUSE_PLACE_NOT_STATED -> "nobody said how far from the battery the fuse is";
      case WIRE_NOT_STATED -> "nobody said how thick the wire is";
      case WIRE_TOO_THIN -> "the wire is too thin to carry current";
      case DROP_TOO_GREAT -> "the wire loses too much";
      case NO_SWITCH -> "no switch is named that cuts it off";
    };
  }

  private String of(Fault fault) {
    Circuit circuit = sums.circuit();
    return switch (fault) {
      case NO_FUSE -> "no fuse. A wire that chafes through burns until the battery is empty";
      case FUSE_NOT_STATED -> "nobody said which fuse guards it, so none counts";
      case FUSE_OVER_WIRE ->
          "the fuse of "
              + label(circuit.fuse().orElseThrow(), "A")
              + " lets more through than the "
              + carried()
              + " this wire may carry where it lies: the wire burns first";
      case FUSE_UNDER_DRAW ->
          "the fuse of "
              + label(circuit.fuse().orElseThrow(), "A")
              + " is less than 1.25 times the "
              + amperes(circuit.current())
              + " drawn: it blows just when all is on";
      case WIRE_UNDER_DRAW ->
          "the wire may carry "
              + carried()
              + " where it lies, and "
              + amperes(circuit.current())
              + " are drawn";
      case FUSE_TOO_FAR ->
          "the fuse is "
              + units.tape(circuit.fuseDistance().orElseThrow())
              + " from the battery; all the wire before it is unguarded";
      case FUSE_PLACE_NOT_STATED -> "nobody said how far from the battery its fuse is";
      case WIRE_NOT_STATED -> "nobody said how thick the wire is, so nothing of it is worked out";
      case WIRE_TOO_THIN -> "the wire is thinner than any the rule's table lets carry current";
      case DROP_TOO_GREAT ->
          "the wire loses "
              + Rounding.up(sums.drop().orElseThrow(), 2)
              + " V of "
              + label(sums.volts(), "V")
              + inMainWire()
              + ", more than "
              + ElectricalFigures.share(circuit.use().mostDrop());
      case NO_SWITCH -> "no switch is named that cuts it off";
    };
  }

  private String carried() {
    return Rounding.down(sums.carries().orElseThrow(), 1) + UnitFormat.TIED + "A";
  }

  private String wanted() {
    return "It wants "
        + (Double.isNaN(sums.fuse()) ? "a larger fuse than is sold" : fuse())
        + (sums.isMainTooThin()
            ? ", a thicker main wire"
            : ", wire of " + ElectricalFigures.wire(sums.wanted()) + " or thicker")
        + ", and a switch in reach";
  }

  private String inMainWire() {
    return sums.main().volts() > 0
        ? ", "
            + Rounding.up(sums.main().volts(), 2)
            + " V of it in the main wire with everything on"
        : "";
  }

  private String fuse() {
    return "a fuse of "
        + label(sums.fuse(), "A")
        + " within "
        + units.height(sums.fuseWithin(), Side.DOWN)
        + " of the battery";
  }
}
