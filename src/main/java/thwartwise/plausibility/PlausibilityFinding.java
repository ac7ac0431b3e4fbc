package thwartwise.plausibility;

import java.util.Optional;
import thwartwise.checks.Finding;
import thwartwise.checks.Outcome;

/**
 * What one look at the measurements came to.
 *
 * @param confirmation the reason for which a measurement that looks wrong was kept
 * @param measured what was measured, short, to be told from another measurement of the same thing
 * @param isConfirmedForOtherValue whether a reason is there that was given for another measurement
 */
public record PlausibilityFinding(
    PlausibilityId id,
    Finding finding,
    Optional<String> confirmation,
    String measured,
    boolean isConfirmedForOtherValue) {

  /** Whether nothing may be recommended until it is measured again or kept with a reason. */
  public boolean withholds() {
    return isDoubtful() && confirmation.isEmpty();
  }

  /** Whether it looks wrong, kept or not. */
  public boolean isDoubtful() {
    return finding.outcome() != Outcome.MEETS;
  }
}
