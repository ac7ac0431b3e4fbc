package thwartwise.boat;

import java.util.Optional;

/** What fills a chamber. */
public sealed interface Filling {

  /** Air behind a seal. A test is held beside the claim; without one nothing is proven. */
  record Air(Seal seal, Optional<SealTest> test) implements Filling {}

  /** A block of foam; only closed-cell foam that is fastened counts. */
  record Foam(boolean closedCell, boolean fastened) implements Filling {}

  default Kind kind() {
    return this instanceof Air ? Kind.AIR : Kind.FOAM;
  }

  /** Which of the two. */
  enum Kind {
    AIR("air"),
    FOAM("foam");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }
  }

  /**
   * What is known of a chamber full of air. Only a proven one counts, and only while its test is
   * fresh.
   */
  enum Seal {
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
}
