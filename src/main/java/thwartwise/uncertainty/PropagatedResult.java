package thwartwise.uncertainty;

import java.util.Arrays;

/**
 * A result with what each input contributes to its standard uncertainty, to first order. NaN where
 * the model had no result for an input moved either way.
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

  /** With every input at its mean. */
  public double best() {
    return best;
  }

  /** By how much the result changes, with its sign, when an input is one standard deviation up. */
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

  /** So many standard uncertainties to either side of the best value. */
  public CoverageInterval interval(double factor) {
    double reach = factor * standardUncertainty();
    return new CoverageInterval(best - reach, best + reach);
  }

  /** What part of the variance an input makes up; nothing where there is no variance. */
  public double share(int input) {
    double variance = variance();
    return variance == 0 ? 0 : contributions[input] * contributions[input] / variance;
  }

  /**
   * The result where each input lies so many standard deviations above its mean, to second order
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
