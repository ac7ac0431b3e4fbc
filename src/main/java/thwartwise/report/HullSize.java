package thwartwise.report;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import thwartwise.geometry.Vector3;
import thwartwise.hull.Station;

/** Length and greatest breadth of a hull as its stations have it, metres. */
record HullSize(double length, double breadth) {
  static HullSize of(List<Station> stations) {
    return new HullSize(extent(stations, Vector3::x), extent(stations, Vector3::y));
  }

  private static double extent(List<Station> stations, ToDoubleFunction<Vector3> axis) {
    var figures = points(stations).mapToDouble(axis).summaryStatistics();
    return figures.getMax() - figures.getMin();
  }

  private static Stream<Vector3> points(List<Station> stations) {
    return stations.stream()
        .flatMap(station -> Stream.concat(station.port().stream(), station.starboard().stream()));
  }
}
