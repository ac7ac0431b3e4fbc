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

  PropagatedResult(double best, double[] contributions, double[] curvatures) {
    this.best = best;
    this.contributions = contributions;
    this.curvatures = curvatures;
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
    return Math.sqrt(variance());
  }

  /** The interval of a number of standard uncertainties to either side of the best value. */
  public CoverageInterval interval(double factor) {
    double reach = factor * standardUncertainty();
    return new CoverageInterval(best - reach, best + reach);
  }

  /** The share of an input in the variance; zero where there is no variance. */
  public double share(int input) {
    double variance = variance();
    return variance == 0 ? 0 : contributions[input] * contributions[input] / variance;
  }

  /**
   * The result with each input at a number of standard deviations above its mean, to second order
   * without products of two inputs.
   */
  public double at(double[] deviations) {
    double sum = best;
    for (int i = 0; i < contributions.length; i++) {
      double z = deviations[i];
      sum += contributions[i] * z + curvatures[i] * z * z / 2;
    }
    return sum;
  }

  private double variance() {
    return Arrays.stream(contributions).map(c -> c * c).sum();
  }
}
