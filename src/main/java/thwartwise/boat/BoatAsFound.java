package thwartwise.boat;

import java.util.List;
import thwartwise.electrics.Battery;

/**
 * The boat after what was found when somebody looked at it: a boat and its answers in, a boat out.
 * An answer can only take something from it; a good one, and a point nobody looked at, change
 * nothing. Less air is not always fewer people: a tank on one side heels the swamped boat. So
 * nothing is recommended above the boat as it was stated ({@link BoatModel#asStated()}).
 */
final class BoatAsFound {
  private BoatAsFound() {}

  static Boat of(Boat boat) {
    Boat found = asStated(boat);
    for (PointAnswer answer : boat.pointAnswers()) {
      if (answer.isBad() && answer.fact().isPresent()) {
        found = answer.fact().get().in(found, answer.thing());
      }
    }
    return found;
  }

  /** Without its answers. */
  static Boat asStated(Boat boat) {
    return withBatteryAsHeld(boat);
  }

  /**
   * A boat after a change, without the answers: what the change left as it was found is again as it
   * was stated.
   */
  static Boat asStated(Boat changed, Boat found, Boat stated) {
    return changed
        .withChambers(asStated(changed.chambers(), found.chambers(), stated.chambers()))
        .withKit(asStated(changed.kit(), found.kit(), stated.kit()));
  }

  private static <T> List<T> asStated(List<T> changed, List<T> found, List<T> stated) {
    return changed.stream()
        .map(thing -> found.contains(thing) ? stated.get(found.indexOf(thing)) : thing)
        .toList();
  }

  /** Whether what the two can carry may differ. */
  static boolean differ(Boat found, Boat stated) {
    return !found.chambers().equals(stated.chambers()) || !found.kit().equals(stated.kit());
  }

  /** A battery that is said to lie without tray and strap is loose, whatever its kit line says. */
  private static Boat withBatteryAsHeld(Boat boat) {
    return boat.electrics()
        .battery()
        .filter(Battery::isLoose)
        .map(battery -> BoatFact.KIT_LOOSE.in(boat, battery.kit()))
        .orElse(boat);
  }
}
