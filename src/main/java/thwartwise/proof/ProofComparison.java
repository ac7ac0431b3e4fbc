package thwartwise.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import thwartwise.rules.RuleSet;
import thwartwise.spread.InputKind;
import thwartwise.spread.PredictionSpread;

/**
 * Readings of a boat afloat held against what was predicted, all of them together: a measurement
 * that is off moves several readings at once, so they are compared by r' C^-1 r with C of reading
 * and prediction together. Among so many readings a weight that was forgotten hides, though it is
 * what a proof is for; so what the hull's mass alone explains of that sum has a limit of its own.
 * Both limits together are kept in 95 of 100 proofs of boats measured like this.
 *
 * @param off readings less predictions
 * @param spreads of reading and prediction together, one standard deviation each
 * @param distance the sum of squares r' C^-1 r
 * @param limit that it stays below in 97.5 of 100
 * @param massDistance what the mass of the hull, were it another, explains of it
 * @param massLimit that this stays below in 97.5 of 100
 * @param likeliest which measurement, were it wrong, explains most of what was seen
 */
public record ProofComparison(
    List<Double> off,
    List<Double> spreads,
    double distance,
    double limit,
    double massDistance,
    double massLimit,
    Optional<LikelySlip> likeliest) {

  /** The square of 2.2414, within which a normal quantity stays in 97.5 of 100 (DERIVED). */
  private static final double MASS_LIMIT = 5.0239;

  public ProofComparison {
    off = List.copyOf(off);
    spreads = List.copyOf(spreads);
  }

  /**
   * A measurement that may be wrong.
   *
   * @param item the name of what was measured; empty for the boat
   * @param reading its number where it is a reading of the proof itself
   * @param bySpreads its error in spreads, with its sign
   * @param by the same, SI; a share for what is reported in shares
   * @param explains the share of the distance that it explains
   */
  public record LikelySlip(
      InputKind kind,
      String item,
      OptionalInt reading,
      double bySpreads,
      double by,
      double explains) {}

  /** Whether the boat agrees with its measurements. */
  public boolean agrees() {
    return distance <= limit && massDistance <= massLimit;
  }

  /**
   * @param predicted of the boat as measured, with a value for each reading
   * @param spreads how far a plain slip puts a measurement off, by its name
   */
  public static ProofComparison of(
      FloatedPrediction predicted, PredictionSpread spread, RuleSet spreads) {
    List<ProofReading> readings = predicted.readings();
    double[] values = predicted.values(predicted.model().hullWeight());
    RealVector off = new ArrayRealVector(readings.size());
    for (int i = 0; i < readings.size(); i++) {
      off.setEntry(i, readings.get(i).value() - values[i]);
    }
    RealMatrix all = covariance(readings, spread);
    DecompositionSolver solver = new CholeskyDecomposition(all).getSolver();
    SlipSearch search = new SlipSearch(readings, off, solver, spreads);
    return new ProofComparison(
        IntStream.range(0, readings.size()).mapToObj(off::getEntry).toList(),
        IntStream.range(0, readings.size()).mapToObj(i -> Math.sqrt(all.getEntry(i, i))).toList(),
        off.dotProduct(solver.solve(off)),
        limit(readings.size()),
        search.explained(spread, InputKind.HULL_MASS),
        MASS_LIMIT,
        search.likeliest(spread));
  }

  /** Of the readings and of what some measurements do to them, to second order. */
  static RealMatrix covariance(List<ProofReading> readings, PredictionSpread spread) {
    RealMatrix covariance = new Array2DRowRealMatrix(readings.size(), readings.size());
    for (int i = 0; i < readings.size(); i++) {
      covariance.addToEntry(i, i, readings.get(i).spread() * readings.get(i).spread());
    }
    List<List<Double>> off = new ArrayList<>(spread.remainders());
    spread.sources().forEach(source -> off.add(source.moves()));
    for (List<Double> moves : off) {
      covariance = covariance.add(vector(moves).outerProduct(vector(moves)));
    }
    return covariance;
  }

  static RealVector vector(List<Double> values) {
    return new ArrayRealVector(values.stream().mapToDouble(Double::doubleValue).toArray());
  }

  /**
   * What a sum of squares of so many normal quantities stays below in 97.5 of 100, by Wilson and
   * Hilferty's cube root (1931, FROM MEMORY): within 0.5 % from two on.
   */
  static double limit(int quantities) {
    double ninth = 2.0 / (9 * quantities);
    return quantities * Math.pow(1 - ninth + 1.9599640 * Math.sqrt(ninth), 3);
  }
}
