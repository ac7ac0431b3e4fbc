package thwartwise.files.boat;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import thwartwise.geometry.Vector3;
import thwartwise.hull.Station;
import thwartwise.json.Location;
import thwartwise.measure.PlainNumber;

/**
 * Length, breadth and depth that a small boat can have. A distance typed in the wrong unit often
 * stays believable by itself and shows only in the size of the whole hull. Bounds are judgement.
 */
final class HullSizeRules {
  // Definition of the international foot, 0.3048 m.
  private static final double FOOT = 0.3048;
  private static final String FEET = "If those were feet, multiply every distance by 0.3048.";

  private HullSizeRules() {}

  static void check(Location hull, List<Station> stations) {
    double length = extent(stations, Vector3::x);
    double beam = extent(stations, Vector3::y);
    double depth = extent(stations, Vector3::z);
    check(hull, "length", length, 0.8, 12, "Write every x in metres from the aft end.");
    check(hull, "breadth", beam, 0.25, 5, "Write every y in metres from the middle line.");
    check(hull, "depth", depth, 0.08, 3, "Write every z in metres up from the lowest point.");
  }

  private static void check(
      Location hull, String what, double size, double least, double most, String remedy) {
    if (!(size >= least && size <= most)) {
      throw hull.fault(
          "the stations make a hull of %s m %s, outside the believable %s to %s m. %s",
          PlainNumber.number(size),
          what,
          PlainNumber.number(least),
          PlainNumber.number(most),
          size * FOOT >= least && size > most ? FEET : remedy);
    }
  }

  private static double extent(List<Station> stations, ToDoubleFunction<Vector3> axis) {
    double least = points(stations).mapToDouble(axis).min().orElse(0);
    double most = points(stations).mapToDouble(axis).max().orElse(0);
    // To the millimetre: a difference of decimals has a tail that nobody measured.
    return Math.rint((most - least) * 1000) / 1000;
  }

  private static Stream<Vector3> points(List<Station> stations) {
    return stations.stream()
        .flatMap(station -> Stream.concat(station.port().stream(), station.starboard().stream()));
  }
}
