package thwartwise.spread;

import thwartwise.checks.CheckQuestion;
import thwartwise.checks.Margin;
import thwartwise.uncertainty.CoverageInterval;

/**
 * One figure of a crew with its spread.
 *
 * @param people number of people
 * @param margin as measured, without allowance
 * @param spread one standard deviation, SI; infinite or NaN where a measurement that is off by its
 *     spread leaves no equilibrium
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

  /** The numerical difference between two ways to the same figure. */
  private static final double SAME = 1e-4;

  /**
   * The number of standard deviations below the mean under which 5 of 100 normally distributed
   * values lie.
   */
  private static final double ONE_SIDED = 1.6449;

  /**
   * Whether it is met in enough boats. A figure of another crew, such as an act that is worst for
   * another one, is judged as if errors were normally distributed.
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
