package thwartwise.boat;

import java.util.Optional;

/**
 * A measurement that looks wrong and was kept all the same.
 *
 * @param about identity of the finding, as {@code
 *     thwartwise.plausibility.PlausibilityFinding.PlausibilityId} writes it
 * @param reason why it is right, in the words of whoever kept it
 * @param measured what was measured when it was kept, as {@code
 *     thwartwise.plausibility.PlausibilityQuestion} writes it: the reason stands for no other
 *     measurement. Left out, for whatever is measured
 */
public record ConfirmedMeasurement(String about, String reason, Optional<String> measured) {

  /** For whatever is measured, as in a file written by hand. */
  public ConfirmedMeasurement(String about, String reason) {
    this(about, reason, Optional.empty());
  }

  /** Whether the reason was given for this measurement. */
  public boolean standsFor(String measurement) {
    return measured.map(measurement::equals).orElse(true);
  }
}
