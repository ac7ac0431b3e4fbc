package thwartwise.benchmark;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Vector3;

/** A solid's surface as flat arrays: each vertex once, and three vertex numbers for a triangle. */
final class FlatTriangles {
  private final double[] xyz;
  private final int[] corners;

  private FlatTriangles(double[] xyz, int[] corners) {
    this.xyz = xyz;
    this.corners = corners;
  }

  static FlatTriangles of(Solid solid) {
    Map<Vector3, Integer> numbers = new HashMap<>();
    List<Vector3> vertices = new ArrayList<>();
    int[] corners = new int[3 * solid.triangleCount()];
    for (int i = 0; i < corners.length; i++) {
      Vector3 corner = solid.triangle(i / 3).get(i % 3);
      corners[i] =
          numbers.computeIfAbsent(
              corner,
              v -> {
                vertices.add(v);
                return vertices.size() - 1;
              });
    }
    double[] xyz = vertices.stream().flatMapToDouble(FlatTriangles::coordinates).toArray();
    return new FlatTriangles(xyz, corners);
  }

  private static DoubleStream coordinates(Vector3 v) {
    return DoubleStream.of(v.x(), v.y(), v.z());
  }

  /**
   * The least that can be called a pass over the triangles: load the three corners of each and add
   * up the signed volume of the tetrahedra on them.
   */
  double barePass() {
    double sixfold = 0;
    for (int t = 0; t < corners.length; t += 3) {
      int a = 3 * corners[t];
      int b = 3 * corners[t + 1];
      int c = 3 * corners[t + 2];
      double bx = xyz[b];
      double by = xyz[b + 1];
      double bz = xyz[b + 2];
      double cx = xyz[c];
      double cy = xyz[c + 1];
      double cz = xyz[c + 2];
      sixfold +=
          xyz[a] * (by * cz - bz * cy)
              + xyz[a + 1] * (bz * cx - bx * cz)
              + xyz[a + 2] * (bx * cy - by * cx);
    }
    return sixfold / 6;
  }
}
