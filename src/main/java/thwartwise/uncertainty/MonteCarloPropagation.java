package thwartwise.uncertainty;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;

/**
 * The propagation of distributions by simulation (JCGM 101:2008, chapter 7): inputs are drawn many
 * times, and the results of all draws are their distribution.
 *
 * <p>The draws are cut into blocks, each with a generator that was split off the one of the seed
 * before any is drawn. So the same seed gives the same draws, whatever the number of threads, and
 * the first draws are the same ones in a longer run.
 */
public final class MonteCarloPropagation {
  private static final int BLOCK = 10;

  private MonteCarloPropagation() {}

  /** One sample for each result of the model, in its order. */
  public static List<SampledResult> of(
      List<Distribution> inputs, MeasurementModel model, int draws, long seed) {
    return of(inputs, model, draws, seed, () -> {});
  }

  /**
   * The same.
   *
   * @param drawn is run after each draw, by several threads at once
   */
  public static List<SampledResult> of(
      List<Distribution> inputs, MeasurementModel model, int draws, long seed, Runnable drawn) {
    List<double[]> all = draws(inputs, model, draws, seed, drawn);
    return IntStream.range(0, all.get(0).length)
        .mapToObj(r -> SampledResult.of(all.stream().mapToDouble(results -> results[r]).toArray()))
        .toList();
  }

  /**
   * The values of the inputs alone, by input and draw: the same as those of which results are
   * computed.
   */
  public static double[][] values(List<Distribution> inputs, int draws, long seed) {
    List<SplittableRandom> generators = generators(draws, seed);
    double[][] values = new double[inputs.size()][draws];
    IntStream.range(0, generators.size())
        .parallel()
        .forEach(
            block -> {
              RandomGenerator random = generators.get(block);
              int from = block * BLOCK;
              for (int n = from; n < Math.min(draws, from + BLOCK); n++) {
                for (int i = 0; i < values.length; i++) {
                  values[i][n] = inputs.get(i).draw(random);
                }
              }
            });
    return values;
  }

  private static List<double[]> draws(
      List<Distribution> inputs, MeasurementModel model, int draws, long seed, Runnable drawn) {
    if (!(draws > 0)) {
      throw new IllegalArgumentException("The number of draws must be above 0: " + draws + ".");
    }
    List<SplittableRandom> generators = generators(draws, seed);
    return IntStream.range(0, generators.size())
        .parallel()
        .mapToObj(
            b -> {
              RandomGenerator random = generators.get(b);
              return IntStream.range(0, Math.min(BLOCK, draws - b * BLOCK))
                  .mapToObj(i -> draw(inputs, model, random, drawn))
                  .toList();
            })
        .toList()
        .stream()
        .flatMap(List::stream)
        .toList();
  }

  /** One generator for each block of draws. */
  private static List<SplittableRandom> generators(int draws, long seed) {
    SplittableRandom root = new SplittableRandom(seed);
    List<SplittableRandom> generators = new ArrayList<>();
    for (int first = 0; first < draws; first += BLOCK) {
      generators.add(root.split());
    }
    return generators;
  }

  private static double[] draw(
      List<Distribution> inputs, MeasurementModel model, RandomGenerator random, Runnable drawn) {
    double[] values = inputs.stream().mapToDouble(input -> input.draw(random)).toArray();
    double[] results = model.results(values);
    drawn.run();
    return results;
  }
}
