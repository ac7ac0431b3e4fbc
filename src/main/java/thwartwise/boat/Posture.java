package thwartwise.boat;

/** How people are at a place. */
public enum Posture {
  SITTING("sitting"),
  KNEELING("kneeling"),
  STANDING("standing");

  private final String word;

  Posture(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }
}
