package thwartwise.hull;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;

/** The faired lines of a hull, and sections through them as close together as asked. */
final class FairedLines {
  /** How often a stretch between two stations is looked at for a crossing. */
  private static final int LOOKS = 40;

  private final List<FairedLine> port;
  private final List<FairedLine> starboard;
  private final int stretches;

  private FairedLines(List<FairedLine> port, List<FairedLine> starboard, int stretches) {
    this.port = port;
    this.starboard = starboard;
    this.stretches = stretches;
  }

  static FairedLines through(List<Station> stations) {
    return of(stations, FairedLine::through);
  }

  /** Straight from station to station: what a hull that swells between them holds at least. */
  static FairedLines straight(List<Station> stations) {
    return of(stations, FairedLine::straight);
  }

  private static FairedLines of(
      List<Station> stations, Function<List<Vector3>, FairedLine> joined) {
    return new FairedLines(
        side(stations, Station::port, joined),
        side(stations, Station::starboard, joined),
        stations.size() - 1);
  }

  private static List<FairedLine> side(
      List<Station> stations,
      Function<Station, List<Vector3>> side,
      Function<List<Vector3>, FairedLine> joined) {
    List<FairedLine> lines = new ArrayList<>();
    for (int k = 0; k < side.apply(stations.get(0)).size(); k++) {
      int line = k;
      lines.add(joined.apply(stations.stream().map(s -> side.apply(s).get(line)).toList()));
    }
    return lines;
  }

  /**
   * Sections aft to forward.
   *
   * @param sag how far a line may bulge beyond the straight piece that stands for it, m
   */
  List<Section> sections(double sag) {
    List<Section> sections = new ArrayList<>();
    for (int i = 0; i < stretches; i++) {
      int pieces = pieces(i, sag);
      for (int j = 0; j < pieces; j++) {
        sections.add(at(i, (double) j / pieces, 0));
      }
    }
    sections.add(at(stretches - 1, 1, 0));
    return sections;
  }

  /**
   * Lengths along the rail over which the outline crosses itself: from the last sound section to
   * the next one. Straight lines cross as well as bent ones, so the sections are not those of the
   * sag.
   */
  List<Span> crossings() {
    List<Span> crossings = new ArrayList<>();
    double sound = at(0, 0, 0).portRail().x();
    boolean crossing = false;
    for (int piece = 0; piece <= stretches * LOOKS; piece++) {
      int stretch = Math.min(piece / LOOKS, stretches - 1);
      Section section = at(stretch, (double) (piece - stretch * LOOKS) / LOOKS, 0);
      if (crossing && !section.crossesItself()) {
        crossings.add(new Span(sound, section.portRail().x()));
      }
      crossing = section.crossesItself();
      sound = crossing ? sound : section.portRail().x();
    }
    if (crossing) {
      crossings.add(new Span(sound, at(stretches - 1, 1, 0).portRail().x()));
    }
    return crossings;
  }

  /** A section that follows the lines, moved along x by the same distance on each of them. */
  Section at(int stretch, double fraction, double moved) {
    return new Section(
        port.stream().map(l -> l.at(stretch, fraction, moved)).toList(),
        starboard.stream().map(l -> l.at(stretch, fraction, moved)).toList());
  }

  Section aftMovedForward(double by) {
    return at(0, 0, by);
  }

  Section foreMovedAft(double by) {
    return at(stretches - 1, 1, -by);
  }

  // Twisted panels are flat triangles here; two pieces at least keep their twist from all
  // going one way.
  private int pieces(int stretch, double sag) {
    int most = 2;
    for (FairedLine line : port) {
      most = Math.max(most, line.pieces(stretch, sag));
    }
    for (FairedLine line : starboard) {
      most = Math.max(most, line.pieces(stretch, sag));
    }
    return Math.min(most, 64);
  }

  /** One line of the hull from aft to forward: keel, chine, rail … faired through its stations. */
  static final class FairedLine {
    private final double[] x;
    private final FairedCurve y;
    private final FairedCurve z;

    private FairedLine(double[] x, FairedCurve y, FairedCurve z) {
      this.x = x;
      this.y = y;
      this.z = z;
    }

    static FairedLine through(List<Vector3> points) {
      return of(points, FairedCurve::through);
    }

    /** The same points joined by straight pieces. */
    static FairedLine straight(List<Vector3> points) {
      return of(points, FairedCurve::straight);
    }

    private static FairedLine of(
        List<Vector3> points, BiFunction<double[], double[], FairedCurve> curve) {
      double[] x = coordinates(points, Vector3::x);
      return new FairedLine(
          x,
          curve.apply(x, coordinates(points, Vector3::y)),
          curve.apply(x, coordinates(points, Vector3::z)));
    }

    private static double[] coordinates(List<Vector3> points, ToDoubleFunction<Vector3> axis) {
      return points.stream().mapToDouble(axis).toArray();
    }

    /** The point a fraction of the way, along x, from station i to the next, moved along x. */
    Vector3 at(int i, double fraction, double moved) {
      double along = x[i] + fraction * (x[i + 1] - x[i]) + moved;
      return Vector3.of(along, y.at(along), z.at(along));
    }

    /** Into how many straight pieces the stretch after station i falls so that none sags more. */
    int pieces(int i, double sag) {
      double h = x[i + 1] - x[i];
      double bend = Math.max(y.greatestBend(i), z.greatestBend(i));
      return (int) Math.ceil(h * Math.sqrt(bend / (8 * sag)));
    }
  }
}
