package thwartwise.inspection;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatFact;
import thwartwise.checks.CheckId;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.Finding;
import thwartwise.checks.Measure;
import thwartwise.checks.Note;
import thwartwise.electrics.Battery;
import thwartwise.electrics.CircuitSums;
import thwartwise.electrics.CircuitSums.Fault;
import thwartwise.electrics.ElectricalSystem;
import thwartwise.electrics.SolarPanel;

/**
 * Stated faults of battery, panel and wires that can start a fire or injure somebody, so that they
 * hold the boat back. What nobody stated is asked by the page of the wires and is not a finding.
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
    electrics.battery().ifPresent(battery -> all.addAll(of(battery, boat)));
    electrics
        .panel()
        .filter(ElectricalFindings::isUnfused)
        .ifPresent(p -> all.add(practice(CheckId.PANEL_FUSED)));
    CircuitSums.ofMain(electrics)
        .filter(main -> electrics.mainWire().isPresent())
        .flatMap(ElectricalFindings::of)
        .ifPresent(all::add);
    CircuitSums.of(electrics).stream().flatMap(sums -> of(sums).stream()).forEach(all::add);
    return all;
  }

  private static List<Finding> of(Battery battery, Boat boat) {
    List<Finding> all = new ArrayList<>();
    if (battery.isBare()) {
      all.add(practice(CheckId.BATTERY_COVERED));
    }
    // An answer to a checklist gives a finding of its own.
    if (battery.isLoose() && !BoatFact.KIT_LOOSE.isFound(boat, battery.kit())) {
      all.add(practice(CheckId.BATTERY_HELD));
    }
    return all;
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
        .map(fault -> Finding.failed(question, RULE, new Note.UnguardedCircuit(fault)));
  }

  private static Finding practice(CheckId check) {
    return Finding.failed(CheckQuestion.of(check, SEEN), PRACTICE, Note.NONE);
  }
}
