package thwartwise.boat;

/** What was found at a point of a checklist. */
public enum PointCondition {
  AS_IT_SHOULD_BE("as it should be"),
  NOT_AS_IT_SHOULD_BE("not as it should be"),
  NOT_LOOKED_AT("not looked at"),
  DOES_NOT_APPLY("does not apply");

  private final String word;

  PointCondition(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }
}
