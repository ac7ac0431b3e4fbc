package thwartwise.report;

import java.util.List;
import java.util.Optional;
import thwartwise.boat.Boat;
import thwartwise.boat.EmptyHelm;
import thwartwise.crew.Recommendation;

/** Who steers if nobody sits by the motor or the oars, in one sentence. */
final class EmptyHelmWords {
  private EmptyHelmWords() {}

  static String of(EmptyHelm helm) {
    String empty = "while the " + helm.place() + " is empty";
    if (!helm.motor()) {
      return "Nobody rows " + empty + ": somebody sits there or paddles";
    }
    return "Nobody reaches the motor "
        + empty
        + ": "
        + helm.rowFrom()
            .map(place -> "somebody on the " + place + " rows and steers")
            .orElse("somebody paddles and steers");
  }

  /** The reported seatings; empty where somebody steers in each. */
  static Optional<String> of(Boat boat, Recommendation crew) {
    return empty(boat, crew).map(EmptyHelmWords::of);
  }

  /** The same in half a line. */
  static Optional<String> brief(Boat boat, Recommendation crew) {
    return empty(boat, crew)
        .map(
            helm ->
                "With the "
                    + helm.place()
                    + " empty, "
                    + helm.rowFrom().map(place -> "row from the " + place).orElse("paddle"));
  }

  private static Optional<EmptyHelm> empty(Boat boat, Recommendation crew) {
    List<List<String>> ways =
        crew.crewLimits().stream()
            .flatMap(limit -> Seatings.left(limit, boat.places()).stream())
            .toList();
    return EmptyHelm.find(boat, ways);
  }
}
