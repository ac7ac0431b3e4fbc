package thwartwise.boat;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The place from which a motor is steered: the stated one, or the nearest within reach.
 *
 * @param distance along the boat, from the motor to the middle of a person there, m
 */
public record SteeringSeat(Kit motor, Place place, double distance) {
  /**
   * The length of an arm and a tiller from the middle of a person along the boat, m (judgement).
   */
  public static final double REACH = 1.0;

  /** The seat; empty without a motor, and where nobody stated it and no place is within reach. */
  public static Optional<SteeringSeat> of(Boat boat) {
    List<Kit> motors = motors(boat);
    Optional<SteeringSeat> stated =
        motors.stream().flatMap(motor -> stated(boat, motor).stream()).findFirst();
    return stated.or(
        () ->
            motors.stream()
                .findFirst()
                .flatMap(motor -> nearest(motor, boat.places()))
                .filter(SteeringSeat::isInReach));
  }

  /** The nearest place to a motor, at whatever distance. */
  public static Optional<SteeringSeat> nearest(Kit motor, List<Place> places) {
    return places.stream()
        .map(place -> to(motor, place))
        .min(Comparator.comparingDouble(SteeringSeat::distance));
  }

  /** That place as the seat for that motor. */
  public static SteeringSeat to(Kit motor, Place place) {
    return new SteeringSeat(motor, place, place.distanceAlong(motor.at().x()));
  }

  public boolean isInReach() {
    return distance <= REACH;
  }

  /** Whether somebody stated it; otherwise it is assumed. */
  public boolean isStated() {
    return motor.workedFrom().isPresent();
  }

  private static Optional<SteeringSeat> stated(Boat boat, Kit motor) {
    return motor.workedFrom().flatMap(boat::place).map(place -> to(motor, place));
  }

  private static List<Kit> motors(Boat boat) {
    return boat.kit().stream()
        .filter(item -> item.isMotor(boat.electrics()) && !item.needsVenting(boat.electrics()))
        .toList();
  }
}
