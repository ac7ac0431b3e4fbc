package thwartwise.checks;

/** What a check is for. */
public enum Role {
  LIMITS_CREW("limits crew"),
  FORBIDS_AN_ACT("forbids an act"),
  INFORMATION("information");

  private final String word;

  Role(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }
}
