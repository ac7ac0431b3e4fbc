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

  /** For each triangle the tetrahedron's volume and its first moments along x, y and z. */
  final double[] cones;

  final double volume;
  final Vector3 moment;

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
