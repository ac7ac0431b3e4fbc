package thwartwise.checks;

import java.util.OptionalDouble;
import thwartwise.boat.NamedEnd;
import thwartwise.boat.NamedSide;
import thwartwise.hull.PanelTwist.PanelSide;
import thwartwise.hull.ReadingDirection;
import thwartwise.hull.TapeSlip;

/**
 * What is odd about a measurement, which says what to measure again. SI: m, kg, m². Points and
 * lines of the hull are counted from 0 at the keel. Records store the names of these types, of
 * their components and constants, so they are never renamed.
 */
public sealed interface MeasurementNote {

  /** What needs no figure. */
  record Plain(Fact fact) implements MeasurementNote {}

  /** A seat that would lie inside this chamber. */
  record InsideChamber(String chamber) implements MeasurementNote {}

  /**
   * No such thing weighs that.
   *
   * @param meantKg with the decimal point moved, where that makes it usual
   */
  record UnusualMass(double massKg, OptionalDouble meantKg) implements MeasurementNote {}

  /** A half-breadth less than that of stations aft and forward of it. */
  record Waist(int point, int points) implements MeasurementNote {}

  /** A place in another part of the boat than its name says. */
  record NamedForEnd(NamedEnd end) implements MeasurementNote {}

  /** A place on another side than its name says, or on none. */
  record NamedForSide(String place, boolean hasNoSide, NamedSide side) implements MeasurementNote {}

  /** Where a panel is twisted most, and the first of the two lines it lies between. */
  record TwistedPanel(
      int line, int points, PanelSide side, String aft, String fore, boolean withinLimit)
      implements MeasurementNote {}

  /** Where the faired outline first crosses itself, forward of the aft end. */
  record CrossedOutline(double fromM, double toM) implements MeasurementNote {}

  /**
   * The mass of the hull's skin.
   *
   * @param halfWeighed whether twice the mass would be usual
   */
  record SkinMass(double areaM2, double skinKg, boolean halfWeighed) implements MeasurementNote {}

  /** A leak test in the future; the date as in ISO 8601. */
  record LeakTestToCome(String date) implements MeasurementNote {}

  /** A reading out of line with those of the other stations, and what was probably read. */
  record OutOfLine(
      boolean port, int point, int points, ReadingDirection direction, TapeSlip slip, double meantM)
      implements MeasurementNote {}

  static MeasurementNote of(Fact fact) {
    return new Plain(fact);
  }

  /** What needs no figure. */
  enum Fact {
    FULLNESS,
    BREADTH_FOR_LENGTH,
    DEPTH_FOR_BREADTH,
    SWAMPED_DENSITY,
    LOWEST_POINT_NOT_ZERO,
    POURED_TOO_LITTLE,
    POURED_TOO_MUCH,
    CHAMBER_ABOVE_HULL,
    KIT_UNDER_KEEL,
    KIT_OUTSIDE,
    CLEAT_OUTSIDE,
    SEAT_ON_MIDDLE_LINE,
    SEAT_TOO_SHORT,
    OPENING_TOO_LOW,
    PLACE_AT_AN_END,
    PLACE_OFF_ITS_CHAMBER,
    PLACE_ON_ANOTHER,
    SEAT_NEAR_FLOOR,
    SEAT_ABOVE_ITS_CHAMBER,
    SEAT_TOO_HIGH
  }
}
