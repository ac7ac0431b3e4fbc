package thwartwise.boat;

/** What an anchor lies on. */
public enum AnchorBottom {
  SAND_OR_MUD("sand or mud"),
  STONES_OR_WEED("stones or weed");

  private final String word;

  AnchorBottom(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }
}
