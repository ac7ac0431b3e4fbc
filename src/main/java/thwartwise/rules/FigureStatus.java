package thwartwise.rules;

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
