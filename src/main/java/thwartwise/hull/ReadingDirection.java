package thwartwise.hull;

/** The direction of a tape reading other than along the boat; records store the constants. */
public enum ReadingDirection {
  HALF_BREADTH("half-breadth"),
  HEIGHT("height");

  private final String word;

  ReadingDirection(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }
}
