package thwartwise.report;

import thwartwise.measure.Rounding;
import thwartwise.measure.UnitFormat;
import thwartwise.picture.PictureFacts;

/** The words of the boat from the side. */
record SideWords(PictureFacts.Profile shown, UnitFormat units) {
  static final String TITLE = "From the side: how deep it floats";

  /** Heels under this are not worth a word, rad. */
  private static final double LEVEL = Math.toRadians(1);

  String alternative() {
    return "The boat from its starboard side, bow to the right. Waterlines: "
        + String.join("; ", shown.waterlines())
        + ". "
        + swamped();
  }

  String caption() {
    return "Dotted: empty, with its kit. "
        + (shown.aboard().isNobody()
            ? ""
            : "Full line: loaded, with " + AboardWords.of(shown.aboard(), units) + ". ")
        + "The figure is how far the lowest edge where water can come in stands above the water. "
        + (shown.aboard().isNobody() ? "No line for people: nobody is drawn aboard. " : "")
        + notDrawn("Empty", shown.empty())
        + (shown.aboard().isNobody() ? "" : notDrawn("Loaded", shown.loaded()))
        + swamped();
  }

  private static String notDrawn(String state, boolean found) {
    return found
        ? ""
        : state + " no way was found in which it floats upright, so no line is drawn for it. ";
  }

  private String swamped() {
    return switch (shown.swamped()) {
      case NOT_ASSESSED -> "How it lies full of water was not found.";
      case SINKS -> "Full of water it sinks, so no line is drawn for that.";
      case NOT_UPRIGHT -> "Full of water it does not stay upright, so no line is drawn for that.";
      case UPRIGHT ->
          "Broken line: full of water, with "
              + AboardWords.of(shown.aboard(), units)
              + heeled()
              + ".";
    };
  }

  private String heeled() {
    double heel = Math.abs(shown.heel());
    return heel > LEVEL ? ", heeled " + Rounding.up(Math.toDegrees(heel), 0) + " degrees" : "";
  }
}
