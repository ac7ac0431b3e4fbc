package thwartwise.checks;

import java.util.OptionalDouble;

/**
 * The answer of one check for this boat.
 *
 * @param check what was asked
 * @param value what the boat has, SI; empty when there is no such state, and {@code note} says why
 * @param limit what it needs, SI
 * @param atLeast true when the value must not be below the limit, false when it must not be above
 * @param source where the limit comes from, with the word judgement, READ or FROM MEMORY
 * @param condition the loading and what was done to it
 * @param note what the reader must know beside the number; may be blank
 */
public record Finding(
    String check,
    Role role,
    Outcome outcome,
    OptionalDouble value,
    double limit,
    boolean atLeast,
    Unit unit,
    String source,
    String condition,
    String note) {

  /** Of two answers to the same question the one that weighs more against the boat. */
  public static Finding worse(Finding a, Finding b) {
    int gap = b.outcome.severity() - a.outcome.severity();
    return gap > 0 || gap == 0 && b.margin() < a.margin() ? b : a;
  }

  /** Whether no answer to the same question weighs more against the boat. */
  public boolean isWorst() {
    return outcome == Outcome.FALLS_SHORT && margin() == Double.NEGATIVE_INFINITY;
  }

  private double margin() {
    double worst = atLeast ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
    double has = value.orElse(worst);
    return atLeast ? has - limit : limit - has;
  }

  /** What was asked about; which of its measures this is stands behind a comma. */
  public String subject() {
    return subject(check);
  }

  /** The same of a check's name alone. */
  public static String subject(String check) {
    return check.split(",")[0];
  }

  public boolean holdsBack() {
    return role == Role.LIMITS_CREW && outcome != Outcome.MEETS;
  }
}
