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

  public boolean isKnown() {
    return Double.isFinite(spread) && Double.isFinite(range.length());
  }
}
