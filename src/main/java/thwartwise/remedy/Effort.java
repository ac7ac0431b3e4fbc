package thwartwise.remedy;

/** What a change costs, least first; judgement. */
public enum Effort {
  NONE("nothing to build"),
  AN_HOUR("about an hour"),
  AN_AFTERNOON("about an afternoon"),
  A_WEEKEND("about a weekend");

  private final String words;

  Effort(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }
}
