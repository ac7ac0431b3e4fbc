package thwartwise.files.boat;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import thwartwise.geometry.Vector3;
import thwartwise.hull.Crossing;
import thwartwise.hull.LineName;
import thwartwise.hull.Station;
import thwartwise.json.Location;
import thwartwise.measure.NumberText;
import thwartwise.measure.PrintableText;

/**
 * The rules for stations that make a closed hull: three or more from aft to forward, the same
 * number of points in each, keel on the middle line, rail on top, no outline that crosses itself.
 * They find errors of tape and pencil before anything is built from them.
 */
final class StationRules {
  private static final int FEWEST_STATIONS = 3;
  private static final int FEWEST_POINTS = 2;

  private StationRules() {}

  /** Checks the starboard points, whose signs must agree, whichever sign it is. */
  static void checkOneSide(Location station, List<Vector3> starboard) {
    boolean port = starboard.stream().anyMatch(p -> p.y() > 0);
    boolean other = starboard.stream().anyMatch(p -> p.y() < 0);
    if (port && other) {
      throw station.fault(
          "the starboard points lie on both sides of the middle line."
              + " Write y to starboard as distances out, all of one sign.");
    }
  }

  static void check(Location hull, List<Station> stations) {
    if (stations.size() < FEWEST_STATIONS) {
      throw hull.fault(
          "a hull needs at least %d stations and there %s %d."
              + " Measure one at each end and one where the boat is widest.",
          FEWEST_STATIONS, stations.size() == 1 ? "is" : "are", stations.size());
    }
    for (int i = 0; i < stations.size(); i++) {
      checkOne(spot(hull, stations, i), stations.get(i));
    }
    for (int i = 1; i < stations.size(); i++) {
      checkCount(hull, stations, i);
      checkOrder(hull, stations, i);
    }
    HullSizeRules.check(hull, stations);
  }

  private static void checkOne(Location spot, Station station) {
    if (station.port().size() < FEWEST_POINTS) {
      throw spot.fault(
          "a station needs at least two points, keel and rail, and there "
              + (station.port().isEmpty() ? "is none." : "is one.")
              + " Measure from the keel out and up to the rail.");
    }
    checkSides(spot, station);
    checkKeel(spot, station.port().get(0));
    checkPort(spot, station.port());
    checkRail(spot, "", station.port());
    checkRail(spot, "to starboard ", station.starboard());
    checkCrossing(spot, "", station.port());
    checkCrossing(spot, "to starboard ", station.starboard());
  }

  private static void checkSides(Location spot, Station station) {
    int port = station.port().size();
    int starboard = station.starboard().size();
    if (port != starboard) {
      throw spot.fault(
          "%d points to port and %d to starboard. Measure the same points on both sides.",
          port, starboard);
    }
    if (!station.port().get(0).mirrored().equals(station.starboard().get(0))) {
      throw spot.fault(
          "the first point to starboard is not the keel the port side begins with."
              + " Begin both sides at the same point.");
    }
  }

  private static void checkKeel(Location spot, Vector3 keel) {
    if (keel.y() != 0) {
      throw spot.fault(
          "the first point lies %s m off the middle line, which leaves the hull open along the"
              + " bottom. Begin every station at the keel, with y 0.",
          NumberText.number(Math.abs(keel.y())));
    }
  }

  private static void checkPort(Location spot, List<Vector3> port) {
    for (Vector3 point : port) {
      if (point.y() < 0) {
        throw spot.fault(
            "a point lies at y %s m, to starboard. Write the points of the port side, y from 0"
                + " up; a side measured by itself goes into \"starboard\".",
            NumberText.number(point.y()));
      }
    }
  }

  private static void checkRail(Location spot, String side, List<Vector3> points) {
    int last = points.size() - 1;
    double rail = points.get(last).z();
    for (int i = 0; i < last; i++) {
      if (points.get(i).z() > rail) {
        throw spot.faultOf(
            "z",
            "%sthe rail (%s m) is lower than the %s (%s m)."
                + " Measure both up from the lowest point of the bottom, or swap them.",
            side,
            NumberText.number(rail),
            LineName.of(i, points.size()),
            NumberText.number(points.get(i).z()));
      }
    }
  }

