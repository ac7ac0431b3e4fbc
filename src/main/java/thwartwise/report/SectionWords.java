package thwartwise.report;

import thwartwise.measure.PrintableText;
import thwartwise.measure.Rounding;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.picture.PictureFacts;

/** The words of the section. */
record SectionWords(PictureFacts.Section shown, UnitFormat units) {

  String title() {
    if (shown.rests()) {
      return "Cut across: everyone hard against one side";
    }
    if (!shown.floods()) {
      return "Cut across: heeled " + degrees();
    }
    return shown.aboard().isEmpty()
        ? "Cut across: heeled until water comes in"
        : "Cut across: everyone to one side, and water comes in";
  }

  /**
   * The height of the lowest edge. Where water just comes in it is zero within numerical error, so
   * no figure is shown.
   */
  private String stands() {
    return shown.floods()
        ? "is where water begins to come in"
        : "stands " + units.label(shown.freeboard()) + " above the water";
  }

  String alternative() {
    return "The boat cut across, seen from aft, heeled "
        + degrees()
        + " to "
        + side()
        + ". The arm between its weight and its lift is "
        + units.label(shown.arm())
        + "; the lowest edge "
        + stands();
  }

  /** A heel that occurs rounds up, one that the boat can stand rounds down. */
  private String degrees() {
    double degrees = Math.toDegrees(shown.heel());
    String whole = shown.rests() ? Rounding.up(degrees, 0) : Rounding.down(degrees, 0);
    return whole + "\u00a0degrees";
  }

  private String side() {
    return shown.side().word();
  }

  String caption() {
    return lies()
        + " Seen from aft, cut "
        + units.height(shown.x(), Side.DOWN)
        + " forward of the aft end, by the lowest edge, "
        + PrintableText.excerpt(shown.lowestEdge())
        + ", which "
        + stands()
        + ". G is where the weight hangs"
        + (shown.aboard().isEmpty() ? "" : ", with everyone in their places")
        + "; B is where the water lifts. The arm from G to the line above B turns the boat "
        + (shown.arm() > 0 ? "back." : "farther over.")
        + (shown.aboard().isEmpty() ? "" : " Grey discs are people.");
  }

  private String lies() {
    String far = degrees() + ", where " + CurveEndWords.of(shown.end()) + ".";
    if (shown.aboard().isEmpty()) {
      return "Nobody aboard; heeled " + far;
    }
    String moved =
        "With "
            + PictureWords.occupants(shown.aboard(), units)
            + ", everyone hard against the "
            + side()
            + " side and leaning with it, it ";
    return shown.rests()
        ? moved + "heels " + degrees() + "."
        : moved + "does not stay up and dry: drawn at " + far;
  }
}
