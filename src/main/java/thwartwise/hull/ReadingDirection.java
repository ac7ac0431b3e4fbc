package thwartwise.hull;

/** What a tape reads of a point besides how far forward it lies; records store the constants. */
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
