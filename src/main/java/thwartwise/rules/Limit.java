package thwartwise.rules;

import thwartwise.measure.UnitSystem;
import thwartwise.measure.UnitText;

/**
 * One number of a rule set.
 *
 * @param value in the unit named
 * @param text its source: title and section, or what the judgement leans on
 * @param stricter which way it gets stricter
 */
public record Limit(
    double value, String unit, Basis basis, UnitText text, StrictDirection stricter) {
  public Limit(double value, String unit, Basis basis, String source, StrictDirection stricter) {
    this(value, unit, basis, UnitText.of(source), stricter);
  }

  /** A figure that nothing else may tighten. */
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

  /** As it stands beside a number: the source and how well it is founded. */
  public String cited() {
    return source() + " (" + basis.word() + ")";
  }

  /**
   * The other's number and source if it is stricter the way this limit gets stricter, else this.
   */
  Limit stricter(Limit other) {
    return stricter.isStricter(other.value, value)
        ? new Limit(other.value, unit, other.basis, other.text, stricter)
        : this;
  }

  /**
   * Which way a limit gets stricter; only such a limit can be tightened by another rule or by the
   * waters.
   */
  public enum StrictDirection {
    HIGHER("higher"),
    LOWER("lower"),
    /** A figure the working rests on rather than a limit; nobody but its own set may state it. */
    NEITHER("neither");

    private final String word;

    StrictDirection(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }

    /** Of two values of one limit the stricter. */
    boolean isStricter(double other, double own) {
      return switch (this) {
        case HIGHER -> other > own;
        case LOWER -> other < own;
        case NEITHER -> false;
      };
    }
  }

  /** How well a number is founded. */
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
