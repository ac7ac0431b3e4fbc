package thwartwise.hull;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Vector3;

/**
 * A small open boat nobody has built, as a tape would find it; for properties.
 *
 * @param size length, beam and depth amidships
 * @param shape how it is drawn
 * @param tape what the unevenness of the build and of the tape is drawn from
 * @param lopsided by what share starboard is wider; nought for a mirrored boat
 */
public record RandomHull(Size size, Shape shape, long tape, double lopsided) {

  /** Metres. */
  public record Size(double length, double beam, double depth) {}

  /**
   * @param stations how many
   * @param points in each
   * @param sheer by how much the rail rises toward both ends, m
   * @param rocker by how much the keel does, m
   * @param rake by how much the rail overhangs the keel at both ends, m
   * @param fullness 1 for straight panels from keel to rail, more for fuller bilges
   * @param flat whether the bottom is level from keel to chine
   * @param ends breadth of stern and stem as shares of the beam
   */
  public record Shape(
      int stations,
      int points,
      double sheer,
      double rocker,
      double rake,
      double fullness,
      boolean flat,
      Ends ends) {}

  /** Shares of the beam; a stem of nought is sharp. */
  public record Ends(double stern, double stem) {}

  private static final double UNEVEN = 0.02;
  private static final double SAG = 0.01;

  /** A flat bottom, a straight rail and other ends of a range are no accident in real boats. */
  private static final int ENDS = 20;

  /** Corners that matter, as sharp ends and sides alike, are drawn every other time. */
  public static RandomHull any(Random random) {
    Size size =
        new Size(between(2.5, 6, random), between(0.7, 2, random), between(0.25, 0.7, random));
    return new RandomHull(size, shape(random), random.nextLong(), lopsided(random));
  }

  private static Shape shape(Random random) {
    return new Shape(
        3 + random.nextInt(5),
        3 + random.nextInt(3),
        between(0, 0.25, random),
        between(0, 0.15, random),
        between(0, 0.3, random),
        between(1, 3.5, random),
        random.nextBoolean(),
        new Ends(zeroOrUpTo(0.95, random), zeroOrUpTo(0.8, random)));
  }

  private static double zeroOrUpTo(double most, Random random) {
    return random.nextBoolean() ? 0 : between(0, most, random);
  }

  private static double lopsided(Random random) {
    return random.nextBoolean() ? 0 : between(-0.15, 0.15, random);
  }

  /** Evenly spread, to a tenth of a millimetre or milliradian; one in twenty is an end itself. */
  public static double between(double least, double most, Random random) {
    if (random.nextInt(ENDS) == 0) {
      return random.nextBoolean() ? least : most;
    }
    double any = least + (most - least) * random.nextDouble();
    return Math.min(most, Math.max(least, Math.rint(any * 1e4) / 1e4));
  }

  /** The same boat seen in a mirror: what was port is starboard. */
  public static HullMeasurements mirrored(HullMeasurements hull) {
    List<Station> stations =
        hull.stations().stream()
            .map(s -> new Station(s.name(), across(s.starboard()), across(s.port())))
            .toList();
    return with(hull, stations);
  }

  /** The same boat measured from another origin. */
  public static HullMeasurements moved(HullMeasurements hull, Vector3 by) {
    List<Station> stations =
        hull.stations().stream()
            .map(s -> new Station(s.name(), moved(s.port(), by), moved(s.starboard(), by)))
            .toList();
    return with(hull, stations);
  }

  private static HullMeasurements with(HullMeasurements hull, List<Station> stations) {
    return new HullMeasurements(
        hull.mass(),
        hull.centre(),
        hull.material(),
        hull.density(),
        hull.thickness(),
        hull.floor(),
        stations,
        hull.decked());
  }

  private static List<Vector3> across(List<Vector3> points) {
    return points.stream().map(Vector3::mirrored).toList();
  }

  private static List<Vector3> moved(List<Vector3> points, Vector3 by) {
    return points.stream().map(p -> p.plus(by)).toList();
  }

  /**
   * The outside up to a lid at the rail, of coarser flats than a hull that is inspected, so that
   * there is time for thousands.
   */
  public static Solid outside(HullMeasurements hull) {
    return Loft.closed(FairedLines.through(hull.stations()).sections(SAG));
  }

  /** The rail at the stations. */
  public static List<FloodPoint> rail(HullMeasurements hull) {
    List<FloodPoint> rail = new ArrayList<>();
    for (Station s : hull.stations()) {
      rail.add(new FloodPoint(s.name(), s.portRail()));
      rail.add(new FloodPoint(s.name(), s.starboardRail()));
    }
    return rail;
  }

  public HullMeasurements measured() {
    double mass = 12 * size.length() * size.beam();
    return new HullMeasurements(
        mass, Optional.empty(), Optional.empty(), 750, 0.006, 0.02, stations(), List.of());
  }

  private List<Station> stations() {
    Random random = new Random(tape);
    List<Station> stations = new ArrayList<>();
    for (int i = 0; i < shape.stations(); i++) {
      List<Vector3> port = side((double) i / (shape.stations() - 1), random);
      String name = "station " + (i + 1);
      stations.add(
          lopsided == 0
              ? Station.mirrored(name, port)
              : new Station(name, port, starboard(port, random)));
    }
    return stations;
  }

  /** Keel to rail; {@code along} runs from 0 at the stern to 1 at the stem. */
  private List<Vector3> side(double along, Random random) {
    double fromMiddle = 2 * along - 1;
    double square = fromMiddle * fromMiddle;
    double end = fromMiddle < 0 ? shape.ends().stern() : shape.ends().stem();
    double half = size.beam() / 2 * (1 - (1 - end) * square);
    double keel = shape.rocker() * square;
    double rail = size.depth() + shape.sheer() * square;
    List<Vector3> points = new ArrayList<>();
    for (int k = 0; k < shape.points(); k++) {
      double up = (double) k / (shape.points() - 1);
      double rise = k == 1 && shape.flat() ? 0 : Math.pow(up, shape.fullness());
      points.add(
          Vector3.of(
              along * size.length() + shape.rake() * up * fromMiddle,
              half * Math.pow(up, 1 / shape.fullness()) * uneven(random),
              keel + (rail - keel) * rise * uneven(random)));
    }
    return points;
  }

  private List<Vector3> starboard(List<Vector3> port, Random random) {
    List<Vector3> points = new ArrayList<>();
    for (Vector3 p : port) {
      double wider = (1 + lopsided) * uneven(random);
      // Where the sides meet, at the keel or a sharp end, there is only one height.
      double z = p.y() == 0 ? p.z() : p.z() * uneven(random);
      points.add(Vector3.of(p.x(), -p.y() * wider, z));
    }
    return points;
  }

  private static double uneven(Random random) {
    return 1 + UNEVEN * (2 * random.nextDouble() - 1);
  }
}
