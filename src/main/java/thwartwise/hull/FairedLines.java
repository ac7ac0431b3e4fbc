package thwartwise.hull;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;

/** The faired lines of a hull, and sections through them at any spacing. */
final class FairedLines {
  /** The number of places between two stations that are checked for a crossing. */
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

  /**
   * Straight lines from station to station: the least volume of a hull that bulges between them.
   */
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
   * the next one. Straight lines can cross too, so the sections checked are not those of the sag.
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

  // Twisted panels are flat triangles here; with two pieces at least, their twist does not all
  // go one way.
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

    /** The point at a fraction of the way, along x, from station i to the next, moved along x. */
    Vector3 at(int i, double fraction, double moved) {
      double along = x[i] + fraction * (x[i + 1] - x[i]) + moved;
      return Vector3.of(along, y.at(along), z.at(along));
    }

    /** The number of straight pieces after station i with which none sags more. */
    int pieces(int i, double sag) {
      double h = x[i + 1] - x[i];
      double bend = Math.max(y.greatestBend(i), z.greatestBend(i));
      return (int) Math.ceil(h * Math.sqrt(bend / (8 * sag)));
    }
  }

  /**
   * A curve y(x) through measured points that does not overshoot between them.
   *
   * <p>Method: piecewise cubic Hermite. Slopes are those of the parabola through three neighbours,
   * so a parabola is followed exactly, then held to at most three times the lesser neighbouring
   * chord and to zero at a local extreme, which keeps each piece between its ends (Fritsch and
   * Carlson, "Monotone piecewise cubic interpolation", SIAM J. Numer. Anal. 17, 1980; from memory).
   */
  static final class FairedCurve {
    private final double[] x;
    private final double[] y;

    /** The slopes of each piece at its start and at its end. */
    private final double[] start;

    private final double[] end;

    private FairedCurve(double[] x, double[] y, double[] start, double[] end) {
      this.x = x;
      this.y = y;
      this.start = start;
      this.end = end;
    }

    /** The straight pieces from point to point. */
    static FairedCurve straight(double[] x, double[] y) {
      double[] chord = chords(x, y);
      return new FairedCurve(x.clone(), y.clone(), chord, chord);
    }

    /** The curve through at least three points, x strictly increasing. */
    static FairedCurve through(double[] x, double[] y) {
      int n = x.length;
      double[] chord = chords(x, y);
      double[] slope = new double[n];
      for (int i = 1; i < n - 1; i++) {
        double before = x[i] - x[i - 1];
        double after = x[i + 1] - x[i];
        double parabola = (chord[i - 1] * after + chord[i] * before) / (before + after);
        slope[i] = heldIn(parabola, chord[i - 1], chord[i]);
      }
      slope[0] = heldAtEnd(2 * chord[0] - parabolaSlope(x, chord, 1), chord[0]);
      slope[n - 1] = heldAtEnd(2 * chord[n - 2] - parabolaSlope(x, chord, n - 2), chord[n - 2]);
      return new FairedCurve(
          x.clone(), y.clone(), Arrays.copyOf(slope, n - 1), Arrays.copyOfRange(slope, 1, n));
    }

    private static double[] chords(double[] x, double[] y) {
      double[] chord = new double[x.length - 1];
      for (int i = 0; i < chord.length; i++) {
        chord[i] = (y[i + 1] - y[i]) / (x[i + 1] - x[i]);
      }
      return chord;
    }

    private static double parabolaSlope(double[] x, double[] chord, int i) {
      double before = x[i] - x[i - 1];
      double after = x[i + 1] - x[i];
      return (chord[i - 1] * after + chord[i] * before) / (before + after);
    }

    private static double heldIn(double slope, double before, double after) {
      if (before * after <= 0) {
        return 0;
      }
      double most = 3 * Math.min(Math.abs(before), Math.abs(after));
      return Math.copySign(Math.min(Math.abs(slope), most), before);
    }

    private static double heldAtEnd(double slope, double chord) {
      if (slope * chord <= 0) {
        return 0;
      }
      return Math.copySign(Math.min(Math.abs(slope), 3 * Math.abs(chord)), chord);
    }

    /** The value at any x; beyond the ends the end pieces continue. */
    double at(double at) {
      int i = 0;
      while (i < x.length - 2 && at > x[i + 1]) {
        i++;
      }
      double h = x[i + 1] - x[i];
      double t = (at - x[i]) / h;
      double u = 1 - t;
      return y[i] * u * u * (1 + 2 * t)
          + y[i + 1] * t * t * (3 - 2 * t)
          + h * t * u * (start[i] * u - end[i] * t);
    }

    /** The greatest |y″| on the piece after point i; for a cubic it is at one of its ends. */
    double greatestBend(int i) {
      double h = x[i + 1] - x[i];
      double chord = (y[i + 1] - y[i]) / h;
      double atStart = (6 * chord - 4 * start[i] - 2 * end[i]) / h;
      double atEnd = (-6 * chord + 2 * start[i] + 4 * end[i]) / h;
      return Math.max(Math.abs(atStart), Math.abs(atEnd));
    }
  }
}
