package thwartwise.report;

import thwartwise.measure.QuantityText;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.picture.PictureFacts.CrewAboard;

/** Who is drawn aboard, in words. */
final class OccupantWords {
  private OccupantWords() {}

  static String of(CrewAboard aboard, UnitFormat units) {
    return aboard.isEmpty()
        ? "nobody aboard"
        : QuantityText.people(aboard.people())
            + " of "
            + units.mass(aboard.each(), Side.UP)
            + " aboard";
  }
}
