package thwartwise.picture;

import java.util.List;
import thwartwise.afloat.Equilibria;
import thwartwise.measure.Rounding;

/**
 * The words of the boat from the side.
 *
 * @param waterlines that are drawn, as they are labelled
 */
record SideWords(Scene scene, List<String> waterlines) {
  /** Heels under this are not worth a word, rad. */
  private static final double LEVEL = Math.toRadians(1);

  String alternative() {
    return "The boat from its starboard side, bow to the right. Waterlines: "
        + String.join("; ", waterlines)
        + ". "
        + swamped();
  }

  String caption() {
    return "Dotted: empty, with its kit. "
        + (scene.crew().isEmpty() ? "" : "Full line: loaded, with " + scene.who() + ". ")
        + "The figure is how far the lowest edge where water can come in stands above the water. "
        + (scene.crew().isEmpty() ? "No line for people: nobody is drawn aboard. " : "")
        + notDrawn("Empty", scene.empty())
        + (scene.crew().isEmpty() ? "" : notDrawn("Loaded", scene.loaded()))
        + swamped();
  }

  private static String notDrawn(String state, Equilibria rest) {
    return Scene.upright(rest).isPresent()
        ? ""
        : state + " no way was found in which it floats upright, so no line is drawn for it. ";
  }

  private String swamped() {
    if (!scene.swamped().exist()) {
      return scene.swamped().assessed()
          ? "Full of water it sinks, so no line is drawn for that."
          : "How it lies full of water was not found.";
    }
    return Scene.upright(scene.swamped())
        .map(
            pose ->
                "Broken line: full of water, with "
                    + scene.who()
                    + (Math.abs(pose.heel()) > LEVEL
                        ? ", heeled "
                            + Rounding.up(Math.abs(Math.toDegrees(pose.heel())), 0)
                            + " degrees."
                        : "."))
        .orElse("Full of water it does not stay upright, so no line is drawn for that.");
  }
}
