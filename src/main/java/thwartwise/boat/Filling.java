package thwartwise.boat;

import java.time.LocalDate;
import java.util.Optional;

/** What fills a chamber. */
public sealed interface Filling {

  /**
   * Air behind a seal. A test is held next to the claim; without one nothing is proven.
   *
   * @param repaired the day on which it was last repaired, cut or fitted with something; what was
   *     tested until then was another chamber
   */
  record Air(Seal seal, Optional<SealTest> test, Optional<LocalDate> repaired) implements Filling {
    public Air(Seal seal, Optional<SealTest> test) {
      this(seal, test, Optional.empty());
    }

    /** The day of a repair that its test is not later than. */
    public Optional<LocalDate> repairedSinceTest() {
      return repaired.filter(day -> test.filter(t -> t.date().isAfter(day)).isEmpty());
    }

    /**
     * Whether a leak test is recorded and must be made again: it is stale, or of before a repair.
     */
    public boolean isTestOutdated(LocalDate today) {
      return test.filter(t -> t.isStale(today) || repairedSinceTest().isPresent()).isPresent();
    }
  }

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
   * @param head height of the water above the lowest point of the chamber, m; empty where nobody
   *     said it
   */
  record SealTest(
      LocalDate date,
      String how,
      double minutes,
      double litresIn,
      String by,
      Optional<Double> head) {
    /** Older is stale (judgement). */
    public static final int FRESH_MONTHS = 12;

    /** Shorter shows nothing (judgement; the class below floods for fifteen minutes). */
    public static final double LEAST_MINUTES = 10;

    /** Pattern of a youth training-dinghy class: at most one litre in any compartment (READ). */
    public static final double MOST_LITRES = 1.0;

    /** Made as the help says: filled to the lid, or pushed under. */
    public SealTest(LocalDate date, String how, double minutes, double litresIn, String by) {
      this(date, how, minutes, litresIn, by, Optional.empty());
    }

    public boolean isStale(LocalDate today) {
      return isStale(date, today);
    }

    /** Whether a test of that day is. */
    public static boolean isStale(LocalDate tested, LocalDate today) {
      return tested.plusMonths(FRESH_MONTHS).isBefore(today);
    }
  }
}
