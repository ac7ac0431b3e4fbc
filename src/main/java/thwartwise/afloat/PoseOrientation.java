package thwartwise.afloat;

/** How the boat lies: by the axis of the boat that points most nearly up or down. */
public enum PoseOrientation {
  UPRIGHT("upright"),
  ON_ITS_SIDE("on its side"),
  BOW_UP("bow up"),
  STERN_UP("stern up"),
  UPSIDE_DOWN("upside down");

  private final String word;

  PoseOrientation(String word) {
    this.word = word;
  }

  /** As it stands in a file and in a sentence. */
  public String word() {
    return word;
  }
}
