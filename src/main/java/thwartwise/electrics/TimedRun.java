package thwartwise.electrics;

import java.util.Optional;

/**
 * One stretch driven both ways at one setting of the motor.
 *
 * @param setting as the motor's handle has it
 * @param distance m, one way
 * @param timeThere s
 * @param timeBack s
 * @param currentThere drawn from the battery, A
 * @param currentBack drawn from the battery, A
 */
public record TimedRun(
    String setting,
    double distance,
    double timeThere,
    double timeBack,
    Optional<Double> currentThere,
    Optional<Double> currentBack) {

  /**
   * The speed through the water, m/s: the mean of both speeds, in which the current of the water
   * cancels.
   */
  public double speed() {
    return (distance / timeThere + distance / timeBack) / 2;
  }

  /** The drift by wind and current, m/s. */
  public double drift() {
    return Math.abs(distance / timeThere - distance / timeBack) / 2;
  }

  /** The greater of both electric currents; empty if nobody read the ammeter. */
  public Optional<Double> current() {
    return currentThere.flatMap(a -> currentBack.map(b -> Math.max(a, b))).or(() -> either());
  }

  private Optional<Double> either() {
    return currentThere.or(() -> currentBack);
  }
}
