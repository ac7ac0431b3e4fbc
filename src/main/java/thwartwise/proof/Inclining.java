package thwartwise.proof;

/**
 * A weight moved across a boat afloat, and the resulting heel: tan heel = w d/(W GM) (inclining
 * experiment, references A15), for small heels.
 *
 * @param weight that was moved, in any unit of mass
 * @param distance it was moved across, in any unit of length
 * @param displacement of the boat with the weight aboard, in the unit of the weight
 */
public record Inclining(double weight, double distance, double displacement) {

  /** The metacentric height in the unit of the distance, from the tangent of the heel. */
  public double metacentricHeight(double tangent) {
    return weight * distance / (displacement * tangent);
  }

  /** The tangent of the heel, from the metacentric height in the unit of the distance. */
  public double tangent(double metacentricHeight) {
    return weight * distance / (displacement * metacentricHeight);
  }
}
