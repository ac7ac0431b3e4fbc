package thwartwise.boat;

/**
 * What is known of a chamber full of air. Only a proven one counts, and only while its test is
 * fresh.
 */
public enum Seal {
  PROVEN("proven"),
  CLAIMED("claimed"),
  OPEN("open");

  private final String word;

  Seal(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }
}
