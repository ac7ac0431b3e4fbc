package thwartwise.spread;

import java.util.Optional;
import thwartwise.boat.MeasurementKind;
import thwartwise.boat.MeasuringWay;

/** The kind of a measurement, and the better way to take it again. */
public enum InputKind {
  HULL_MASS(MeasuringWay.BATHROOM_SCALES, MeasurementKind.HULL_WEIGHT, "slip-of-a-weight"),
  KIT_MASS(MeasuringWay.LUGGAGE_SCALE, MeasurementKind.KIT_WEIGHTS, "slip-of-a-weight"),
  PERSON_MASS(MeasuringWay.BATHROOM_SCALES, MeasurementKind.PEOPLE_WEIGHTS, "slip-of-a-weight"),
  /** The scales, for everything that was weighed. */
  SCALES("slip-of-a-share"),
  HULL_CENTRE_ALONG(MeasuringWay.ROLLER, MeasurementKind.HULL_BALANCE, "slip-of-a-place"),
  HULL_CENTRE_HEIGHT(MeasuringWay.INCLINED, MeasurementKind.HULL_INCLINED, "slip-of-a-place"),
  HALF_BREADTHS(MeasuringWay.STEEL_TAPE, MeasurementKind.HALF_BREADTHS, "slip-of-a-breadth"),
  /** The tape, for every breadth of the hull. */
  TAPE("slip-of-a-share"),
  BOTTOM_HEIGHTS(MeasuringWay.TAUT_LINE, MeasurementKind.BOTTOM_HEIGHTS, "slip-of-a-height"),
  /** The edges above the bottom, which share one datum. */
  EDGE_HEIGHTS(MeasuringWay.TAUT_LINE, MeasurementKind.EDGE_HEIGHTS, "slip-of-a-height"),
  SHELL_THICKNESS(MeasuringWay.CALLIPERS, MeasurementKind.SHELL_THICKNESS, "slip-of-a-height"),
  SWAMPED_DENSITY(MeasuringWay.OFFCUT, MeasurementKind.SOAKED_DENSITY, "slip-of-a-share"),
  CHAMBER_VOLUME(MeasuringWay.JUG, MeasurementKind.CHAMBER_LITRES, "slip-of-a-share"),
  SEAT_HEIGHT(MeasuringWay.STEEL_TAPE, MeasurementKind.SEAT_HEIGHTS, "slip-of-a-height"),
  /** The place of a person along the boat during a proof afloat. */
  PERSON_ALONG("slip-of-a-place"),
  /** The place of a person across the boat during a proof afloat. */
  PERSON_ACROSS("slip-of-a-place"),
  /** The weight moved across to prove it. */
  MOVED_WEIGHT("slip-of-a-weight"),
  /** One height of the rail above the water, read for a proof. */
  FREEBOARD_READ("slip-of-a-height"),
  /** One heel read by a plumb line or a level, for a proof. */
  HEEL_READ("slip-of-an-angle"),
  /** The zero of a plumb line or level, for every heel read by it. */
  HEEL_ZERO("slip-of-an-angle");

  private final Optional<MeasuringWay> betterWay;
  private final Optional<MeasurementKind> kind;
  private final String slip;

  InputKind(MeasuringWay betterWay, MeasurementKind kind, String slip) {
    this.betterWay = Optional.of(betterWay);
    this.kind = Optional.of(kind);
    this.slip = slip;
  }

  /** A kind whose method nobody can state, without a better way. */
  InputKind(String slip) {
    this.betterWay = Optional.empty();
    this.kind = Optional.empty();
    this.slip = slip;
  }

  /** The name, among the measuring spreads, of the size of a plain error. */
  public String slip() {
    return slip;
  }

  /** The better way to take it. */
  public Optional<MeasuringWay> betterWay() {
    return betterWay;
  }

  public boolean hasBetterWay() {
    return betterWay.isPresent();
  }

  /** The kind of measurement for which a method can be stated; empty where none can. */
  public Optional<MeasurementKind> kind() {
    return kind;
  }

  /**
   * Whether one reading may be plainly wrong; scales, tape and level have small errors, in all
   * readings.
   */
  public boolean mayBeWrong() {
    return this != SCALES && this != TAPE && this != HEEL_ZERO;
  }
}
