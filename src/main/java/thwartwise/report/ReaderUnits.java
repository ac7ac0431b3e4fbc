package thwartwise.report;

import thwartwise.boat.Boat;
import thwartwise.measure.UnitFormat;

/** The units of a boat's papers. */
public final class ReaderUnits {
  private ReaderUnits() {}

  public static UnitFormat of(Boat boat) {
    return new UnitFormat(boat.units());
  }
}
