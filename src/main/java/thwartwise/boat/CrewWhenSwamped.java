package thwartwise.boat;

/** What the crew does when the boat is full of water. */
public enum CrewWhenSwamped {
  SIT_IN_IT("sit in it"),
  HOLD_ON("hold on to it");

  private final String word;

  CrewWhenSwamped(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }
}
