package thwartwise.boat;

import java.util.List;
import java.util.Optional;

/**
 * What a proof afloat came to, held against the boat as it was measured. Both numbers stay: what
 * was measured and what fits the boat afloat best. Boat files keep the names of these parts for
 * good.
 *
 * @param agrees whether the boat floats as it was measured, within what that may be off
 * @param measured the bare hull as stated
 * @param measuredMayBeOff one standard deviation each
 * @param corrected what fits best, where the boat agrees
 * @param careful the names of the kinds of measurement that were taken the better way
 * @param suspect the measurement most likely wrong, where it does not and one explains it
 */
public record ProofOutcome(
    boolean agrees,
    HullWeight measured,
    HullWeight measuredMayBeOff,
    List<String> careful,
    Optional<CorrectedHull> corrected,
    Optional<SuspectedMeasurement> suspect) {

  public ProofOutcome {
    careful = List.copyOf(careful);
  }

  /**
   * @param mayBeOff one standard deviation each
   * @param massHeld whether the readings asked for a greater correction of the mass than is allowed
   */
  public record CorrectedHull(HullWeight hull, HullWeight mayBeOff, boolean massHeld) {}

  /**
   * @param kind the name of the kind of measurement
   * @param item the name of what was measured; empty where it is the boat's
   * @param reading which one, where it is a reading of the proof itself
   * @param by how far it would be off, SI; a share of what is reported in shares
   * @param explains what part of what was seen goes then
   */
  public record SuspectedMeasurement(
      String kind, String item, Optional<ReadingLabel> reading, double by, double explains) {}
}
