package thwartwise.checks;

import java.util.Comparator;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import thwartwise.loadcase.LoadCase;

/**
 * One figure that a check took from one loaded boat, with its limit.
 *
 * @param assessed false when no answer was found either way
 * @param source where the limit comes from, with the word judgement, READ or FROM MEMORY
 * @param note why there is no value, or what the reader must know with it
 */
public record CheckReading(
    CheckQuestion question,
    Margin margin,
    boolean assessed,
    String source,
    LoadCase loadCase,
    Note note) {

  /** The reading farthest inside its limit comes last; of equal ones the first stays first. */
  static final Comparator<CheckReading> WORST_FIRST =
      Comparator.comparingDouble(r -> r.margin.roundedRoom());

  public OptionalDouble value() {
    return margin.value();
  }

  public double limit() {
    return margin.limit();
  }

  public boolean met() {
    return margin.met();
  }

  /** The same answer to another question. */
  CheckReading of(CheckQuestion other) {
    return new CheckReading(other, margin, assessed, source, loadCase, note);
  }

  /** The same with another note, made from this one. */
  CheckReading noted(UnaryOperator<Note> change) {
    return new CheckReading(question, margin, assessed, source, loadCase, change.apply(note));
  }

  /** The same question without an answer. */
  CheckReading without(Note why) {
    return new CheckReading(question, margin.without(), assessed, source, loadCase, why);
  }
}
