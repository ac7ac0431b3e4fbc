package thwartwise.geometry;

import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * A solid's vertices and triangles as the inner loop of {@link Immersion} wants them: coordinates
 * in one array each, and what never changes about a triangle worked out once: the tetrahedron on it
 * whose apex is the boat's origin.
 */
final class Facets {
  /** Triangles of one run. */
  static final int RUN = 8;

  /** Fewer triangles are not worth a look at runs of them, nor at their order. */
  private static final int WORTH_RUNS = 120;

  /** Three vertex numbers for each triangle; of many triangles, from the lowest to the highest. */
  final int[] corners;

  final double[] x;
  final double[] y;
  final double[] z;

  /** For each triangle the tetrahedron's volume and its first moments along x, y and z. */
  final double[] cones;

  /** About each run of triangles a block: its middle and half size along x, y and z. */
  final double[] runs;

  /** Volume and first moments of the tetrahedra on each run's triangles. */
  final double[] sums;

  final double volume;
  final Vector3 moment;

  private Facets(double[] xyz, int[] given) {
    int count = xyz.length / 3;
    x = new double[count];
    y = new double[count];
    z = new double[count];
    for (int i = 0; i < count; i++) {
      x[i] = xyz[3 * i];
      y[i] = xyz[3 * i + 1];
      z[i] = xyz[3 * i + 2];
    }
    boolean many = given.length >= 3 * WORTH_RUNS;
    corners = many ? upward(given) : given;
    cones = new double[corners.length / 3 * 4];
    double sum = 0;
    double sumX = 0;
    double sumY = 0;
    double sumZ = 0;
    for (int t = 0, f = 0; t < corners.length; t += 3, f += 4) {
      int a = corners[t];
      int b = corners[t + 1];
      int c = corners[t + 2];
      cone(f, a, b, c);
      sum += cones[f];
      sumX += cones[f + 1];
      sumY += cones[f + 2];
      sumZ += cones[f + 3];
    }
    volume = sum;
    moment = Vector3.of(sumX, sumY, sumZ);
    int runCount = many ? (corners.length / 3 + RUN - 1) / RUN : 0;
    runs = new double[6 * runCount];
    sums = new double[4 * runCount];
    for (int run = 0; run < runCount; run++) {
      bound(run);
    }
  }

  // A boat mostly lies with a level of its own near level: then most runs are wholly wet or dry.
  private int[] upward(int[] given) {
    return IntStream.range(0, given.length / 3)
        .boxed()
        .sorted(
            Comparator.comparingDouble(
                t -> z[given[3 * t]] + z[given[3 * t + 1]] + z[given[3 * t + 2]]))
        .flatMapToInt(t -> IntStream.of(given[3 * t], given[3 * t + 1], given[3 * t + 2]))
        .toArray();
  }

  private void bound(int run) {
    int from = 3 * RUN * run;
    int to = Math.min(from + 3 * RUN, corners.length);
    extent(x, from, to, 6 * run);
    extent(y, from, to, 6 * run + 1);
    extent(z, from, to, 6 * run + 2);
    for (int f = from / 3 * 4; f < to / 3 * 4; f++) {
      sums[4 * run + f % 4] += cones[f];
    }
  }

  private void extent(double[] row, int from, int to, int at) {
    double least = row[corners[from]];
    double most = least;
    for (int t = from; t < to; t++) {
      least = Math.min(least, row[corners[t]]);
      most = Math.max(most, row[corners[t]]);
    }
    runs[at] = (least + most) / 2;
    runs[at + 3] = (most - least) / 2;
  }

  static Facets of(double[] xyz, int[] corners) {
    return new Facets(xyz, corners);
  }

  private void cone(int f, int a, int b, int c) {
    double bx = x[b] - x[a];
    double by = y[b] - y[a];
    double bz = z[b] - z[a];
    double cx = x[c] - x[a];
    double cy = y[c] - y[a];
    double cz = z[c] - z[a];
    double nx = by * cz - bz * cy;
    double ny = bz * cx - bx * cz;
    double nz = bx * cy - by * cx;
    double volume = (x[a] * nx + y[a] * ny + z[a] * nz) / 6;
    cones[f] = volume;
    cones[f + 1] = volume * (x[a] + x[b] + x[c]) / 4;
    cones[f + 2] = volume * (y[a] + y[b] + y[c]) / 4;
    cones[f + 3] = volume * (z[a] + z[b] + z[c]) / 4;
  }
}
