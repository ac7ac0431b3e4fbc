package thwartwise.rules;

import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * The figure that a rule gives for this boat, next to our own answer.
 *
 * @param ruleSet the set it stands in
 * @param formula section and name; blank when the whole set does not apply
 * @param namesRegulation whether the title names the regulation
 * @param standing only a figure that takes part limits the recommendation
 * @param caps what the number limits
 * @param value in the unit of {@code caps}; NaN when the rule gives no number
 * @param persons the rule's own count of people, when it has one; never converted to kilograms
 * @param has the figure of the boat, where it can be compared with the number
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
    FormulaNote note) {

  /** A figure whose title does not name the regulation. */
  public CapacityFigure(
      String ruleSet,
      String formula,
      FigureStatus standing,
      CapKind caps,
      double value,
      OptionalInt persons,
      OptionalDouble has,
      String source,
      FormulaNote note) {
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

  /** Whether the boat misses the rule's minimum or maximum; false when that is not known. */
  public boolean fallsShort() {
    if (has.isEmpty() || Double.isNaN(value)) {
      return false;
    }
    return caps.atLeast() ? !(has.getAsDouble() >= value) : !(has.getAsDouble() <= value);
  }

  /** How a rule's number is used for this boat. */
  public enum FigureStatus {
    TAKES_PART("takes part"),
    /** A second opinion or a figure for comparison: shown, never part of the minimum. */
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
