package thwartwise.crew;

/** As the growth tables are split. */
public enum Sex {
  BOY("boy"),
  GIRL("girl");

  private final String word;

  Sex(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }
}
