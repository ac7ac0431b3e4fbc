package thwartwise.checks;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;

/**
 * One number a check took from one trial, beside what it needs. SI.
 *
 * @param value empty when there is no such state; {@code note} says why
 * @param assessed false when no answer was found either way
 * @param atLeast true when the value must not be below the limit
 */
public record Reading(
    String check,
    OptionalDouble value,
    boolean assessed,
    double limit,
    boolean atLeast,
    Unit unit,
    String source,
    String condition,
    String note) {

  /** A reading that has no value is not met. */
  public boolean met() {
    return value.isPresent()
        && (atLeast ? value.getAsDouble() >= limit : value.getAsDouble() <= limit);
  }

  /** How far inside the limit, in SI; no value is as far outside as can be. */
  public double margin() {
    if (value.isEmpty()) {
      return Double.NEGATIVE_INFINITY;
    }
    return atLeast ? value.getAsDouble() - limit : limit - value.getAsDouble();
  }

  /** Past a right angle the very figure no longer tells anybody anything. */
  boolean turnsOver() {
    return unit == Unit.DEGREE && value.orElse(0) > Math.PI / 2;
  }

  /** The same answer to another question. */
  Reading called(String name) {
    return new Reading(name, value, assessed, limit, atLeast, unit, source, condition, note);
  }

  /** The same with another note made of this one. */
  Reading noted(UnaryOperator<String> change) {
    String changed = change.apply(note);
    return new Reading(check, value, assessed, limit, atLeast, unit, source, condition, changed);
  }

  /** The same question without an answer. */
  Reading without(String why) {
    return new Reading(
        check, OptionalDouble.empty(), assessed, limit, atLeast, unit, source, condition, why);
  }

  /** The value with its unit, rounded to its bad side; only where there is one. */
  String figure() {
    double has = unit.shown(value.orElseThrow());
    return (atLeast ? unit.down(has) : unit.up(has)) + " " + unit.symbol();
  }

  /** The reading as a phrase: what there is rounded to its bad side, beside what is needed. */
  public String words() {
    if (value.isEmpty()) {
      return check + ": " + (note.isBlank() ? "no steady rest" : note);
    }
    if (turnsOver()) {
      return check + ": it turns over";
    }
    return String.format(
        Locale.ROOT,
        "%s: %s, %s %s %s",
        check,
        figure(),
        atLeast ? "needs at least" : "must not exceed",
        atLeast ? unit.up(unit.shown(limit)) : unit.down(unit.shown(limit)),
        unit.symbol());
  }
}
