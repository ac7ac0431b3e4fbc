package thwartwise.geometry;

import java.util.Arrays;

/**
 * Cuts a solid by a plane and caps the cut.
 *
 * <p>A vertex in the plane counts as kept, so a face lying in the plane is kept whole and its cap
 * either vanishes or cancels it: no case needs a tolerance.
 */
final class SolidCut {
  private final Solid solid;
  private final double[] over;
  private final int[] number;
  private final SolidBuilder kept = new SolidBuilder();
  private int hub = -1;

  private SolidCut(Solid solid, double[] over) {
    this.solid = solid;
    this.over = over;
    this.number = new int[over.length];
    Arrays.fill(number, -1);
  }

  /** The part of the solid where {@code normal · r ≤ offset}. */
  static Solid keepUnder(Solid solid, Vector3 normal, double offset) {
    double[] over = new double[solid.xyz.length / 3];
    int above = 0;
    for (int i = 0; i < over.length; i++) {
      over[i] =
          normal.x() * solid.xyz[3 * i]
              + normal.y() * solid.xyz[3 * i + 1]
              + normal.z() * solid.xyz[3 * i + 2]
              - offset;
      above += over[i] > 0 ? 1 : 0;
    }
    if (above == 0) {
      return solid;
    }
    return above == over.length ? Solid.EMPTY : new SolidCut(solid, over).run();
  }

  private Solid run() {
    for (int t = 0; t < solid.corners.length; t += 3) {
      triangle(solid.corners[t], solid.corners[t + 1], solid.corners[t + 2]);
    }
    return kept.build();
  }

  private void triangle(int a, int b, int c) {
    int above = (over[a] > 0 ? 1 : 0) + (over[b] > 0 ? 1 : 0) + (over[c] > 0 ? 1 : 0);
    if (above == 0) {
      kept.triangle(keep(a), keep(b), keep(c));
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
    cap(p, q);
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
    cap(p, q);
  }

  /** Closes the edge p→q of the cut by a triangle about the hub. */
  private void cap(int p, int q) {
    if (hub < 0) {
      hub = p;
    }
    kept.triangle(hub, q, p);
  }

  private int keep(int v) {
    if (number[v] < 0) {
      number[v] = kept.vertex(solid.xyz[3 * v], solid.xyz[3 * v + 1], solid.xyz[3 * v + 2]);
    }
    return number[v];
  }

  /** Where the edge from a kept vertex to a lost one meets the plane. */
  private int crossing(int in, int out) {
    double t = over[in] / (over[in] - over[out]);
    double[] r = solid.xyz;
    return kept.vertex(
        r[3 * in] + t * (r[3 * out] - r[3 * in]),
        r[3 * in + 1] + t * (r[3 * out + 1] - r[3 * in + 1]),
        r[3 * in + 2] + t * (r[3 * out + 2] - r[3 * in + 2]));
  }
}
