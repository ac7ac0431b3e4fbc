package thwartwise.electrics;

import java.util.Optional;

/**
 * A motor, by its plate.
 *
 * @param kit the name of the kit it is
 * @param thrust at full power, N
 * @param fullCurrent at full power, A
 * @param claimedTime the claimed running time at full power, s
 * @param reach of its lowest point below the bottom of the boat, under way, m
 * @param tiltedReach the same when it is tilted for shallow water; negative above the bottom
 * @param tiltShift how far aft its middle moves when it is tilted, m
 */
public record ElectricMotor(
    Optional<String> kit,
    Optional<Double> thrust,
    Optional<Double> fullCurrent,
    Optional<Double> claimedTime,
    Optional<Double> reach,
    Optional<Double> tiltedReach,
    Optional<Double> tiltShift) {

  /** A motor whose position nobody measured. */
  public ElectricMotor(
      Optional<String> kit,
      Optional<Double> thrust,
      Optional<Double> fullCurrent,
      Optional<Double> claimedTime) {
    this(
        kit,
        thrust,
        fullCurrent,
        claimedTime,
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  private static final double POUND_FORCE = 0.45359237 * 9.80665;

  /**
   * W for a pound of thrust at full power: about an ampere at 12 V (common practice; a maker's
   * table has 1.09 lb an ampere, READ).
   */
  private static final double SMALL = 12;

  /**
   * The same for motors of higher voltage, which push harder and need more for each pound: 70 lb
   * draw 42 A at 24 V, 56.0 lb draw 32.8 A at 25.6 V (READ).
   */
  private static final double LARGE = 15;

  /** The greatest voltage of a charged battery of 12 V. */
  private static final double TWELVE_VOLTS_AT_MOST = 15;

  /** The current on the plate, or a guess from the thrust. */
  public Optional<Double> currentAt(double volts) {
    double watts = volts > TWELVE_VOLTS_AT_MOST ? LARGE : SMALL;
    return fullCurrent.or(() -> thrust.map(t -> t / POUND_FORCE * watts / volts));
  }
}
