package thwartwise.spread;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import thwartwise.spread.CrewMargins.Asked;
import thwartwise.spread.CrewMargins.Figure;
import thwartwise.uncertainty.Distribution;
import thwartwise.uncertainty.MonteCarloPropagation;

/**
 * Computed figures of one boat with a measurement moved and a crew in it, and the boats drawn at
 * random. When a search is repeated with a larger allowance for some seatings, most of its crews
 * are the same. Thread-safe; for one boat, whoever is aboard, and its rules.
 */
public final class CaseFigures {
  /** The number of boats drawn. */
  static final int DRAWS = 20_000;

  private static final long SEED = 21;

  private final Map<VariedBoat, Map<Asked, List<Figure>>> known = new ConcurrentHashMap<>();

  /** The figures of one boat, whoever its file has aboard, to which more are added. */
  Map<Asked, List<Figure>> of(VariedBoat boat) {
    return known.computeIfAbsent(
        boat.with(b -> b.withAboard(List.of())), b -> new ConcurrentHashMap<>());
  }

  private final Map<List<Distribution>, double[][]> drawn = new ConcurrentHashMap<>();

  /**
   * Boats drawn at random: by input and boat, the deviation from the mean in standard deviations.
   */
  double[][] deviations(List<SpreadInput> inputs) {
    return drawn.computeIfAbsent(
        inputs.stream().map(SpreadInput::distribution).toList(), CaseFigures::deviationsOf);
  }

  private static double[][] deviationsOf(List<Distribution> inputs) {
    double[][] values = MonteCarloPropagation.values(inputs, DRAWS, SEED);
    for (int i = 0; i < values.length; i++) {
      double mean = inputs.get(i).mean();
      double deviation = inputs.get(i).standardDeviation();
      double[] of = values[i];
      for (int n = 0; n < of.length; n++) {
        of[n] = (of[n] - mean) / deviation;
      }
    }
    return values;
  }
}
