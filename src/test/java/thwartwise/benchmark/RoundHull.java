package thwartwise.benchmark;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Vector3;
import thwartwise.hull.HullForm;
import thwartwise.hull.HullMeasurements;
import thwartwise.hull.Station;

/** A double-ended, round-bottomed hull of 4 m by 1.2 m, measured at any number of stations. */
final class RoundHull {
  private static final int POINTS = 7;

  private RoundHull() {}

  static Solid of(int count) {
    List<Station> stations = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      stations.add(station("station " + (i + 1), 2.0 * i / (count - 1) - 1));
    }
    return HullForm.of(
            new HullMeasurements(
                60, Optional.empty(), Optional.empty(), 750, 0.006, 0.02, stations, List.of()))
        .outside();
  }

  /**
   * @param along from −1 at the stern to 1 at the bow
   */
  private static Station station(String name, double along) {
    double half = 0.6 * (1 - 0.9 * along * along);
    double keel = 0.1 * along * along;
    double depth = 0.45 + 0.05 * along * along;
    List<Vector3> points = new ArrayList<>();
    for (int k = 0; k < POINTS; k++) {
      double angle = Math.PI / 2 * k / (POINTS - 1);
      points.add(
          Vector3.of(2 + 2 * along, half * Math.sin(angle), keel + depth * (1 - Math.cos(angle))));
    }
    return Station.mirrored(name, points);
  }
}
