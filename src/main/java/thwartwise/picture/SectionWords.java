package thwartwise.picture;

import thwartwise.boat.FloodPoint;
import thwartwise.measure.Rounding;

/**
 * The words of the section.
 *
 * @param lowest of all edges, above the water
 * @param x where it is cut, m
 * @param arm m, positive when it brings the boat back
 */
record SectionWords(Scene scene, Heeled heeled, FloodPoint lowest, double x, double arm) {

  String title() {
    if (heeled.rest().isPresent()) {
      return "Cut across: everyone hard against one side";
    }
    if (!heeled.atFlooding()) {
      return "Cut across: heeled " + degrees();
    }
    return scene.crew().isEmpty()
        ? "Cut across: heeled until water comes in"
        : "Cut across: everyone to one side, and water comes in";
  }

  String armShown() {
    return Rounding.down(100 * arm, 0) + "\u00a0cm";
  }

  String freeboard() {
    return Rounding.down(100 * heeled.plane().above(lowest.at()), 0) + "\u00a0cm";
  }

  /** Where the water just comes in the height is nought, give or take the noise of the sums. */
  private String stands() {
    return heeled.atFlooding()
        ? "is where water begins to come in"
        : "stands " + freeboard() + " above the water";
  }

  String alternative() {
    return "The boat cut across, seen from aft, heeled "
        + degrees()
        + " to "
        + side()
        + ". The arm between its weight and its lift is "
        + armShown()
        + "; the lowest edge "
        + stands();
  }

  /** A heel it comes to rounds up, one that it can stand rounds down. */
  private String degrees() {
    double degrees = Math.toDegrees(heeled.heel());
    String shown = heeled.rest().isPresent() ? Rounding.up(degrees, 0) : Rounding.down(degrees, 0);
    return shown + "\u00a0degrees";
  }

  private String side() {
    return heeled.curve().side().word();
  }

  String caption() {
    return lies()
        + " Seen from aft, cut "
        + Rounding.down(x, 2)
        + "\u00a0m forward of the aft end, by the lowest edge, "
        + QuotedName.of(lowest.name())
        + ", which "
        + stands()
        + ". G is where the weight hangs"
        + (scene.crew().isEmpty() ? "" : ", with everyone in their places")
        + "; B is where the water lifts. The arm from G to the line above B turns the boat "
        + (arm > 0 ? "back." : "farther over.")
        + (scene.crew().isEmpty() ? "" : " Grey discs are people.");
  }

  private String lies() {
    String far = degrees() + ", where " + heeled.curve().endsBecause() + ".";
    if (scene.crew().isEmpty()) {
      return "Nobody aboard; heeled " + far;
    }
    String moved =
        "With "
            + scene.who()
            + ", everyone hard against the "
            + side()
            + " side and leaning with it, it ";
    return heeled.rest().isPresent()
        ? moved + "heels " + degrees() + "."
        : moved + "does not stay up and dry: drawn at " + far;
  }
}
