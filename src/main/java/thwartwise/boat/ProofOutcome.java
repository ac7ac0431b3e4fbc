package thwartwise.boat;

import java.util.List;
import java.util.Optional;

/**
 * The result of a proof afloat, compared with the boat as it was measured. Both numbers stay: the
 * measured one and the best fit. Boat files store the names of these parts for good.
 *
 * @param agrees whether the boat floats as it was measured, within the spread
 * @param measured the bare hull as stated
 * @param measuredMayBeOff one standard deviation each
 * @param corrected the best fit, where the boat agrees
 * @param careful the names of the kinds of measurement that were taken with more care
 * @param suspect the measurement most likely wrong, where the boat does not agree and one explains
 *     it
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
   * The best fit of the bare hull.
   *
   * @param mayBeOff one standard deviation each
   * @param massHeld whether the readings asked for a greater correction of the mass than is allowed
   */
  public record CorrectedHull(HullWeight hull, HullWeight mayBeOff, boolean massHeld) {}

  /**
   * A measurement that may be wrong.
   *
   * @param kind the name of the kind of measurement
   * @param item the name of what was measured; empty for the boat
   * @param reading which one, where it is a reading of the proof itself
   * @param by its error, SI; a share for what is reported in shares
   * @param explains the share of the discrepancy that it explains
   */
  public record SuspectedMeasurement(
      String kind, String item, Optional<ReadingLabel> reading, double by, double explains) {}
}
