package thwartwise.spread;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import thwartwise.boat.Boat;
import thwartwise.boat.Place;
import thwartwise.boat.Propulsion;
import thwartwise.boat.Water;
import thwartwise.geometry.Vector3;
import thwartwise.hull.HullMeasurements;
import thwartwise.hull.Material;
import thwartwise.hull.Station;

/** An open box of 4 m by 1.2 m by 0.5 m, which floats as a textbook has it. */
final class TextbookBox {
  static final double LENGTH = 4;
  static final double BREADTH = 1.2;
  static final double DEPTH = 0.5;

  private TextbookBox() {}

  static Boat weighing(double kilograms) {
    return weighing(kilograms, 0);
  }

  /**
   * @param forward how far forward of amidships its weight lies, m
   */
  static Boat weighing(double kilograms, double forward) {
    HullMeasurements hull =
        new HullMeasurements(
            kilograms,
            Optional.of(Vector3.of(LENGTH / 2 + forward, 0, 0.2)),
            Optional.of(Material.PLYWOOD),
            Material.PLYWOOD.swampedDensity(),
            0.006,
            0.006,
            Stream.of(0.0, 1.0, 2.0, 3.0, LENGTH).map(TextbookBox::station).toList(),
            List.of());
    return Boat.bare("box", Water.FRESH, hull, new Propulsion.Manual())
        .withPlaces(List.of(new Place("thwart", LENGTH / 2, 0.25, 0.3, 1)));
  }

  private static Station station(double x) {
    return Station.mirrored(
        "at " + x,
        List.of(
            Vector3.of(x, 0, 0), Vector3.of(x, BREADTH / 2, 0), Vector3.of(x, BREADTH / 2, DEPTH)));
  }
}
