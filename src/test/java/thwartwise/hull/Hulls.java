package thwartwise.hull;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thwartwise.geometry.Vector3;

/** Hull shapes for tests of what is built from stations. */
public final class Hulls {
  private Hulls() {}

  public static HullMeasurements measured(double thickness, List<Station> stations) {
    return new HullMeasurements(
        60, Optional.empty(), Optional.empty(), 750, thickness, 0.02, stations, List.of());
  }

  /** Three equal stations, so that the hull is a straight prism. */
  static HullMeasurements prism(double length, double thickness, double[]... points) {
    List<Station> stations = new ArrayList<>();
    for (double x : new double[] {0, length / 2, length}) {
      List<Vector3> port = new ArrayList<>();
      for (double[] p : points) {
        port.add(Vector3.of(x, p[0], p[1]));
      }
      stations.add(Station.mirrored("at " + x, port));
    }
    return measured(thickness, stations);
  }

  /** A skiff with a raked transom and a sharp, raked stem. */
  public static List<Station> skiff() {
    return List.of(
        station("transom", p(0.06, 0, 0.08), p(0.05, 0.42, 0.09), p(0, 0.55, 0.46)),
        station("aft", p(0.9, 0, 0.02), p(0.9, 0.52, 0.04), p(0.9, 0.66, 0.44)),
        station("middle", p(1.8, 0, 0), p(1.8, 0.54, 0.02), p(1.8, 0.69, 0.43)),
        station("fore", p(2.8, 0, 0.06), p(2.8, 0.36, 0.10), p(2.8, 0.50, 0.47)),
        station("stem", p(3.4, 0, 0.20), p(3.45, 0, 0.28), p(3.62, 0, 0.60)));
  }

  /** The same, but fuller on the port side. */
  public static List<Station> lopsided() {
    List<Station> stations = new ArrayList<>();
    for (Station s : skiff()) {
      List<Vector3> fuller =
          s.port().stream().map(v -> Vector3.of(v.x(), 1.08 * v.y(), v.z())).toList();
      stations.add(new Station(s.name(), fuller, s.starboard()));
    }
    return stations;
  }

  static Station station(String name, Vector3... port) {
    return Station.mirrored(name, List.of(port));
  }

  static Vector3 p(double x, double y, double z) {
    return Vector3.of(x, y, z);
  }
}
