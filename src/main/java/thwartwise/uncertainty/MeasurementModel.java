package thwartwise.uncertainty;

/**
 * The results for values of the inputs, all of them computed together. Called by several threads at
 * once.
 */
@FunctionalInterface
public interface MeasurementModel {

  /**
   * @param inputs one value for each input, in their order; not to be changed
   * @return the results, as many at every call; NaN where there is none
   */
  double[] results(double[] inputs);
}
