package thwartwise.spread;

import thwartwise.checks.CheckQuestion;
import thwartwise.checks.Margin;
import thwartwise.uncertainty.CoverageInterval;

/**
 * One figure of a crew with its spread.
 *
 * @param people of how many
 * @param margin as measured, without allowance
 * @param spread one standard deviation, SI; endless or NaN where a measurement that is off by its
 *     spread leaves no state of rest
 * @param range in which 95 of 100 boats measured like this have it, SI
 * @param share of boats measured like this in which it is met
 */
public record FigureSpread(
    int people,
    CheckQuestion question,
    Margin margin,
    double spread,
    CoverageInterval range,
    double share) {

  /** What two ways to the same figure may differ by. */
  private static final double SAME = 1e-4;

  /** So many standard deviations below the mean 5 of 100 normally distributed values lie. */
  private static final double ONE_SIDED = 1.6449;

  /**
   * Whether it is met in as many boats as it must be; of a figure that is not that of this crew, as
   * of an act which is worst for another one, as if errors were normally distributed.
   */
  public boolean isSure(Margin other) {
    boolean same =
        Math.abs(other.room() - margin.room()) <= SAME * Math.max(1, Math.abs(margin.limit()));
    return same ? share >= BoatSpread.ENOUGH : isKnown() && other.room() >= ONE_SIDED * spread;
  }

  public boolean isKnown() {
    return Double.isFinite(spread) && Double.isFinite(range.length());
  }
}
