package thwartwise.proof;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import thwartwise.spread.InputKind;
import thwartwise.spread.PredictionSpread;

/**
 * Readings of a boat afloat held against what was predicted, all of them together: a measurement
 * that is off moves several readings at once, so they are compared by r' C^-1 r with C of reading
 * and prediction together.
 *
 * @param off readings less predictions
 * @param spreads of reading and prediction together, one standard deviation each
 * @param distance the sum of squares r' C^-1 r
 * @param limit that it stays below in 95 of 100 proofs of boats measured like this
 * @param likeliest which measurement, were it wrong, explains most of what was seen
 */
public record ProofComparison(
    List<Double> off,
    List<Double> spreads,
    double distance,
    double limit,
    Optional<LikelySlip> likeliest) {

  /** Two explanations nearer than this are as good as each other. */
  private static final double ALIKE = 0.1;

  public ProofComparison {
    off = List.copyOf(off);
    spreads = List.copyOf(spreads);
  }

  /**
   * A measurement that may be wrong.
   *
   * @param bySpreads how many of its spreads it would have to be off, with its sign
   * @param explains what part of the distance goes then
   */
  public record LikelySlip(InputKind kind, String item, double bySpreads, double explains) {}

  /** Whether the boat agrees with what was measured of it. */
  public boolean agrees() {
    return distance <= limit;
  }

  /**
   * @param predicted of the boat as measured, with a value for each reading
   */
  public static ProofComparison of(FloatedPrediction predicted, PredictionSpread spread) {
    List<ProofReading> readings = predicted.readings();
    double[] values = predicted.values(HullWeight.of(predicted.model()));
    RealVector off = new ArrayRealVector(readings.size());
    RealMatrix covariance = new Array2DRowRealMatrix(readings.size(), readings.size());
    for (int i = 0; i < readings.size(); i++) {
      off.setEntry(i, readings.get(i).value() - values[i]);
      covariance.addToEntry(i, i, readings.get(i).spread() * readings.get(i).spread());
    }
    for (PredictionSpread.Source source : spread.sources()) {
      RealVector moves = moves(source);
      covariance = covariance.add(moves.outerProduct(moves));
    }
    RealMatrix all = covariance;
    DecompositionSolver solver = new CholeskyDecomposition(all).getSolver();
    return new ProofComparison(
        IntStream.range(0, readings.size()).mapToObj(off::getEntry).toList(),
        IntStream.range(0, readings.size()).mapToObj(i -> Math.sqrt(all.getEntry(i, i))).toList(),
        off.dotProduct(solver.solve(off)),
        limit(readings.size()),
        likeliest(spread, off, solver));
  }

  private static RealVector moves(PredictionSpread.Source source) {
    return new ArrayRealVector(source.moves().stream().mapToDouble(Double::doubleValue).toArray());
  }

  /** Of those that explain about as much, the one that would have to be off by the least. */
  private static Optional<LikelySlip> likeliest(
      PredictionSpread spread, RealVector off, DecompositionSolver solver) {
    List<LikelySlip> slips =
        spread.sources().stream()
            .filter(source -> source.kind().mayBeWrong())
            .flatMap(source -> slip(source, off, solver).stream())
            .toList();
    double most = slips.stream().mapToDouble(LikelySlip::explains).max().orElse(0);
    return slips.stream()
        .filter(slip -> slip.explains() >= most - ALIKE)
        .min(Comparator.comparingDouble(slip -> Math.abs(slip.bySpreads())));
  }

  private static Optional<LikelySlip> slip(
      PredictionSpread.Source source, RealVector off, DecompositionSolver solver) {
    RealVector moves = moves(source);
    RealVector weighted = solver.solve(moves);
    double stiffness = weighted.dotProduct(moves);
    double distance = off.dotProduct(solver.solve(off));
    if (!(stiffness > 0) || !(distance > 0)) {
      return Optional.empty();
    }
    double by = weighted.dotProduct(off) / stiffness;
    return Optional.of(
        new LikelySlip(source.kind(), source.item(), by, by * by * stiffness / distance));
  }

  /**
   * What a sum of squares of so many normal quantities stays below in 95 of 100, by Wilson and
   * Hilferty's cube root (1931, FROM MEMORY): within 0.5 % from two on.
   */
  static double limit(int quantities) {
    double ninth = 2.0 / (9 * quantities);
    return quantities * Math.pow(1 - ninth + 1.6448536 * Math.sqrt(ninth), 3);
  }
}
