package thwartwise.geometry;

import java.util.Arrays;

/** Collects vertices and triangles in flat arrays; triangles without area are left out. */
public final class SolidBuilder {
  private double[] xyz = new double[192];
  private int[] corners = new int[384];
  private int vertices;
  private int used;

  /** Adds a vertex and returns its number. */
  public int vertex(Vector3 p) {
    return vertex(p.x(), p.y(), p.z());
  }

  int vertex(double x, double y, double z) {
    if (3 * vertices == xyz.length) {
      xyz = Arrays.copyOf(xyz, 2 * xyz.length);
    }
    xyz[3 * vertices] = x;
    xyz[3 * vertices + 1] = y;
    xyz[3 * vertices + 2] = z;
    return vertices++;
  }

  /** Adds a triangle, corners counter-clockwise from outside. */
  public void triangle(int a, int b, int c) {
    if (!same(a, b) && !same(b, c) && !same(c, a)) {
      triangleWithArea(a, b, c);
    }
  }

  /** Adds a triangle whose corners are known to differ. */
  void triangleWithArea(int a, int b, int c) {
    if (used == corners.length) {
      corners = Arrays.copyOf(corners, 2 * corners.length);
    }
    corners[used++] = a;
    corners[used++] = b;
    corners[used++] = c;
  }

  public Solid build() {
    return used == 0
        ? Solid.EMPTY
        : new Solid(Arrays.copyOf(xyz, 3 * vertices), Arrays.copyOf(corners, used));
  }

  /** Begins again with the same arrays. */
  void clear() {
    vertices = 0;
    used = 0;
  }

  /** Its own array, longer than its content; valid until the next vertex or triangle. */
  double[] xyz() {
    return xyz;
  }

  int vertexCount() {
    return vertices;
  }

  /** Its own array, longer than its content; valid until the next vertex or triangle. */
  int[] corners() {
    return corners;
  }

  int cornerCount() {
    return used;
  }

  private boolean same(int a, int b) {
    return a == b
        || xyz[3 * a] == xyz[3 * b]
            && xyz[3 * a + 1] == xyz[3 * b + 1]
            && xyz[3 * a + 2] == xyz[3 * b + 2];
  }
}
