package thwartwise.spread;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.hull.UnusableBoat;
import thwartwise.rules.RuleSet;
import thwartwise.uncertainty.Distribution;
import thwartwise.uncertainty.FirstOrderPropagation;
import thwartwise.uncertainty.MeasurementModel;
import thwartwise.uncertainty.PropagatedResult;

/**
 * How far predictions for a boat may be off because of its measurements: figures by the
 * measurements that move them.
 *
 * @param sources one for each measurement
 * @param remainders what first order leaves out of each of them: the resulting error of every
 *     figure, root mean square
 * @param figures number of predictions
 */
public record PredictionSpread(List<Source> sources, List<List<Double>> remainders, int figures) {

  /**
   * Of an input that is z spreads off, first order leaves out c z²/2 with the second difference c;
   * its square is 3 c²/4 on average, since the mean of z⁴ is 3 for a normal quantity (DERIVED).
   */
  private static final double OF_CURVATURE = Math.sqrt(0.75);

  public PredictionSpread {
    sources = List.copyOf(sources);
    remainders = List.copyOf(remainders);
  }

  /**
   * One measurement.
   *
   * @param item the name of what was measured; empty for the boat
   * @param spread one standard deviation, SI; for a share, that
   * @param moves the change of each figure when it is one spread up
   */
  public record Source(InputKind kind, String item, double spread, List<Double> moves) {
    public Source {
      moves = List.copyOf(moves);
    }
  }

  /**
   * @param measuredBetter kinds of measurement that were taken with more care
   * @param predicted the figures of a boat, as many at every call; NaN where there is none
   */
  public static PredictionSpread of(
      Boat boat,
      BoatModel model,
      RuleSet rules,
      RuleSet spreads,
      Set<InputKind> measuredBetter,
      Function<BoatModel, double[]> predicted) {
    List<SpreadInput> inputs = SpreadInputs.of(boat, model, rules, spreads, measuredBetter, 0);
    List<Distribution> distributions = inputs.stream().map(SpreadInput::distribution).toList();
    int figures = predicted.apply(model).length;
    List<PropagatedResult> results =
        FirstOrderPropagation.of(distributions, varied(boat, model, inputs, predicted, figures), 1);
    return new PredictionSpread(
        IntStream.range(0, inputs.size()).mapToObj(i -> source(inputs.get(i), i, results)).toList(),
        IntStream.range(0, inputs.size()).mapToObj(i -> remainder(i, results)).toList(),
        figures);
  }

  private static List<Double> remainder(int input, List<PropagatedResult> results) {
    return results.stream().map(r -> OF_CURVATURE * r.curvature(input)).toList();
  }

  private static Source source(SpreadInput input, int at, List<PropagatedResult> results) {
    return new Source(
        input.kind(),
        input.item(),
        input.spread(),
        results.stream().map(r -> r.contribution(at)).toList());
  }

  private static MeasurementModel varied(
      Boat boat,
      BoatModel model,
      List<SpreadInput> inputs,
      Function<BoatModel, double[]> predicted,
      int figures) {
    return values -> {
      try {
        return predicted.apply(
            VariedBoat.asMeasured(boat, 0).at(inputs, values).model(boat, model));
      } catch (UnusableBoat contradiction) {
        double[] none = new double[figures];
        Arrays.fill(none, Double.NaN);
        return none;
      }
    };
  }
}
