package thwartwise.boat;

import java.time.LocalDate;

/**
 * A recorded leak test of a chamber. What makes one count stands here alone.
 *
 * @param minutes how long it lasted
 * @param litresIn water that got in, litres
 */
public record SealTest(LocalDate date, String how, double minutes, double litresIn, String by) {
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
