package thwartwise.uncertainty;

import java.util.Arrays;

/**
 * A result with the contribution of each input to its standard uncertainty, to first order. NaN
 * where the model had no result for an input moved either way.
 */
public final class PropagatedResult {
  private final double best;
  private final double[] contributions;
  private final double[] curvatures;
  private final double variance;

  PropagatedResult(double best, double[] contributions, double[] curvatures) {
    this.best = best;
    this.contributions = contributions;
    this.curvatures = curvatures;
    this.variance = Arrays.stream(contributions).map(c -> c * c).sum();
  }

  /** The result with every input at its mean. */
  public double best() {
    return best;
  }

  /** The change of the result, with its sign, when an input is one standard deviation up. */
  public double contribution(int input) {
    return contributions[input];
  }

  /** The second difference: what the result changes when an input is moved up and moved down. */
  public double curvature(int input) {
    return curvatures[input];
  }

  /** The combined standard uncertainty. */
  public double standardUncertainty() {
    return Math.sqrt(variance);
  }

  /** The interval of a number of standard uncertainties to either side of the best value. */
  public CoverageInterval interval(double factor) {
    double reach = factor * standardUncertainty();
    return new CoverageInterval(best - reach, best + reach);
  }

  /** The share of an input in the variance; zero where there is no variance. */
  public double share(int input) {
    return variance == 0 ? 0 : contributions[input] * contributions[input] / variance;
  }

  /**
   * The result with each input at a number of standard deviations above its mean, to second order
   * without products of two inputs; for many such cases at once.
   *
   * @param deviations by input and case
   * @param cases their number
   */
  public double[] at(double[][] deviations, int cases) {
    double[] sums = new double[cases];
    Arrays.fill(sums, best);
    for (int i = 0; i < contributions.length; i++) {
      if (contributions[i] != 0 || curvatures[i] != 0) {
        add(contributions[i], curvatures[i], deviations[i], sums);
      }
    }
    return sums;
  }

  private static void add(double contribution, double curvature, double[] of, double[] sums) {
    for (int n = 0; n < sums.length; n++) {
      double z = of[n];
      sums[n] += contribution * z + curvature * z * z / 2;
    }
  }
}
