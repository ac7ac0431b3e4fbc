package thwartwise.uncertainty;

/**
 * The results that follow from values of the inputs, all of them worked out together. Called by
 * several threads at once.
 */
@FunctionalInterface
public interface MeasurementModel {

  /**
   * @param inputs one value for each input, in their order; not to be changed
   * @return the results, as many at every call; NaN where there is none
   */
  double[] results(double[] inputs);
}
