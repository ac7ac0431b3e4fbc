package thwartwise.passage;

import java.util.Optional;
import thwartwise.electrics.TimedRun;

/**
 * One setting of the motor.
 *
 * @param run it was timed by; without one, speed is a guess
 * @param speed through the water that counts, m/s
 * @param current of the motor that counts, A
 * @param currentGuessed whether nobody read it on the way
 * @param cut whether the timed speed lies over the hull speed and was cut to it
 * @param time the battery lasts with lamps and sockets on, s
 */
public record MotorSpeed(
    Optional<TimedRun> run,
    double speed,
    double current,
    boolean currentGuessed,
    boolean cut,
    double time) {

  /** Through the water at full power when nobody timed it: 2 knots (common practice, no source). */
  static final double UNTIMED = 2 * HullSpeed.KNOT;

  public boolean speedGuessed() {
    return run.isEmpty();
  }
}
