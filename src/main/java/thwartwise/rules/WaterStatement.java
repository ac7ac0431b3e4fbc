package thwartwise.rules;

/**
 * One thing said of the waters a boat's figures hold for.
 *
 * @param words without what {@code kind} stands for
 */
public record WaterStatement(Kind kind, String words) {
  private static final String HOLDS = "Holds for: ";
  private static final String NOT = "Not for: ";

  /** What it says of them. */
  public enum Kind {
    HOLDS_FOR,
    NOT_FOR,
    FURTHER
  }

  /** As a page tells it. */
  public String sentence() {
    return switch (kind) {
      case HOLDS_FOR -> HOLDS + words;
      case NOT_FOR -> NOT + words;
      case FURTHER -> words;
    };
  }
}
