package thwartwise.boat;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A seating in which nobody sits where the boat is steered and driven from.
 *
 * @param place that is empty
 * @param motor whether the motor is out of reach then; otherwise it is the oars
 * @param rowFrom where it is rowed from instead of the motor; empty where it has no oars
 */
public record EmptyHelm(String place, boolean motor, Optional<String> rowFrom) {
  /**
   * The empty place, for one seating; empty where somebody steers, or where it is not known from
   * where.
   *
   * @param seated the places of those aboard
   */
  public static Optional<EmptyHelm> of(Boat boat, Collection<String> seated) {
    if (seated.isEmpty()) {
      return Optional.empty();
    }
    Optional<String> oars = byTheOars(boat);
    Optional<String> motor = SteeringSeat.of(boat).map(seat -> seat.place().name());
    if (motor.isPresent()) {
      return motor
          .filter(place -> !seated.contains(place))
          .map(place -> new EmptyHelm(place, true, oars));
    }
    boolean drivenByMotor = boat.propulsion() instanceof Propulsion.Outboard;
    return oars.filter(place -> !drivenByMotor && !seated.contains(place))
        .map(place -> new EmptyHelm(place, false, Optional.empty()));
  }

  /** The same for the first of several seatings that leaves nobody there. */
  public static Optional<EmptyHelm> find(Boat boat, Collection<List<String>> seatings) {
    return seatings.stream().flatMap(seated -> of(boat, seated).stream()).findFirst();
  }

  private static Optional<String> byTheOars(Boat boat) {
    List<Kit> oars = boat.kit().stream().filter(Kit::isOars).toList();
    Optional<String> stated = oars.stream().flatMap(pair -> pair.workedFrom().stream()).findFirst();
    return stated.or(() -> oars.stream().findFirst().flatMap(pair -> nearest(boat, pair.at().x())));
  }

  private static Optional<String> nearest(Boat boat, double x) {
    return boat.places().stream()
        .min(Comparator.comparingDouble(place -> place.distanceAlong(x)))
        .map(Place::name);
  }
}
