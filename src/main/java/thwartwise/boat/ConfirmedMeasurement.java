package thwartwise.boat;

import java.util.Optional;

/**
 * A measurement that looks wrong and was confirmed.
 *
 * @param about identity of the finding, as {@code
 *     thwartwise.plausibility.PlausibilityFinding.PlausibilityId} writes it
 * @param reason why it is right, in the words of the person who confirmed it
 * @param measured the value when it was confirmed, as {@code
 *     thwartwise.plausibility.PlausibilityQuestion} writes it: the reason counts for no other
 *     value. Left out, it counts for every value
 */
public record ConfirmedMeasurement(String about, String reason, Optional<String> measured) {

  /** A confirmation for every value, as in a file written by hand. */
  public ConfirmedMeasurement(String about, String reason) {
    this(about, reason, Optional.empty());
  }

  /** Whether the reason was given for this measurement. */
  public boolean standsFor(String measurement) {
    return measured.map(measurement::equals).orElse(true);
  }
}
