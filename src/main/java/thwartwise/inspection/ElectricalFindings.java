package thwartwise.inspection;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import thwartwise.boat.Boat;
import thwartwise.checks.CheckId;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.Finding;
import thwartwise.checks.Margin;
import thwartwise.checks.Measure;
import thwartwise.checks.Note;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.checks.Unit;
import thwartwise.electrics.Battery;
import thwartwise.electrics.CircuitSums;
import thwartwise.electrics.CircuitSums.Fault;
import thwartwise.electrics.ElectricalSystem;
import thwartwise.electrics.SolarPanel;
import thwartwise.loadcase.LoadCase;

/**
 * What is stated of battery, panel and wires and can start a fire or fall on somebody, so that it
 * holds the boat back. What nobody stated is for the page of the wires to ask; it is no finding.
 */
final class ElectricalFindings {
  private static final Measure SEEN = Measure.AS_MEASURED;

  private static final String PRACTICE = "common practice, no source";
  private static final String RULE =
      "fuse and wire: 33 CFR 183.425 and 183.455 (READ), stricter in the fuse";

  private static final Set<Fault> GRAVE =
      Set.of(
          Fault.NO_FUSE,
          Fault.FUSE_OVER_WIRE,
          Fault.WIRE_UNDER_DRAW,
          Fault.FUSE_TOO_FAR,
          Fault.WIRE_TOO_THIN);

  private ElectricalFindings() {}

  static List<Finding> of(Boat boat) {
    List<String> kit = boat.kit().stream().map(k -> k.name()).toList();
    ElectricalSystem electrics = boat.electrics().aboard(kit);
    List<Finding> all = new ArrayList<>();
    electrics.battery().ifPresent(battery -> all.addAll(of(battery)));
    electrics
        .panel()
        .filter(ElectricalFindings::isUnfused)
        .ifPresent(p -> all.add(finding(CheckQuestion.of(CheckId.PANEL_FUSED, SEEN), PRACTICE)));
    electrics.circuits().stream()
        .map(circuit -> CircuitSums.of(circuit, electrics.volts()))
        .flatMap(sums -> of(sums).stream())
        .forEach(all::add);
    return all;
  }

  private static List<Finding> of(Battery battery) {
    List<Finding> all = new ArrayList<>();
    if (isDenied(battery.terminalsCovered())) {
      all.add(finding(CheckQuestion.of(CheckId.BATTERY_COVERED, SEEN), PRACTICE));
    }
    if (isDenied(battery.strapped())) {
      all.add(finding(CheckQuestion.of(CheckId.BATTERY_HELD, SEEN), PRACTICE));
    }
    return all;
  }

  private static boolean isDenied(Optional<Boolean> said) {
    return said.isPresent() && !said.get();
  }

  private static boolean isUnfused(SolarPanel panel) {
    return panel.panelFuse().filter(a -> a <= 0).isPresent()
        || panel.batteryFuse().filter(a -> a <= 0).isPresent();
  }

  private static Optional<Finding> of(CircuitSums sums) {
    CheckQuestion question = CheckQuestion.of(CheckId.CIRCUIT_GUARDED, SEEN, sums.circuit().name());
    return sums.faults().stream()
        .filter(GRAVE::contains)
        .findFirst()
        .map(fault -> finding(question, RULE, new Note.UnguardedCircuit(fault)));
  }

  private static Finding finding(CheckQuestion question, String source) {
    return finding(question, source, Note.NONE);
  }

  private static Finding finding(CheckQuestion question, String source, Note note) {
    return new Finding(
        question,
        Role.LIMITS_CREW,
        Outcome.FALLS_SHORT,
        Margin.atMost(0, OptionalDouble.empty(), Unit.PERCENT),
        source,
        LoadCase.AS_MEASURED,
        note);
  }
}
