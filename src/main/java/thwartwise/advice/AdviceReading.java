package thwartwise.advice;

import java.util.OptionalDouble;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.Margin;
import thwartwise.loadcase.Crew;

/**
 * The figure that stands in the way of more, before and after a change, with the allowance for tape
 * and scales taken off.
 *
 * @param crew for whom
 * @param before as it is today
 * @param changed what the same crew has in the changed boat, SI; empty when there is no such state
 */
public record AdviceReading(
    CheckQuestion question, Crew crew, Margin before, OptionalDouble changed) {

  /** The same limit with what there is after the change. */
  public Margin after() {
    return new Margin(changed, before.limit(), before.atLeast(), before.unit());
  }

  /** Whether the change is for the better, by more than what is noise. */
  boolean isBetter() {
    return after().room() - before.room() > 1e-6;
  }
}
