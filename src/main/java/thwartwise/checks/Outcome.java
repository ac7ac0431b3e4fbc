package thwartwise.checks;

/**
 * How a finding came out. {@code BORDERLINE} meets the limit as measured but not once the allowance
 * for the tape and the scales is taken off.
 */
public enum Outcome {
  MEETS("meets"),
  BORDERLINE("borderline"),
  FALLS_SHORT("falls short"),
  NOT_ASSESSED("not assessed");

  private final String word;

  Outcome(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }
}
