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

  /**
   * For each triangle that volume and the tetrahedron's first moments along x, y and z, in units so
   * small that rounding them changes nothing, and so large that no sum of them overflows. Whole
   * numbers have the same sum in any order.
   */
  final long[] counts;

  /** One of those units, m³ or m⁴: a power of two. */
  final double unit;

  final double volume;
  final Vector3 moment;

  // Made when it is first needed, because most solids are never crossed by a second plane. Two
  // threads that both do make the same one.
  private volatile Incidence incidence;

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
    double[] moments = new double[corners.length];
    double sum = 0;
    double sumX = 0;
    double sumY = 0;
    double sumZ = 0;
    for (int i = 0, t = 0; i < cones.length; i++, t += 3) {
      cone(i, corners[t], corners[t + 1], corners[t + 2], moments);
      sum += cones[i];
      sumX += moments[t];
      sumY += moments[t + 1];
      sumZ += moments[t + 2];
    }
    volume = sum;
    moment = Vector3.of(sumX, sumY, sumZ);
    unit = unit(cones, moments);
    counts = new long[4 * cones.length];
    for (int i = 0, t = 0; i < cones.length; i++, t += 3) {
      counts[4 * i] = Math.round(cones[i] / unit);
      counts[4 * i + 1] = Math.round(moments[t] / unit);
      counts[4 * i + 2] = Math.round(moments[t + 1] / unit);
      counts[4 * i + 3] = Math.round(moments[t + 2] / unit);
    }
  }

  /** All of them together are fewer than 2⁶¹ of these units. */
  private static double unit(double[] cones, double[] moments) {
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

  private void cone(int i, int a, int b, int c, double[] moments) {
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
