package thwartwise.uncertainty;

import java.util.random.RandomGenerator;

/** The knowledge of a quantity: its possible values, and the probability of each. */
public sealed interface Distribution {

  double mean();

  /** The standard uncertainty of the mean as the value. */
  double standardDeviation();

  /** One random value. */
  double draw(RandomGenerator random);

  /** The error of a careful reading: most values near the mean, few far off. */
  record Normal(double mean, double standardDeviation) implements Distribution {
    public Normal {
      finite(mean, "mean");
      positive(standardDeviation, "standard deviation");
    }

    @Override
    public double draw(RandomGenerator random) {
      return mean + standardDeviation * random.nextGaussian();
    }
  }

  /** Anything between two values, all equally likely. */
  record Rectangular(double low, double high) implements Distribution {
    public Rectangular {
      finite(low, "lowest value");
      finite(high, "highest value");
      positive(high - low, "distance from lowest to highest value");
    }

    public static Rectangular about(double mean, double halfWidth) {
      return new Rectangular(mean - halfWidth, mean + halfWidth);
    }

    @Override
    public double mean() {
      return (low + high) / 2;
    }

    @Override
    public double standardDeviation() {
      return (high - low) / Math.sqrt(12);
    }

    @Override
    public double draw(RandomGenerator random) {
      return low + (high - low) * random.nextDouble();
    }
  }

  /** Anything between two values, likeliest at the mode and less so toward either end. */
  record Triangular(double low, double mode, double high) implements Distribution {
    public Triangular {
      finite(low, "lowest value");
      finite(high, "highest value");
      positive(high - low, "distance from lowest to highest value");
      if (!(low <= mode && mode <= high)) {
        throw new IllegalArgumentException(
            "The likeliest value %s is not between %s and %s.".formatted(mode, low, high));
      }
    }

    @Override
    public double mean() {
      return (low + mode + high) / 3;
    }

    @Override
    public double standardDeviation() {
      double below = mode - low;
      double above = high - mode;
      return Math.sqrt((below * below + below * above + above * above) / 18);
    }

    @Override
    public double draw(RandomGenerator random) {
      double width = high - low;
      double share = random.nextDouble();
      return share * width < mode - low
          ? low + Math.sqrt(share * width * (mode - low))
          : high - Math.sqrt((1 - share) * width * (high - mode));
    }
  }

  /**
   * A quantity that cannot be negative, such as a mass: its logarithm is normal.
   *
   * @param location mean of the logarithm
   * @param shape standard deviation of the logarithm
   */
  record Lognormal(double location, double shape) implements Distribution {
    public Lognormal {
      finite(location, "mean of the logarithm");
      positive(shape, "standard deviation of the logarithm");
    }

    /** The distribution with this mean and standard deviation. */
    public static Lognormal of(double mean, double standardDeviation) {
      positive(mean, "mean");
      positive(standardDeviation, "standard deviation");
      double relative = standardDeviation / mean;
      double variance = Math.log1p(relative * relative);
      return new Lognormal(Math.log(mean) - variance / 2, Math.sqrt(variance));
    }

    @Override
    public double mean() {
      return Math.exp(location + shape * shape / 2);
    }

    @Override
    public double standardDeviation() {
      return mean() * Math.sqrt(Math.expm1(shape * shape));
    }

    @Override
    public double draw(RandomGenerator random) {
      return Math.exp(location + shape * random.nextGaussian());
    }
  }

  private static void finite(double value, String what) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("The %s must be finite: %s.".formatted(what, value));
    }
  }

  private static void positive(double value, String what) {
    if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("The %s must be above 0: %s.".formatted(what, value));
    }
  }
}
