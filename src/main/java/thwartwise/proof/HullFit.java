package thwartwise.proof;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer.Optimum;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;
import thwartwise.boat.HullWeight;
import thwartwise.spread.PredictionSpread;

/**
 * The mass and centre of gravity of the bare hull that fit the readings best, by least squares: the
 * sum of the squares of all misfits and of the three corrections, each over its spread, is least.
 * The mass is not corrected by more than its own spread.
 *
 * @param stated as measured before
 * @param fitted the best fit of the boat afloat
 * @param spreads of the fitted values, one standard deviation each
 * @param misfits of the readings after the fit, each over its spread, rotated so that they are
 *     independent
 * @param massHeld whether the readings asked for a greater correction of the mass than is allowed
 */
public record HullFit(
    HullWeight stated,
    HullWeight fitted,
    HullWeight spreads,
    List<Double> misfits,
    boolean massHeld) {
  private static final int MOST = 200;

  /** The change of the hull, as a share of a spread, for finding its effect on the readings. */
  private static final double STEP = 0.1;

  private static final double NUMERIC = 1e-9;

  public HullFit {
    misfits = List.copyOf(misfits);
  }

  /**
   * Empty where the boat has no equilibrium with the stated values, or nothing fits.
   *
   * @param mayBeOff one standard deviation of mass, place along and height as stated
   */
  public static Optional<HullFit> of(FloatedPrediction prediction, HullWeight mayBeOff) {
    List<ProofReading> readings = prediction.readings();
    PredictionSpread none = new PredictionSpread(List.of(), List.of(), readings.size());
    return of(prediction, mayBeOff, ProofComparison.covariance(readings, none));
  }

  /**
   * The same, where the readings have more errors than that of reading.
   *
   * @param covariance of the readings, from everything but mass and centre of the hull
   */
  static Optional<HullFit> of(
      FloatedPrediction prediction, HullWeight mayBeOff, RealMatrix covariance) {
    HullWeight stated = prediction.model().hullWeight();
    if (Arrays.stream(prediction.values(stated)).anyMatch(Double::isNaN)) {
      return Optional.empty();
    }
    try {
      Fit fit = new Fit(prediction, stated, mayBeOff, weights(covariance));
      return Optional.of(fit.answer());
    } catch (MathRuntimeException nothingFits) {
      return Optional.empty();
    }
  }

  /** The weights of the readings, and of zero corrections, which are counted in spreads. */
  private static RealMatrix weights(RealMatrix covariance) {
    int readings = covariance.getRowDimension();
    RealMatrix weights = MatrixUtils.createRealIdentityMatrix(readings + 3);
    weights.setSubMatrix(
        new CholeskyDecomposition(covariance).getSolver().getInverse().getData(), 0, 0);
    return weights;
  }

  /** Corrections of the hull, in spreads. */
  private record Fit(
      FloatedPrediction prediction, HullWeight stated, HullWeight mayBeOff, RealMatrix weights) {

    HullFit answer() {
      Optimum optimum = optimum(true);
      double[] corrections = optimum.getPoint().toArray();
      RealMatrix covariances = optimum.getCovariances(NUMERIC);
      double[] spreads =
          IntStream.range(0, corrections.length)
              .mapToDouble(i -> mayBeOff.values()[i] * Math.sqrt(covariances.getEntry(i, i)))
              .toArray();
      int readings = prediction.readings().size();
      List<Double> misfits =
          Arrays.stream(optimum.getResiduals().toArray()).limit(readings).boxed().toList();
      boolean held =
          Math.abs(corrections[0]) >= 1 - NUMERIC
              && Math.abs(optimum(false).getPoint().getEntry(0)) > 1;
      return new HullFit(stated, hull(corrections), HullWeight.of(spreads), misfits, held);
    }

    private Optimum optimum(boolean massHeld) {
      LeastSquaresBuilder builder =
          new LeastSquaresBuilder()
              .start(new double[3])
              .model(this::valueAndSlopes)
              .target(target())
              .weight(weights)
              .maxEvaluations(MOST)
              .maxIterations(MOST);
      if (massHeld) {
        builder.parameterValidator(Fit::held);
      }
      return new LevenbergMarquardtOptimizer().optimize(builder.build());
    }

    private static RealVector held(RealVector corrections) {
      RealVector held = corrections.copy();
      held.setEntry(0, Math.max(-1, Math.min(1, held.getEntry(0))));
      return held;
    }

    /** The readings, and zero corrections of mass and centre. */
    private double[] target() {
      List<ProofReading> readings = prediction.readings();
      double[] target = new double[readings.size() + 3];
      for (int i = 0; i < readings.size(); i++) {
        target[i] = readings.get(i).value();
      }
      return target;
    }

    private HullWeight hull(double[] corrections) {
      double[] values = stated.values();
      for (int i = 0; i < values.length; i++) {
        values[i] += corrections[i] * mayBeOff.values()[i];
      }
      return HullWeight.of(values);
    }

    private double[] values(double[] corrections) {
      double[] predicted = prediction.values(hull(corrections));
      double[] values = Arrays.copyOf(predicted, predicted.length + 3);
      System.arraycopy(corrections, 0, values, predicted.length, 3);
      return values;
    }

    private Pair<RealVector, RealMatrix> valueAndSlopes(RealVector at) {
      double[] corrections = at.toArray();
      double[] value = values(corrections);
      double[][] slopes = new double[value.length][3];
      for (int p = 0; p < 3; p++) {
        double[] up = values(moved(corrections, p, STEP));
        double[] down = values(moved(corrections, p, -STEP));
        for (int i = 0; i < value.length; i++) {
          slopes[i][p] = (up[i] - down[i]) / (2 * STEP);
        }
      }
      return new Pair<>(new ArrayRealVector(value), new Array2DRowRealMatrix(slopes));
    }

    private static double[] moved(double[] corrections, int which, double by) {
      double[] moved = corrections.clone();
      moved[which] += by;
      return moved;
    }
  }
}
