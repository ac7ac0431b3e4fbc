package thwartwise.uncertainty;

import java.util.Arrays;

/**
 * The distribution of a result as its draws. A draw without a result is counted as one and enters
 * no mean.
 */
public final class SampledResult {
  private final double[] sorted;
  private final int missing;

  private SampledResult(double[] sorted, int missing) {
    this.sorted = sorted;
    this.missing = missing;
  }

  /**
   * @param draws in any order; NaN where one had no result
   */
  public static SampledResult of(double[] draws) {
    double[] sorted = draws.clone();
    Arrays.sort(sorted);
    int results = sorted.length;
    while (results > 0 && Double.isNaN(sorted[results - 1])) {
      results--;
    }
    return new SampledResult(Arrays.copyOf(sorted, results), draws.length - results);
  }

  public int draws() {
    return sorted.length + missing;
  }

  /** The number of draws without a result. */
  public int missing() {
    return missing;
  }

  public double mean() {
    return Arrays.stream(sorted).sum() / sorted.length;
  }

  public double standardDeviation() {
    double mean = mean();
    double squares = Arrays.stream(sorted).map(d -> (d - mean) * (d - mean)).sum();
    return Math.sqrt(squares / (sorted.length - 1));
  }

  /** The share of all draws at or above a value; a draw without a result is not. */
  public double shareAtLeast(double value) {
    int below = 0;
    while (below < sorted.length && sorted[below] < value) {
      below++;
    }
    return (double) (sorted.length - below) / draws();
  }

  /** The interval with as many draws below it as above it (JCGM 101:2008, 7.7.2). */
  public CoverageInterval symmetricInterval(double probability) {
    int inside = inside(probability);
    return interval((sorted.length - inside) / 2, inside);
  }

  /** The shortest interval with this share of the draws (JCGM 101:2008, 7.7.4). */
  public CoverageInterval shortestInterval(double probability) {
    int inside = inside(probability);
    int shortest = 0;
    for (int from = 1; from + inside < sorted.length; from++) {
      if (interval(from, inside).length() < interval(shortest, inside).length()) {
        shortest = from;
      }
    }
    return interval(shortest, inside);
  }

  private int inside(double probability) {
    if (!(probability > 0 && probability < 1)) {
      throw new IllegalArgumentException(
          "The coverage probability must be between 0 and 1: " + probability + ".");
    }
    if (sorted.length == 0) {
      throw new IllegalStateException("No draw had a result: there is no coverage interval.");
    }
    return Math.min((int) Math.round(probability * sorted.length), sorted.length - 1);
  }

  private CoverageInterval interval(int from, int inside) {
    return new CoverageInterval(sorted[from], sorted[from + inside]);
  }
}
