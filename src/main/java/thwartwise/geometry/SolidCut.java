package thwartwise.geometry;

import java.util.Arrays;

/**
 * Cuts a solid by planes and caps each cut.
 *
 * <p>A vertex in the plane counts as kept, so a face lying in the plane is kept whole and its cap
 * either vanishes or cancels it: no case needs a tolerance.
 *
 * <p>A cap is kept as its outline until the last plane has cut it, and only then filled with
 * triangles. Where a plane cuts an outline, both caps get the line from each end so made to the
 * first of them, in opposite directions: as every cap is closed, these lines add up to its new
 * side. Caps cut as triangles would have several times as many, each of which is immersed again and
 * again.
 *
 * <p>Between one cut and the next the part lies in rows of the thread's own, and only what is left
 * after the last one is made a solid.
 */
final class SolidCut {
  /** A box has six faces. */
  private static final int MOST_CAPS = 6;

  private static final ThreadLocal<SolidCut> OF_THREAD = ThreadLocal.withInitial(SolidCut::new);

  private double[] xyz = {};
  private int[] corners = {};
  private int vertices;
  private int used;
  private double[] over = {};
  private int[] number = {};
  private SolidBuilder kept = new SolidBuilder();
  private SolidBuilder spare = new SolidBuilder();
  private Outlines outlines = new Outlines();
  private Outlines keptOutlines = new Outlines();
  private int cap;
  private final int[] firstOf = new int[MOST_CAPS];

  private SolidCut() {}

  /** The part of the solid where {@code normal · r ≤ offset}. */
  static Solid keepUnder(Solid solid, Vector3 normal, double offset) {
    SolidCut cut = OF_THREAD.get().start(solid);
    cut.keepUnder(normal.x(), normal.y(), normal.z(), offset);
    return cut.result(solid);
  }

  /** The part of the solid inside the box. */
  static Solid keepWithin(Solid solid, Box box) {
    SolidCut cut = OF_THREAD.get().start(solid);
    cut.keepBetween(1, 0, 0, box.x());
    cut.keepBetween(0, 1, 0, box.y());
    cut.keepBetween(0, 0, 1, box.z());
    return cut.result(solid);
  }

  private SolidCut start(Solid solid) {
    take(solid.xyz, solid.xyz.length / 3, solid.corners, solid.corners.length);
    cap = 0;
    outlines.clear();
    return this;
  }

  private void take(double[] points, int pointCount, int[] triangles, int cornerCount) {
    xyz = points;
    vertices = pointCount;
    corners = triangles;
    used = cornerCount;
  }

  /** The remaining part; the solid itself where nothing was cut off. */
  private Solid result(Solid solid) {
    Solid left = xyz == solid.xyz ? solid : capped();
    take(Solid.EMPTY.xyz, 0, Solid.EMPTY.corners, 0);
    return left;
  }

  /** What the last cut left, each outline filled with triangles about one of its vertices. */
  private Solid capped() {
    Arrays.fill(firstOf, -1);
    for (int i = 0; i < outlines.size(); i++) {
      int hub = first(outlines.cap(i), outlines.to(i));
      spare.triangle(hub, outlines.from(i), outlines.to(i));
    }
    return spare.build();
  }

  /** The first vertex that was asked for with a cap since the row was filled with -1. */
  private int first(int ofCap, int vertex) {
    if (firstOf[ofCap] < 0) {
      firstOf[ofCap] = vertex;
    }
    return firstOf[ofCap];
  }

  private void keepBetween(int x, int y, int z, Span span) {
    if (Double.isFinite(span.to())) {
      keepUnder(x, y, z, span.to());
    }
    if (Double.isFinite(span.from())) {
      keepUnder(-x, -y, -z, -span.from());
    }
  }

