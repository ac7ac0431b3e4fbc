package thwartwise.rules;

/**
 * Which way a limit gets stricter; only such a limit can be tightened by another rule or by the
 * waters.
 */
public enum StrictDirection {
  HIGHER("higher"),
  LOWER("lower"),
  /** A figure the working rests on rather than a limit; nobody but its own set may state it. */
  NEITHER("neither");

  private final String word;

  StrictDirection(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }

  /** Of two values of one limit the stricter. */
  boolean prefers(double other, double own) {
    return switch (this) {
      case HIGHER -> other > own;
      case LOWER -> other < own;
      case NEITHER -> false;
    };
  }
}
