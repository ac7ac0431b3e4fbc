package thwartwise.rules;

/**
 * One number of a rule set.
 *
 * @param value in the unit named
 * @param source title and section, or what the judgement leans on
 */
public record Limit(double value, String unit, Basis basis, String source) {

  /** As it stands beside a number: the source and how well it is founded. */
  public String cited() {
    return source + " (" + basis.word() + ")";
  }
}