  private void keepUnder(double byX, double byY, double byZ, double offset) {
    makeRoom();
    int above = 0;
    for (int i = 0, j = 0; i < vertices; i++, j += 3) {
      double height = byX * xyz[j] + byY * xyz[j + 1] + byZ * xyz[j + 2] - offset;
      over[i] = height;
      above += height > 0 ? 1 : 0;
    }
    if (above == vertices) {
      spare.clear();
      outlines.clear();
      takeSpare();
    } else if (above > 0) {
      cut();
    }
  }

  private void makeRoom() {
    if (over.length < vertices) {
      over = new double[2 * vertices];
      number = new int[2 * vertices];
    }
  }

  private void cut() {
    Arrays.fill(number, 0, vertices, -1);
    Arrays.fill(firstOf, -1);
    kept.clear();
    keptOutlines.clear();
    for (int t = 0; t < used; t += 3) {
      triangle(corners[t], corners[t + 1], corners[t + 2]);
    }
    for (int i = 0; i < outlines.size(); i++) {
      outline(outlines.cap(i), outlines.from(i), outlines.to(i));
    }
    cap++;
    SolidBuilder part = kept;
    kept = spare;
    spare = part;
    Outlines around = keptOutlines;
    keptOutlines = outlines;
    outlines = around;
    takeSpare();
  }

  private void takeSpare() {
    take(spare.xyz(), spare.vertexCount(), spare.corners(), spare.cornerCount());
  }

  /** One edge of the outline of an earlier cap. */
  private void outline(int of, int from, int to) {
    if (over[from] > 0 && over[to] > 0) {
      return;
    }
    if (over[to] > 0) {
      int end = crossing(from, to);
      keptOutlines.add(of, keep(from), end);
      side(of, end, first(of, end));
    } else if (over[from] > 0) {
      int start = crossing(to, from);
      keptOutlines.add(of, start, keep(to));
      side(of, first(of, start), start);
    } else {
      keptOutlines.add(of, keep(from), keep(to));
    }
  }

  /** The line that closes the cut outline of an earlier cap, and with it that of the new one. */
  private void side(int of, int from, int to) {
    if (from != to) {
      keptOutlines.add(of, from, to);
      keptOutlines.add(cap, to, from);
    }
  }

  private void triangle(int a, int b, int c) {
    int above = (over[a] > 0 ? 1 : 0) + (over[b] > 0 ? 1 : 0) + (over[c] > 0 ? 1 : 0);
    if (above == 0) {
      kept.triangleWithArea(keep(a), keep(b), keep(c));
    } else if (above == 1) {
      twoKept(a, b, c);
    } else if (above == 2) {
      oneKept(a, b, c);
    }
  }

  private void oneKept(int a, int b, int c) {
    if (over[a] > 0) {
      oneKept(b, c, a);
      return;
    }
    int p = crossing(a, b);
    int q = crossing(a, c);
    kept.triangle(keep(a), p, q);
    keptOutlines.add(cap, q, p);
  }

  private void twoKept(int a, int b, int c) {
    if (!(over[c] > 0)) {
      twoKept(b, c, a);
      return;
    }
    int p = crossing(b, c);
    int q = crossing(a, c);
    kept.triangle(keep(a), keep(b), p);
    kept.triangle(keep(a), p, q);
    keptOutlines.add(cap, q, p);
  }

  private int keep(int v) {
    if (number[v] < 0) {
      number[v] = kept.vertex(xyz[3 * v], xyz[3 * v + 1], xyz[3 * v + 2]);
    }
    return number[v];
  }

  /** Where the edge from a kept vertex to a lost one meets the plane. */
  private int crossing(int in, int out) {
    double t = over[in] / (over[in] - over[out]);
    double[] r = xyz;
    return kept.vertex(
        r[3 * in] + t * (r[3 * out] - r[3 * in]),
        r[3 * in + 1] + t * (r[3 * out + 1] - r[3 * in + 1]),
        r[3 * in + 2] + t * (r[3 * out + 2] - r[3 * in + 2]));
  }
}
