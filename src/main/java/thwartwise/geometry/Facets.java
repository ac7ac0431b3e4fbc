package thwartwise.geometry;

/**
 * A solid's vertices and triangles as the inner loop of {@link Immersion} wants them: coordinates
 * in one array each, and what never changes about a triangle worked out once: the tetrahedron on it
 * whose apex is the boat's origin.
 */
final class Facets {
  final double[] x;
  final double[] y;
  final double[] z;

  /** For each triangle three vertex numbers. */
  final int[] corners;

  /** For each triangle the tetrahedron's volume. */
  final double[] cones;

  /** For each triangle that tetrahedron's first moments along x, y and z. */
  private final double[] moments;

  final double volume;
  final Vector3 moment;

  // Made when they are first needed, because most solids are never crossed by a plane, and fewer by
  // a second one. Two threads that both do make the same ones.
  private volatile Counts counts;
  private volatile Incidence incidence;

  /**
   * Volumes and moments of all triangles as whole numbers, which have the same sum in any order.
   *
   * @param row for each triangle the tetrahedron's volume and its first moments along x, y and z,
   *     in units so small that rounding them changes nothing, and so large that no sum overflows
   * @param unit m³ or m⁴: a power of two
   */
  record Counts(long[] row, double unit) {}

  /**
   * The triangles that meet at each vertex, in one row.
   *
   * @param starts where those of each vertex begin in the row, and last where the row ends
   * @param corners eight times the number of the triangle, plus 1, 2 or 4 for its first, second or
   *     third corner
   */
  record Incidence(int[] starts, int[] corners) {}

  private Facets(double[] xyz, int[] corners) {
    int count = xyz.length / 3;
    x = new double[count];
    y = new double[count];
    z = new double[count];
    for (int i = 0; i < count; i++) {
      x[i] = xyz[3 * i];
      y[i] = xyz[3 * i + 1];
      z[i] = xyz[3 * i + 2];
    }
    this.corners = corners;
    cones = new double[corners.length / 3];
    moments = new double[corners.length];
    double sum = 0;
    double sumX = 0;
    double sumY = 0;
    double sumZ = 0;
    for (int i = 0, t = 0; i < cones.length; i++, t += 3) {
      cone(i, corners[t], corners[t + 1], corners[t + 2]);
      sum += cones[i];
      sumX += moments[t];
      sumY += moments[t + 1];
      sumZ += moments[t + 2];
    }
    volume = sum;
    moment = Vector3.of(sumX, sumY, sumZ);
  }

  Counts counts() {
    Counts known = counts;
    if (known == null) {
      known = counted();
      counts = known;
    }
    return known;
  }

  private Counts counted() {
    double unit = unit();
    long[] row = new long[4 * cones.length];
    for (int i = 0, t = 0, c = 0; i < cones.length; i++, t += 3, c += 4) {
      row[c] = Math.round(cones[i] / unit);
      row[c + 1] = Math.round(moments[t] / unit);
      row[c + 2] = Math.round(moments[t + 1] / unit);
      row[c + 3] = Math.round(moments[t + 2] / unit);
    }
    return new Counts(row, unit);
  }

  /** All of them together are fewer than 2⁶¹ of these units. */
  private double unit() {
    double all = 0;
    for (double cone : cones) {
      all += Math.abs(cone);
    }
    for (double moment : moments) {
      all += Math.abs(moment);
    }
    return Math.scalb(1.0, Math.getExponent(all + Double.MIN_NORMAL) - 60);
  }

  static Facets of(double[] xyz, int[] corners) {
    return new Facets(xyz, corners);
  }

  Incidence incidence() {
    Incidence known = incidence;
    if (known == null) {
      known = incident();
      incidence = known;
    }
    return known;
  }

  private Incidence incident() {
    int[] starts = new int[x.length + 1];
    for (int corner : corners) {
      starts[corner]++;
    }
    for (int i = 1; i < starts.length; i++) {
      starts[i] += starts[i - 1];
    }
    int[] row = new int[corners.length];
    for (int i = corners.length - 1; i >= 0; i--) {
      row[--starts[corners[i]]] = 8 * (i / 3) + (1 << i % 3);
    }
    return new Incidence(starts, row);
  }

  private void cone(int i, int a, int b, int c) {
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
    cones[i] = volume;
    moments[3 * i] = volume * (x[a] + x[b] + x[c]) / 4;
    moments[3 * i + 1] = volume * (y[a] + y[b] + y[c]) / 4;
    moments[3 * i + 2] = volume * (z[a] + z[b] + z[c]) / 4;
  }
}
