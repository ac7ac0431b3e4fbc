package thwartwise.afloat;

import java.util.ArrayList;
import java.util.List;
import thwartwise.geometry.Box;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;

/** Plain bodies with closed-form answers, for tests. */
final class Blocks {
  private Blocks() {}

  /** A block over the middle of its length, bottom at z = 0. */
  static Solid block(double length, double breadth, double depth) {
    return Solid.block(
        new Box(
            new Span(-length / 2, length / 2),
            new Span(-breadth / 2, breadth / 2),
            new Span(0, depth)));
  }

  /** A prism along x about amidships; its outline in (y, z), counter-clockwise seen from ahead. */
  static Solid prism(double length, List<double[]> outline) {
    int n = outline.size();
    List<Vector3> vertices = new ArrayList<>();
    for (double x : new double[] {-length / 2, length / 2}) {
      outline.forEach(p -> vertices.add(Vector3.of(x, p[0], p[1])));
    }
    return Solid.of(vertices, skin(n));
  }

  /** A cylinder on end, foot at z = 0, its rim of so many flats. */
  static Solid upright(double radius, double height, int flats) {
    List<Vector3> vertices = new ArrayList<>();
    for (double z : new double[] {0, height}) {
      for (int i = 0; i < flats; i++) {
        double angle = 2 * Math.PI * i / flats;
        vertices.add(Vector3.of(radius * Math.cos(angle), radius * Math.sin(angle), z));
      }
    }
    return Solid.of(vertices, skin(flats));
  }

  /** Two rings of n vertices, the second further along the direction the first turns about. */
  private static List<int[]> skin(int n) {
    List<int[]> triangles = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      int next = (i + 1) % n;
      triangles.add(new int[] {i, next, n + next});
      triangles.add(new int[] {i, n + next, n + i});
    }
    for (int i = 1; i + 1 < n; i++) {
      triangles.add(new int[] {0, i + 1, i});
      triangles.add(new int[] {n, n + i, n + i + 1});
    }
    return triangles;
  }

  /** A block floating in water of density 1 kg/m³ at a draft, with G at a height. */
  static FloatingBody floating(Solid solid, double volume, double heightOfG) {
    return new FloatingBody(volume, Vector3.of(0, 0, heightOfG), List.of(new Lift(solid, 1)), 1);
  }
}
