package thwartwise.rules;

import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What a rule gives for this boat, beside our own answer.
 *
 * @param ruleSet the set it stands in
 * @param formula section and name; blank when the whole set does not apply
 * @param namesRegulation whether the title says itself whose rule it is
 * @param standing only a figure that takes part limits the recommendation
 * @param caps what the number speaks of
 * @param value in the unit of {@code caps}; NaN when the rule gives no number
 * @param persons the rule's own count of people, when it has one; never turned back into kilograms
 * @param has what the boat has of it, where that can be set beside the number
 * @param note why it does not apply, or what was assumed
 */
public record CapacityFigure(
    String ruleSet,
    String formula,
    boolean namesRegulation,
    FigureStatus standing,
    CapKind caps,
    double value,
    OptionalInt persons,
    OptionalDouble has,
    String source,
    String note) {

  /** One whose title does not say whose rule it is. */
  public CapacityFigure(
      String ruleSet,
      String formula,
      FigureStatus standing,
      CapKind caps,
      double value,
      OptionalInt persons,
      OptionalDouble has,
      String source,
      String note) {
    this(ruleSet, formula, false, standing, caps, value, persons, has, source, note);
  }

  /** Whether the number limits the recommendation. */
  public boolean takesPart() {
    return standing == FigureStatus.TAKES_PART;
  }

  /** kg of people or load; NaN when the number is of another kind. */
  public double mass() {
    return caps.isMass() ? value : Double.NaN;
  }

  /** Whether the boat has less, or more, than the rule wants; false when that cannot be told. */
  public boolean fallsShort() {
    if (has.isEmpty() || Double.isNaN(value)) {
      return false;
    }
    return caps.atLeast() ? !(has.getAsDouble() >= value) : !(has.getAsDouble() <= value);
  }

  /** What becomes of a rule's number for this boat. */
  public enum FigureStatus {
    TAKES_PART("takes part"),
    /** A second opinion or a line to measure by: shown, never in the minimum. */
    BESIDE("beside"),
    DOES_NOT_APPLY("does not apply");

    private final String word;

    FigureStatus(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }
  }
}
