package thwartwise.plausibility;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import thwartwise.geometry.Vector3;
import thwartwise.hull.ReadingDirection;
import thwartwise.hull.Station;
import thwartwise.hull.TapeSlip;

/**
 * Readings of stations that are off a fair curve through the other stations. Every line of the hull
 * is considered by itself, each reading against the others. A false reading also pulls its
 * neighbours' curves, so of each line only the worst is reported.
 *
 * <p>Four stations are the fewest that show anything: of three, the middle one may be anywhere. An
 * end has neighbours on one side only; it is reported only if far wider than any other.
 */
public final class StationFairness {
  private static final int FEWEST = 4;

  /** A typing error this near the fair value explains a reading (judgement: tape and shape). */
  private static final double EXPLAINED = 1.2;

  /** A hull fuller at an end than anywhere else by more than this is no boat (judgement). */
  private static final double END_FULLER = 1.3;

  /**
   * A height below this counts as this, because a bottom may turn up fast toward the stem, m
   * (judgement).
   */
  private static final double NEAR_THE_BOTTOM = 0.10;

  private static final Comparator<FairnessOutlier> WORST =
      Comparator.comparingDouble(FairnessOutlier::factor)
          .thenComparing(o -> Math.abs(o.value() - o.fair()));

  private final double ratio;
  private final double distance;

  /**
   * @param ratio a reading this many times too large or small is out of line
   * @param distance provided that it is off by at least this, m
   */
  public StationFairness(double ratio, double distance) {
    this.ratio = ratio;
    this.distance = distance;
  }

  /** Whether a half-breadth is so far above its expected value that it is out of line. */
  public boolean isFarAbove(double read, double fair) {
    return read - fair > distance && read > ratio * fair;
  }

  /** The worst of each line of a whole hull, ordered from aft forward. */
  public List<FairnessOutlier> outOfLine(List<Station> stations) {
    return worst(stations, true);
  }

  /** The same while stations are still being measured: the last one is no end yet. */
  public List<FairnessOutlier> outOfLineSoFar(List<Station> stations) {
    return worst(stations, false);
  }

  private List<FairnessOutlier> worst(List<Station> stations, boolean whole) {
    List<FairnessOutlier> all = new ArrayList<>(side(stations, true, whole));
    if (!stations.stream().allMatch(Station::isSymmetric)) {
      all.addAll(side(stations, false, whole));
    }
    all.sort(
        Comparator.comparingInt(FairnessOutlier::station).thenComparingInt(FairnessOutlier::point));
    return List.copyOf(all);
  }

  private List<FairnessOutlier> side(List<Station> stations, boolean port, boolean whole) {
    Function<Station, List<Vector3>> points = port ? Station::port : Station::starboard;
    int lines = stations.get(0).port().size();
    List<FairnessOutlier> found = new ArrayList<>();
    for (int k = 0; k < lines; k++) {
      int point = k;
      List<Vector3> line = stations.stream().map(s -> points.apply(s).get(point)).toList();
      if (k > 0) {
        Line breadths = new Line(line, k, port, ReadingDirection.HALF_BREADTH);
        swapped(stations, points, k, port)
            .or(() -> breadths.worst(whole))
            .or(() -> repeated(stations, points, breadths, whole))
            .ifPresent(found::add);
      }
      Line heights = new Line(line, k, port, ReadingDirection.HEIGHT);
      heights
          .worst(whole)
          .or(() -> repeated(stations, points, heights, whole))
          .ifPresent(found::add);
    }
    return found;
  }

  private static Optional<FairnessOutlier> repeated(
      List<Station> stations, Function<Station, List<Vector3>> points, Line line, boolean whole) {
    if (!whole || stations.size() < FEWEST) {
      return Optional.empty();
    }
    boolean heights = line.direction == ReadingDirection.HEIGHT;
    double[] below =
        heights ? new double[0] : read(stations, points, line.point - 1, StationFairness::out);
    return new RepeatedReading(line.x, line.value, below)
        .found(line.direction)
        .map(r -> line.of(r.station(), r.fair(), TapeSlip.REPEATED));
  }

  /**
   * Two half-breadths of one station that are exchanged compared with every other station and are
   * in line once they are changed back.
   */
  private Optional<FairnessOutlier> swapped(
      List<Station> stations, Function<Station, List<Vector3>> points, int k, boolean port) {
    int lines = stations.get(0).port().size();
    if (stations.size() < FEWEST || k + 1 >= lines) {
      return Optional.empty();
    }
    double[] lower = read(stations, points, k, StationFairness::out);
    double[] upper = read(stations, points, k + 1, StationFairness::out);
    double[] x = read(stations, points, k, Vector3::x);
    for (int i = 1; i + 1 < x.length; i++) {
      if (lower[i] - upper[i] > distance / 2 && othersFlare(lower, upper, i)) {
        FairRange low = FairRange.of(x, lower, i);
        FairRange up = FairRange.of(x, upper, i);
        if (explains(upper[i], low) && explains(lower[i], up)) {
          return Optional.of(
              new FairnessOutlier(
                  i,
                  k,
                  port,
                  ReadingDirection.HALF_BREADTH,
                  lower[i],
                  low.nearest(lower[i]),
                  TapeSlip.SWAPPED,
                  upper[i]));
        }
      }
    }
    return Optional.empty();
  }

