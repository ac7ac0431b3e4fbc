package thwartwise.boat;

import java.time.LocalDate;
import java.util.Optional;

/** The filling of a chamber. */
public sealed interface Filling {

  /**
   * Air behind a seal. A test is stored next to the claim; without one nothing is proven.
   *
   * @param repaired the day on which it was last repaired, cut or fitted with something; an earlier
   *     test was of another chamber
   */
  record Air(Seal seal, Optional<SealTest> test, Optional<LocalDate> repaired) implements Filling {
    public Air(Seal seal, Optional<SealTest> test) {
      this(seal, test, Optional.empty());
    }

    /** The day of a repair after the test, or on the same day. */
    public Optional<LocalDate> repairedSinceTest() {
      return repaired.filter(day -> test.filter(t -> t.date().isAfter(day)).isEmpty());
    }

    /**
     * Whether a recorded leak test must be repeated, because it is out of date or from before a
     * repair.
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

  /** The kind of filling. */
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
   * The evidence for the seal of a chamber full of air. Only a proven one counts, and only while
   * its test is valid.
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
   * A recorded leak test of a chamber. The conditions for counting one are all here.
   *
   * @param minutes how long it lasted
   * @param litresIn water that got in, litres
   * @param head height of the water above the lowest point of the chamber, m; empty where nobody
   *     stated it
   */
  record SealTest(
      LocalDate date,
      String how,
      double minutes,
      double litresIn,
      String by,
      Optional<Double> head) {
    /** An older test is out of date (judgement). */
    public static final int FRESH_MONTHS = 12;

    /**
     * The head of water taken for a leak test where nobody knows it, about a hand, m (judgement). A
     * chamber that leaked at a small head leaks much more at a larger one.
     */
    public static final double LEAST_HEAD = 0.1;

    /** A shorter test shows nothing (judgement; the class below floods for fifteen minutes). */
    public static final double LEAST_MINUTES = 10;

    /**
     * The pattern of a youth training-dinghy class: at most one litre in any compartment (READ).
     */
    public static final double MOST_LITRES = 1.0;

    /** A test as the help describes it: filled to the lid, or pushed under. */
    public SealTest(LocalDate date, String how, double minutes, double litresIn, String by) {
      this(date, how, minutes, litresIn, by, Optional.empty());
    }

    public boolean isStale(LocalDate today) {
      return isStale(date, today);
    }

    /** Whether a test of that day is out of date. */
    public static boolean isStale(LocalDate tested, LocalDate today) {
      return tested.plusMonths(FRESH_MONTHS).isBefore(today);
    }
  }
}
