package thwartwise.inspection;

import java.util.OptionalDouble;
import thwartwise.checks.Unit;

/**
 * The reading that stands in the way of more, before and after a change, SI, with the allowance for
 * tape and scales taken off.
 *
 * @param crew for whom, in words
 * @param before empty when there is no such state
 * @param after the same crew in the changed boat
 * @param atLeast true when it must not be below the limit
 */
public record AdviceReading(
    String check,
    String crew,
    OptionalDouble before,
    OptionalDouble after,
    double limit,
    boolean atLeast,
    Unit unit) {

  /** Whether the change is for the better, by more than what is noise. */
  boolean isBetter() {
    return margin(after) - margin(before) > 1e-6;
  }

  private double margin(OptionalDouble value) {
    double worst = atLeast ? -Double.MAX_VALUE : Double.MAX_VALUE;
    double has = value.orElse(worst);
    return atLeast ? has - limit : limit - has;
  }
}