  private static boolean othersFlare(double[] lower, double[] upper, int but) {
    for (int i = 0; i < lower.length; i++) {
      if (i != but && lower[i] > upper[i]) {
        return false;
      }
    }
    return true;
  }

  private static double[] read(
      List<Station> stations,
      Function<Station, List<Vector3>> points,
      int k,
      ToDoubleFunction<Vector3> of) {
    return stations.stream().map(s -> points.apply(s).get(k)).mapToDouble(of).toArray();
  }

  private static double out(Vector3 point) {
    return Math.abs(point.y());
  }

  private static boolean explains(double meant, FairRange fair) {
    double nearest = fair.nearest(meant);
    return nearest > 0
        && meant > 0
        && Math.max(meant, nearest) <= EXPLAINED * Math.min(meant, nearest);
  }

  /** One line of the hull in one direction. */
  private final class Line {
    private final double[] x;
    private final double[] value;
    private final int point;
    private final boolean port;
    private final ReadingDirection direction;

    Line(List<Vector3> points, int point, boolean port, ReadingDirection direction) {
      this(
          points.stream().mapToDouble(Vector3::x).toArray(),
          points.stream()
              .mapToDouble(direction == ReadingDirection.HEIGHT ? Vector3::z : StationFairness::out)
              .toArray(),
          point,
          port,
          direction);
    }

    private Line(double[] x, double[] value, int point, boolean port, ReadingDirection direction) {
      this.x = x;
      this.value = value;
      this.point = point;
      this.port = port;
      this.direction = direction;
    }

    /** The reading whose correction leaves the fewest others out of line. */
    Optional<FairnessOutlier> worst(boolean whole) {
      Comparator<FairnessOutlier> best =
          Comparator.<FairnessOutlier>comparingInt(o -> putRight(o).out(whole).size())
              .thenComparing(o -> o.slip() == TapeSlip.UNKNOWN)
              .thenComparing(WORST.reversed());
      return out(whole).stream().min(best);
    }

    private Line putRight(FairnessOutlier out) {
      double[] right = value.clone();
      right[out.station()] = out.meant();
      return new Line(x, right, point, port, direction);
    }

    private List<FairnessOutlier> out(boolean whole) {
      List<FairnessOutlier> found = new ArrayList<>();
      for (int i = 1; x.length >= FEWEST && i + 1 < x.length; i++) {
        inner(i).ifPresent(found::add);
      }
      if (whole && direction == ReadingDirection.HALF_BREADTH) {
        end(0).ifPresent(found::add);
        end(x.length - 1).ifPresent(found::add);
      }
      return found;
    }

    private Optional<FairnessOutlier> inner(int i) {
      FairRange fair = FairRange.of(x, value, i);
      return isOut(value[i], fair) ? Optional.of(outlier(i, fair)) : Optional.empty();
    }

    private boolean isOut(double read, FairRange fair) {
      if (!(fair.off(read) > distance)) {
        return false;
      }
      double least = direction == ReadingDirection.HEIGHT ? NEAR_THE_BOTTOM : 0;
      double nearest = Math.max(least, fair.nearest(read));
      double counted = Math.max(least, read);
      return Math.max(counted, nearest) > ratio * Math.min(counted, nearest);
    }

    private Optional<FairnessOutlier> end(int i) {
      double most = 0;
      for (int j = 0; j < value.length; j++) {
        most = j == i ? most : Math.max(most, value[j]);
      }
      return value[i] > END_FULLER * most + distance
          ? Optional.of(outlier(i, new FairRange(0, most)))
          : Optional.empty();
    }

    private FairnessOutlier outlier(int i, FairRange fair) {
      for (TapeSlip slip : TapeSlip.values()) {
        double meant = slip.corrected(value[i]);
        if (meant != value[i] && slip.canHappenTo(direction) && explains(meant, fair)) {
          return of(i, fair, slip, meant);
        }
      }
      return of(i, fair, TapeSlip.UNKNOWN, fair.nearest(value[i]));
    }

    private FairnessOutlier of(int i, double fair, TapeSlip slip) {
      return new FairnessOutlier(i, point, port, direction, value[i], fair, slip, fair);
    }

    private FairnessOutlier of(int i, FairRange fair, TapeSlip slip, double meant) {
      return new FairnessOutlier(
          i, point, port, direction, value[i], fair.nearest(value[i]), slip, meant);
    }
  }
}
