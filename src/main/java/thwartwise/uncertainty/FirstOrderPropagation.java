package thwartwise.uncertainty;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The law of propagation of uncertainty to first order: each input is moved up and down, and the
 * difference of the results gives its contribution (JCGM 100:2008, 5.1.3 note 2, which moves it by
 * one standard uncertainty). All results share these evaluations: two for each input, and one of
 * the inputs at their means.
 */
public final class FirstOrderPropagation {
  private FirstOrderPropagation() {}

  /**
   * One answer for each result of the model, in its order.
   *
   * @param step the move of an input, in standard deviations
   */
  public static List<PropagatedResult> of(
      List<Distribution> inputs, MeasurementModel model, double step) {
    return of(inputs, model, step, () -> {});
  }

  /**
   * The same.
   *
   * @param evaluated is run after each evaluation, by several threads at once
   */
  public static List<PropagatedResult> of(
      List<Distribution> inputs, MeasurementModel model, double step, Runnable evaluated) {
    if (!(step > 0)) {
      throw new IllegalArgumentException("The step must be above 0: " + step + ".");
    }
    List<double[]> all =
        IntStream.rangeClosed(0, 2 * inputs.size())
            .parallel()
            .mapToObj(
                i -> {
                  double[] results = model.results(moved(inputs, i, step));
                  evaluated.run();
                  return results;
                })
            .toList();
    return IntStream.range(0, all.get(0).length).mapToObj(r -> result(all, r, step)).toList();
  }

  /** The means first; then each input by itself, up and down. */
  private static double[] moved(List<Distribution> inputs, int evaluation, double step) {
    double[] values = inputs.stream().mapToDouble(Distribution::mean).toArray();
    if (evaluation > 0) {
      int input = (evaluation - 1) / 2;
      double by = step * inputs.get(input).standardDeviation();
      values[input] += evaluation % 2 == 1 ? by : -by;
    }
    return values;
  }

  private static PropagatedResult result(List<double[]> all, int result, double step) {
    double[] values = all.stream().mapToDouble(results -> results[result]).toArray();
    double[] up = every(values, 1);
    double[] down = every(values, 2);
    int inputs = up.length;
    for (int i = 0; i < inputs; i++) {
      up[i] = Double.isNaN(up[i]) ? 2 * values[0] - down[i] : up[i];
      down[i] = Double.isNaN(down[i]) ? 2 * values[0] - up[i] : down[i];
    }
    double[] contributions = new double[inputs];
    double[] curvatures = new double[inputs];
    Arrays.setAll(contributions, i -> (up[i] - down[i]) / (2 * step));
    Arrays.setAll(curvatures, i -> (up[i] + down[i] - 2 * values[0]) / (step * step));
    return new PropagatedResult(values[0], contributions, curvatures);
  }

  private static double[] every(double[] values, int from) {
    return IntStream.range(0, values.length / 2).mapToDouble(i -> values[2 * i + from]).toArray();
  }
}
