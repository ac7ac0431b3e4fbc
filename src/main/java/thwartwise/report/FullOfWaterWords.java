package thwartwise.report;

import thwartwise.measure.Rounding;
import thwartwise.measure.UnitFormat;
import thwartwise.picture.PictureFacts;

/** The words of the boat full of water. */
record FullOfWaterWords(PictureFacts.FullOfWater shown, UnitFormat units) {
  static final String TITLE = "Full of water, from the side";

  /** Heels under this are not worth a word, rad. */
  private static final double LEVEL = Math.toRadians(1);

  String alternative() {
    return "The boat full of water, from its starboard side, bow to the right, the water level. "
        + caption();
  }

  String caption() {
    double heel = Math.abs(shown.heel());
    String heeled =
        heel > LEVEL ? ", heeled " + Rounding.up(Math.toDegrees(heel), 0) + "\u00a0degrees" : "";
    return "As it lies full of water with "
        + AboardWords.of(shown.aboard(), units)
        + heeled
        + ". Hatched: what lifts it.";
  }
}
