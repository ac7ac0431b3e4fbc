package thwartwise.rules;

import thwartwise.measure.UnitSystem;
import thwartwise.measure.UnitText;

/**
 * One number of a rule set.
 *
 * @param value in the unit named
 * @param text its source: title and section, or the basis of the judgement
 * @param stricter the direction in which it becomes stricter
 */
public record Limit(
    double value, String unit, Basis basis, UnitText text, StrictDirection stricter) {
  public Limit(double value, String unit, Basis basis, String source, StrictDirection stricter) {
    this(value, unit, basis, UnitText.of(source), stricter);
  }

  /** A figure that no other rule may tighten. */
  public Limit(double value, String unit, Basis basis, String source) {
    this(value, unit, basis, source, StrictDirection.NEITHER);
  }

  /** Title and section, or what the judgement leans on. */
  public String source() {
    return text.words();
  }

  /** The same with its source told in these units. */
  Limit in(UnitSystem units) {
    return new Limit(value, unit, basis, text.in(units), stricter);
  }

  /** The text next to a figure: the source and its basis. */
  public String cited() {
    return source() + " (" + basis.word() + ")";
  }

  /** The other limit if it is stricter, otherwise this one. */
  Limit stricter(Limit other) {
    return stricter.isStricter(other.value, value)
        ? new Limit(other.value, unit, other.basis, other.text, stricter)
        : this;
  }

  /**
   * The direction in which a limit becomes stricter; other rules and the waters can tighten only
   * such a limit.
   */
  public enum StrictDirection {
    HIGHER("higher"),
    LOWER("lower"),
    /** A parameter of the calculation, not a limit; only its own set may state it. */
    NEITHER("neither");

    private final String word;

    StrictDirection(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }

    /** The stricter of two values of one limit. */
    boolean isStricter(double other, double own) {
      return switch (this) {
        case HIGHER -> other > own;
        case LOWER -> other < own;
        case NEITHER -> false;
      };
    }
  }

  /** The basis of a number. */
  public enum Basis {
    READ("READ"),
    FROM_MEMORY("FROM MEMORY"),
    JUDGEMENT("judgement");

    private final String word;

    Basis(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }
  }
}
