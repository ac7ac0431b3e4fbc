package thwartwise.boat;

/**
 * The boat after what was found when somebody looked at it: a boat and its answers in, a boat out.
 * An answer can only make it poorer; a good one, and a point nobody looked at, change nothing.
 */
final class BoatAsFound {
  private BoatAsFound() {}

  static Boat of(Boat boat) {
    Boat found = boat;
    for (PointAnswer answer : boat.pointAnswers()) {
      if (answer.isBad() && answer.fact().isPresent()) {
        found = answer.fact().get().in(found, answer.thing());
      }
    }
    return withBatteryAsHeld(found);
  }

  /** A battery that is said to lie without tray and strap is loose, whatever its kit line says. */
  private static Boat withBatteryAsHeld(Boat boat) {
    return boat.electrics()
        .battery()
        .filter(battery -> battery.strapped().isPresent() && !battery.strapped().get())
        .map(battery -> BoatFact.KIT_LOOSE.in(boat, battery.kit()))
        .orElse(boat);
  }
}
