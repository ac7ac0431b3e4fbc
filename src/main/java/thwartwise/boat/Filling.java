package thwartwise.boat;

import java.time.LocalDate;
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

  /**
   * A recorded leak test of a chamber. What makes one count stands here alone.
   *
   * @param minutes how long it lasted
   * @param litresIn water that got in, litres
   */
  record SealTest(LocalDate date, String how, double minutes, double litresIn, String by) {
    /** Older is stale (judgement). */
    public static final int FRESH_MONTHS = 12;

    /** Shorter shows nothing (judgement; the class below floods for fifteen minutes). */
    public static final double LEAST_MINUTES = 10;

    /** Pattern of a youth training-dinghy class: at most one litre in any compartment (READ). */
    public static final double MOST_LITRES = 1.0;

    public boolean isStale(LocalDate today) {
      return isStale(date, today);
    }

    /** Whether a test of that day is. */
    public static boolean isStale(LocalDate tested, LocalDate today) {
      return tested.plusMonths(FRESH_MONTHS).isBefore(today);
    }
  }
}
