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
    return found;
  }
}
