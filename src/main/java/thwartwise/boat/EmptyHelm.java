package thwartwise.boat;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * That nobody sits where the boat is steered and driven from.
 *
 * @param place that is empty
 * @param motor whether the motor is out of reach then; otherwise it is the oars
 * @param rowFrom where it is rowed from instead of the motor; empty where it has no oars
 */
public record EmptyHelm(String place, boolean motor, Optional<String> rowFrom) {
  /** An arm and a tiller, from the middle of a person along the boat, m (judgement). */
  private static final double REACH = 1.0;

  private static final Pattern OARS = Pattern.compile("\\b(oars?|sculls?)\\b");

  /**
   * Where nobody steers when people sit so; empty where somebody does, or where it is not known
   * from where the boat is driven.
   *
   * @param seated the places of those aboard
   */
  public static Optional<EmptyHelm> of(Boat boat, Collection<String> seated) {
    if (seated.isEmpty()) {
      return Optional.empty();
    }
    Optional<String> oars = byTheOars(boat);
    Optional<String> motor = byTheMotor(boat);
    if (motor.isPresent()) {
      return motor
          .filter(place -> !seated.contains(place))
          .map(place -> new EmptyHelm(place, true, oars));
    }
    boolean drivenByMotor = boat.propulsion() instanceof Propulsion.Outboard;
    return oars.filter(place -> !drivenByMotor && !seated.contains(place))
        .map(place -> new EmptyHelm(place, false, Optional.empty()));
  }

  /** The same of the first of several ways to sit that leaves nobody there. */
  public static Optional<EmptyHelm> anyOf(Boat boat, Collection<List<String>> seatings) {
    return seatings.stream().flatMap(seated -> of(boat, seated).stream()).findFirst();
  }

  /** Nobody reaches a motor from farther than an arm and a tiller are long. */
  private static Optional<String> byTheMotor(Boat boat) {
    return boat.kit().stream()
        .filter(item -> item.isMotor(boat.electrics()) && !item.needsVenting(boat.electrics()))
        .findFirst()
        .flatMap(
            motor ->
                nearest(boat, motor.at().x())
                    .filter(place -> distance(place, motor.at().x()) <= REACH))
        .map(Place::name);
  }

  private static Optional<String> byTheOars(Boat boat) {
    return boat.kit().stream()
        .filter(item -> isOars(item.name()))
        .findFirst()
        .flatMap(oars -> nearest(boat, oars.at().x()))
        .map(Place::name);
  }

  /** Whether a thing is something to row with by its name; a paddle is used from anywhere. */
  private static boolean isOars(String name) {
    return OARS.matcher(name.toLowerCase(Locale.ROOT)).find();
  }

  private static Optional<Place> nearest(Boat boat, double x) {
    return boat.places().stream().min(Comparator.comparingDouble(place -> distance(place, x)));
  }

  private static double distance(Place place, double x) {
    return Math.max(0, Math.max(place.along().from() - x, x - place.along().to()));
  }
}
