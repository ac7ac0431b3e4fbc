package thwartwise.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** Solids with known answers and ways to move them, for tests. */
final class Shapes {
  private Shapes() {}

  /** A ball's surface of flat facets, stretched along the axes; n facets from pole to pole. */
  static Solid ellipsoid(double a, double b, double c, int n) {
    List<Vector3> vertices = new ArrayList<>();
    vertices.add(Vector3.of(0, 0, -c));
    for (int i = 1; i < n; i++) {
      double down = Math.PI * i / n;
      for (int j = 0; j < 2 * n; j++) {
        double round = Math.PI * j / n;
        vertices.add(
            Vector3.of(
                a * Math.sin(down) * Math.cos(round),
                b * Math.sin(down) * Math.sin(round),
                -c * Math.cos(down)));
      }
    }
    vertices.add(Vector3.of(0, 0, c));
    return Solid.of(vertices, facets(n));
  }

  private static List<int[]> facets(int n) {
    int ring = 2 * n;
    int top = 1 + (n - 1) * ring;
    List<int[]> triangles = new ArrayList<>();
    for (int j = 0; j < ring; j++) {
      int next = (j + 1) % ring;
      triangles.add(new int[] {0, 1 + next, 1 + j});
      triangles.add(new int[] {top, top - ring + j, top - ring + next});
      for (int i = 0; i < n - 2; i++) {
        int low = 1 + i * ring;
        triangles.add(new int[] {low + j, low + next, low + ring + next});
        triangles.add(new int[] {low + j, low + ring + next, low + ring + j});
      }
    }
    return triangles;
  }

  /** A trough: a block 4 x 2 x 1 with a slot 1 wide and 0.6 deep along its top. Volume 5.6. */
  static Solid trough() {
    double[][] outline = {
      {-1, 0}, {1, 0}, {1, 1}, {0.5, 1}, {0.5, 0.4}, {-0.5, 0.4}, {-0.5, 1}, {-1, 1}
    };
    int n = outline.length;
    List<Vector3> vertices = new ArrayList<>();
    for (double x : new double[] {0, 4}) {
      for (double[] p : outline) {
        vertices.add(Vector3.of(x, p[0], p[1]));
      }
    }
    List<int[]> triangles = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      int next = (i + 1) % n;
      triangles.add(new int[] {i, next, n + next});
      triangles.add(new int[] {i, n + next, n + i});
    }
    // The end is three convex pieces: floor and two walls.
    int[][] end = {{0, 1, 4}, {0, 4, 5}, {1, 2, 3}, {1, 3, 4}, {0, 5, 6}, {0, 6, 7}};
    for (int[] t : end) {
      triangles.add(new int[] {t[0], t[2], t[1]});
      triangles.add(new int[] {n + t[0], n + t[1], n + t[2]});
    }
    return Solid.of(vertices, triangles);
  }

  static Solid block(double x, double y, double z) {
    return Solid.block(new Box(new Span(0, x), new Span(-y / 2, y / 2), new Span(0, z)));
  }

  static Solid moved(Solid solid, Vector3 by) {
    return mapped(solid, p -> p.plus(by), false);
  }

  static Solid mirrored(Solid solid) {
    return mapped(solid, Vector3::mirrored, true);
  }

  private static Solid mapped(Solid solid, UnaryOperator<Vector3> map, boolean turnOver) {
    List<Vector3> vertices = new ArrayList<>();
    List<int[]> triangles = new ArrayList<>();
    for (int i = 0; i < solid.triangleCount(); i++) {
      solid.triangle(i).forEach(p -> vertices.add(map.apply(p)));
      int a = 3 * i;
      triangles.add(turnOver ? new int[] {a, a + 2, a + 1} : new int[] {a, a + 1, a + 2});
    }
    return Solid.of(vertices, triangles);
  }

  /** The same plane seen from the other side. */
  static WaterPlane turnedOver(WaterPlane plane) {
    return new WaterPlane(plane.up().times(-1), -plane.height());
  }
}
