package thwartwise.rules;

import java.util.List;
import thwartwise.geometry.Vector3;
import thwartwise.hull.HullMeasurements;
import thwartwise.hull.Station;

/**
 * Tells a flat bottom with a hard chine by the stations of the after half: from the keel outward
 * the first line rises less than one in ten over at least half the breadth there (judgement). A
 * round bottom measured so coarsely that it looks flat is taken as flat, which is the lower answer.
 */
final class FlatBottom {
  private static final double RISE = 0.1;
  private static final double SHARE = 0.5;

  private FlatBottom() {}

  static boolean is(HullMeasurements hull) {
    List<Station> stations = hull.stations();
    return stations.subList(0, (stations.size() + 1) / 2).stream().allMatch(FlatBottom::flat);
  }

  private static boolean flat(Station station) {
    Vector3 keel = station.port().get(0);
    double breadth = station.port().stream().mapToDouble(Vector3::y).max().orElseThrow();
    return station.port().stream()
        .skip(1)
        .filter(p -> p.z() - keel.z() <= RISE * (p.y() - keel.y()))
        .anyMatch(p -> p.y() >= SHARE * breadth);
  }
}
