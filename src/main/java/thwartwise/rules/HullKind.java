package thwartwise.rules;

/** Kinds of hull as far as the measurements tell them apart. */
public enum HullKind {
  CANOE("canoe", "a canoe", "canoes"),
  OPEN_BOAT("open boat", "an open boat", "open boats");

  private final String word;
  private final String one;
  private final String many;

  HullKind(String word, String one, String many) {
    this.word = word;
    this.one = one;
    this.many = many;
  }

  public String word() {
    return word;
  }

  String singular() {
    return one;
  }

  String plural() {
    return many;
  }
}
