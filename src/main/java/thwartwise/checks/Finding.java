package thwartwise.checks;

import java.util.OptionalDouble;
import thwartwise.loadcase.LoadCase;

/**
 * The answer of one check for this boat.
 *
 * @param question what was asked
 * @param margin what the boat has next to what it needs; where it has no value, {@code note} says
 *     why
 * @param source where the limit comes from, with the word judgement, READ or FROM MEMORY
 * @param loadCase the loading and what was done to it
 * @param note what the reader must know next to the number
 */
public record Finding(
    CheckQuestion question,
    Role role,
    Outcome outcome,
    Margin margin,
    String source,
    LoadCase loadCase,
    Note note) {

  /** A finding without a figure for a requirement that is not met; it falls short. */
  public static Finding failed(CheckQuestion question, String source, Note note) {
    return new Finding(
        question,
        Role.LIMITS_CREW,
        Outcome.FALLS_SHORT,
        Margin.atMost(0, OptionalDouble.empty(), Unit.PERCENT),
        source,
        LoadCase.AS_MEASURED,
        note);
  }

  /** The worse of two answers to the same question; the first of two that are equally bad. */
  public static Finding worse(Finding a, Finding b) {
    int gap = b.outcome.severity() - a.outcome.severity();
    return gap > 0 || gap == 0 && b.margin.roundedRoom() < a.margin.roundedRoom() ? b : a;
  }

  /** Whether no answer to the same question can be worse. */
  public boolean isWorst() {
    return outcome == Outcome.FALLS_SHORT && margin.room() == Double.NEGATIVE_INFINITY;
  }

  /** The same finding with another outcome. */
  public Finding withOutcome(Outcome other) {
    return new Finding(question, role, other, margin, source, loadCase, note);
  }

  /** The same finding with another role. */
  public Finding withRole(Role other) {
    return new Finding(question, other, outcome, margin, source, loadCase, note);
  }

  public OptionalDouble value() {
    return margin.value();
  }

  public double limit() {
    return margin.limit();
  }

  public boolean holdsBack() {
    return role == Role.LIMITS_CREW && outcome != Outcome.MEETS;
  }
}
