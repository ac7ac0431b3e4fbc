package thwartwise.boat;

import java.util.List;
import java.util.stream.Stream;

/** A kind of measurement for which somebody can state the method. */
public enum MeasurementKind {
  HULL_WEIGHT("hull weight", MeasuringWay.BATHROOM_SCALES, MeasuringWay.LUGGAGE_SCALE),
  KIT_WEIGHTS("kit weights", MeasuringWay.BATHROOM_SCALES, MeasuringWay.LUGGAGE_SCALE),
  PEOPLE_WEIGHTS("people's weights", MeasuringWay.BATHROOM_SCALES),
  HULL_BALANCE("hull balance", MeasuringWay.ROLLER),
  HULL_INCLINED("hull inclined", MeasuringWay.INCLINED),
  HALF_BREADTHS("half-breadths", MeasuringWay.STEEL_TAPE, MeasuringWay.CURVED_TAPE),
  BOTTOM_HEIGHTS("bottom heights", MeasuringWay.TAUT_LINE, MeasuringWay.CURVED_TAPE),
  EDGE_HEIGHTS("edge heights", MeasuringWay.TAUT_LINE, MeasuringWay.CURVED_TAPE),
  SHELL_THICKNESS("shell thickness", MeasuringWay.CALLIPERS),
  SOAKED_DENSITY("soaked density", MeasuringWay.OFFCUT),
  CHAMBER_LITRES("chamber litres", MeasuringWay.JUG),
  SEAT_HEIGHTS("seat heights", MeasuringWay.STEEL_TAPE, MeasuringWay.TAUT_LINE);

  private final String word;
  private final List<MeasuringWay> ways;

  MeasurementKind(String word, MeasuringWay... ways) {
    this.word = word;
    this.ways =
        Stream.concat(Stream.of(ways), Stream.of(MeasuringWay.USUAL_VALUE, MeasuringWay.GUESS))
            .toList();
  }

  /** The word in boat files and for typing. */
  public String word() {
    return word;
  }

  /** The possible methods. */
  public List<MeasuringWay> ways() {
    return ways;
  }
}
