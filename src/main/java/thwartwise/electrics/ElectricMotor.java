package thwartwise.electrics;

import java.util.Optional;

/**
 * A motor by its plate.
 *
 * @param kit the name of the kit it is
 * @param thrust at full power, N
 * @param fullCurrent at full power, A
 * @param claimedTime how long somebody says it runs at full power, s
 */
public record ElectricMotor(
    Optional<String> kit,
    Optional<Double> thrust,
    Optional<Double> fullCurrent,
    Optional<Double> claimedTime) {

  private static final double POUND_FORCE = 0.45359237 * 9.80665;
  private static final double COMMON_VOLTS = 12;

  /**
   * The plate's, or about an ampere for each pound of thrust at 12 V (common practice; a maker's
   * table has 1.09 lb an ampere at full power, READ).
   */
  public Optional<Double> currentAt(double volts) {
    return fullCurrent.or(() -> thrust.map(t -> t / POUND_FORCE * COMMON_VOLTS / volts));
  }
}
