package thwartwise.boat;

/** How grave it is when a point is not as it should be. */
public enum PointGravity {
  HOLDS_THE_LAUNCH("holds the launch"),
  PUT_RIGHT_FIRST("put right first"),
  ADVICE("advice");

  private final String word;

  PointGravity(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }
}
