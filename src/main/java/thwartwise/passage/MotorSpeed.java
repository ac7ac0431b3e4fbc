package thwartwise.passage;

import java.util.Optional;
import thwartwise.electrics.TimedRun;

/**
 * One setting of the motor.
 *
 * @param run the timed run; without one, speed is a guess
 * @param speed through the water that counts, m/s
 * @param current of the motor that counts, A
 * @param currentGuessed whether nobody read the current on the run
 * @param cut whether the timed speed was above the hull speed and was cut to it
 * @param time the battery lasts with lamps and sockets on, s
 */
public record MotorSpeed(
    Optional<TimedRun> run,
    double speed,
    double current,
    boolean currentGuessed,
    boolean cut,
    double time) {

  /**
   * The speed through the water at full power when nobody timed it: 2 knots (common practice, no
   * source).
   */
  static final double UNTIMED = 2 * HullSpeed.KNOT;

  public boolean speedGuessed() {
    return run.isEmpty();
  }

  /**
   * The speed at which a hull's own wave is as long as its waterline. A timed speed above it is
   * hardly right for such a boat. 1.34 knots times the root of the length in feet (READ, several).
   */
  static final class HullSpeed {
    static final double KNOT = 1852 / 3600.0;
    private static final double FOOT = 0.3048;

    private HullSpeed() {}

    /** The hull speed, m/s, for a length in m. */
    static double of(double length) {
      return 1.34 * Math.sqrt(length / FOOT) * KNOT;
    }
  }
}
