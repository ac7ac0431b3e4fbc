package thwartwise.report;

import thwartwise.boat.Boat;
import thwartwise.measure.UnitFormat;

/** The units in which a boat's papers speak. */
public final class ReaderUnits {
  private ReaderUnits() {}

  public static UnitFormat of(Boat boat) {
    return new UnitFormat(boat.units());
  }
}
