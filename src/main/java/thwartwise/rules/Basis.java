package thwartwise.rules;

/** How well a number is founded. */
public enum Basis {
  READ("READ"),
  FROM_MEMORY("FROM MEMORY"),
  JUDGEMENT("judgement");

  private final String word;

  Basis(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }
}
