package thwartwise.proof;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.RealVector;
import thwartwise.proof.ProofComparison.LikelySlip;
import thwartwise.rules.RuleSet;
import thwartwise.spread.InputKind;
import thwartwise.spread.PredictionSpread;

/**
 * The search for the one measurement whose plain error explains the readings best: the remaining
 * discrepancy and the error in plain slips of its kind, both squared, are least together.
 *
 * @param off readings less predictions
 * @param solver of their covariance
 * @param spreads the size of a plain slip of a measurement, by its name
 */
record SlipSearch(
    List<ProofReading> readings, RealVector off, DecompositionSolver solver, RuleSet spreads) {

  /** A smaller share is no explanation (judgement). */
  private static final double MOST_OF_IT = 0.5;

  /** Empty where no single measurement explains half of the discrepancy. */
  Optional<LikelySlip> likeliest(PredictionSpread spread) {
    List<LikelySlip> slips = new ArrayList<>();
    for (PredictionSpread.Source source : spread.sources()) {
      if (source.kind().mayBeWrong()) {
        slip(source, OptionalInt.empty()).ifPresent(slips::add);
      }
    }
    for (int i = 0; i < readings.size(); i++) {
      slip(misread(i), OptionalInt.of(i)).ifPresent(slips::add);
    }
    return slips.stream()
        .min(Comparator.comparingDouble(this::unlikely))
        .filter(slip -> slip.explains() >= MOST_OF_IT);
  }

  /** The share of the distance that another value of one measurement explains. */
  double explained(PredictionSpread spread, InputKind kind) {
    return spread.sources().stream()
        .filter(source -> source.kind() == kind)
        .flatMap(source -> slip(source, OptionalInt.empty()).stream())
        .mapToDouble(slip -> slip.explains() * distance())
        .max()
        .orElse(0);
  }

  private double unlikely(LikelySlip slip) {
    double slips = slip.by() / slipSize(slip.kind());
    return distance() * (1 - slip.explains()) + slips * slips;
  }

  /** SI. */
  private double slipSize(InputKind kind) {
    double value = spreads.value(kind.slip());
    return kind == InputKind.HEEL_READ ? Math.toRadians(value) : value;
  }

  private double distance() {
    return off.dotProduct(solver.solve(off));
  }

  /** One reading alone. */
  private PredictionSpread.Source misread(int reading) {
    double spread = readings.get(reading).spread();
    return new PredictionSpread.Source(
        readings.get(reading) instanceof ProofReading.HeelReading
            ? InputKind.HEEL_READ
            : InputKind.FREEBOARD_READ,
        "",
        spread,
        IntStream.range(0, readings.size()).mapToObj(i -> i == reading ? spread : 0.0).toList());
  }

  private Optional<LikelySlip> slip(PredictionSpread.Source source, OptionalInt reading) {
    RealVector moves = ProofComparison.vector(source.moves());
    RealVector weighted = solver.solve(moves);
    double stiffness = weighted.dotProduct(moves);
    double distance = distance();
    if (!(stiffness > 0) || !(distance > 0)) {
      return Optional.empty();
    }
    double by = weighted.dotProduct(off) / stiffness;
    return Optional.of(
        new LikelySlip(
            source.kind(),
            source.item(),
            reading,
            by,
            by * source.spread(),
            by * by * stiffness / distance));
  }
}
