package thwartwise.rules;

/** What a rule's number limits, and its SI unit. */
public enum CapKind {
  PEOPLE("people's mass", "kg", false),
  LOAD("whole load", "kg", false),
  HEADS("number of people", "people", false),
  POWER("motor power", "W", false),
  FLOTATION("flotation", "m3", true),
  FREEBOARD("freeboard at rest", "m", true),
  PERSON("one person", "kg", false),
  /** One of our own limits that the set also states, in that limit's unit. */
  LIMIT("limit", "", false),
  /** A set or formula that gives no number. */
  NOTHING("nothing", "", false);

  private final String word;
  private final String unit;
  private final boolean atLeast;

  CapKind(String word, String unit, boolean atLeast) {
    this.word = word;
    this.unit = unit;
    this.atLeast = atLeast;
  }

  public String word() {
    return word;
  }

  public String unit() {
    return unit;
  }

  /** Whether the number is a minimum; otherwise it is a maximum. */
  public boolean atLeast() {
    return atLeast;
  }

  /** Whether the number is kilograms of people or load. */
  public boolean isMass() {
    return this == PEOPLE || this == LOAD;
  }
}
