package thwartwise.checks;

/**
 * The outcome of a finding. {@code BORDERLINE} meets the limit as measured but not after the
 * allowance for the tape and the scales, or in fewer than 95 of 100 boats measured like this; or
 * falls short by less than its spread.
 */
public enum Outcome {
  MEETS("meets", 0),
  BORDERLINE("borderline", 1),
  FALLS_SHORT("falls short", 3),
  NOT_ASSESSED("not assessed", 2);

  private final String word;
  private final int severity;

  Outcome(String word, int severity) {
    this.word = word;
    this.severity = severity;
  }

  /** The higher, the worse. */
  public int severity() {
    return severity;
  }

  public boolean isWorseThan(Outcome other) {
    return severity > other.severity;
  }

  public static Outcome worse(Outcome a, Outcome b) {
    return b.isWorseThan(a) ? b : a;
  }

  public String word() {
    return word;
  }
}
