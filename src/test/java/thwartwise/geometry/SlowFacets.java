package thwartwise.geometry;

/**
 * A solid's vertices and triangles as the inner loop of {@link SlowImmersion} wants them:
 * coordinates in one array each, and what never changes about a triangle worked out once.
 *
 * <p>The tetrahedron from any apex o to a triangle has the volume {@code V₀ − o · N}, V₀ the volume
 * from the boat's origin and N a third of the triangle's area along its outward normal.
 */
final class SlowFacets {
  final double[] x;
  final double[] y;
  final double[] z;

  /** For each triangle V₀ and the three parts of N. */
  final double[] cones;

  final double volume;
  final Vector3 moment;

  private SlowFacets(double[] xyz, int[] corners) {
    int count = xyz.length / 3;
    x = new double[count];
    y = new double[count];
    z = new double[count];
    for (int i = 0; i < count; i++) {
      x[i] = xyz[3 * i];
      y[i] = xyz[3 * i + 1];
      z[i] = xyz[3 * i + 2];
    }
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
      sumX += cones[f] * (x[a] + x[b] + x[c]);
      sumY += cones[f] * (y[a] + y[b] + y[c]);
      sumZ += cones[f] * (z[a] + z[b] + z[c]);
    }
    volume = sum;
    moment = Vector3.of(sumX / 4, sumY / 4, sumZ / 4);
  }

  static SlowFacets of(double[] xyz, int[] corners) {
    return new SlowFacets(xyz, corners);
  }

  private void cone(int f, int a, int b, int c) {
    double bx = x[b] - x[a];
    double by = y[b] - y[a];
    double bz = z[b] - z[a];
    double cx = x[c] - x[a];
    double cy = y[c] - y[a];
    double cz = z[c] - z[a];
    double nx = (by * cz - bz * cy) / 6;
    double ny = (bz * cx - bx * cz) / 6;
    double nz = (bx * cy - by * cx) / 6;
    cones[f] = x[a] * nx + y[a] * ny + z[a] * nz;
    cones[f + 1] = nx;
    cones[f + 2] = ny;
    cones[f + 3] = nz;
  }
}