  private static void checkCrossing(Location spot, String side, List<Vector3> points) {
    Optional<Crossing> crossing = Crossing.of(points);
    if (crossing.isPresent()) {
      throw spot.fault(
          "%sthe outline crosses itself between %s and %s."
              + " List the points from the keel out and up to the rail, or measure those two again.",
          side,
          LineName.of(crossing.get().first(), points.size()),
          LineName.of(crossing.get().second(), points.size()));
    }
  }

  private static void checkCount(Location hull, List<Station> stations, int i) {
    int count = stations.get(i).port().size();
    int before = stations.get(i - 1).port().size();
    if (count != before) {
      throw spot(hull, stations, i)
          .fault(
              "%d points, and %d in %s. Every station needs the same points in the same order,"
                  + " keel to rail: measure the one that is missing.",
              count, before, shown(stations, i - 1));
    }
  }

  private static void checkOrder(Location hull, List<Station> stations, int i) {
    checkOrder(hull, stations, i, "", stations.get(i - 1).port(), stations.get(i).port());
    checkOrder(
        hull,
        stations,
        i,
        "starboard ",
        stations.get(i - 1).starboard(),
        stations.get(i).starboard());
  }

  private static void checkOrder(
      Location hull,
      List<Station> stations,
      int i,
      String side,
      List<Vector3> aft,
      List<Vector3> forward) {
    for (int p = 0; p < aft.size(); p++) {
      if (!(forward.get(p).x() > aft.get(p).x())) {
        throw spot(hull, stations, i)
            .fault(
                "its %s%s is at x %s m, not forward of x %s m in %s."
                    + " List the stations from aft to forward and measure x from the aft end.",
                side,
                LineName.of(p, aft.size()),
                NumberText.number(forward.get(p).x()),
                NumberText.number(aft.get(p).x()),
                shown(stations, i - 1));
      }
    }
  }

  private static Location spot(Location hull, List<Station> stations, int i) {
    return hull.item("station", i + 1, stations.get(i).name());
  }

  private static String shown(List<Station> stations, int i) {
    return "station " + (i + 1) + " " + PrintableText.quoted(stations.get(i).name());
  }

  /**
   * Bounds for the length, breadth and depth of a small boat. A distance in the wrong unit often
   * looks right by itself and only shows in the size of the whole hull. The bounds are judgement.
   */
  private static final class HullSizeRules {
    // The international foot is 0.3048 m by definition.
    private static final double FOOT = 0.3048;
    private static final String FEET = "If those were feet, multiply every distance by 0.3048.";

    private HullSizeRules() {}

    static void check(Location hull, List<Station> stations) {
      double length = extent(stations, Vector3::x);
      double beam = extent(stations, Vector3::y);
      double depth = extent(stations, Vector3::z);
      check(hull, "x", "length", length, 0.8, 12, "Write every x in metres from the aft end.");
      check(hull, "y", "breadth", beam, 0.25, 5, "Write every y in metres from the middle line.");
      check(
          hull, "z", "depth", depth, 0.08, 3, "Write every z in metres up from the lowest point.");
    }

    private static void check(
        Location hull,
        String key,
        String what,
        double size,
        double least,
        double most,
        String remedy) {
      if (!(size >= least && size <= most)) {
        throw hull.faultOf(
            key,
            "the stations make a hull of %s m %s, outside the believable %s to %s m. %s",
            NumberText.number(size),
            what,
            NumberText.number(least),
            NumberText.number(most),
            size * FOOT >= least && size > most ? FEET : remedy);
      }
    }

    private static double extent(List<Station> stations, ToDoubleFunction<Vector3> axis) {
      double least = points(stations).mapToDouble(axis).min().orElse(0);
      double most = points(stations).mapToDouble(axis).max().orElse(0);
      // Rounds to the millimetre, because a difference of decimals has digits that nobody measured.
      return Math.rint((most - least) * 1000) / 1000;
    }

    private static Stream<Vector3> points(List<Station> stations) {
      return stations.stream()
          .flatMap(station -> Stream.concat(station.port().stream(), station.starboard().stream()));
    }
  }
}
