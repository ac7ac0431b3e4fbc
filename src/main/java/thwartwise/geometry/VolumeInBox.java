package thwartwise.geometry;

import java.util.Arrays;

/**
 * The volume that a solid shares with boxes, without the common solid.
 *
 * <p>Over a point of a box's foot the solid fills the heights between triangles, those that face up
 * counted positive and those that face down negative. So each triangle is cut to the foot of the
 * box, and its height over the floor of the box, at most that of the box, is integrated over its
 * plan. Triangles below the floor or off the foot count nothing, and no cut needs a cap.
 */
final class VolumeInBox {
  private final double[] xyz;

  /** For each triangle that is not upright, where its corners begin in the row of coordinates. */
  private final int[] corners;

  /** For each of them its least and greatest x, least and greatest y, and greatest z. */
  private final double[] reach;

  private VolumeInBox(double[] xyz, int[] corners) {
    this.xyz = xyz;
    this.corners = corners;
    this.reach = new double[corners.length / 3 * 5];
    for (int t = 0, r = 0; t < corners.length; t += 3, r += 5) {
      reach[r] = least(t, 0);
      reach[r + 1] = most(t, 0);
      reach[r + 2] = least(t, 1);
      reach[r + 3] = most(t, 1);
      reach[r + 4] = most(t, 2);
    }
  }

  static VolumeInBox of(Solid solid) {
    int[] starts = new int[solid.corners.length];
    int used = 0;
    for (int t = 0; t < starts.length; t += 3) {
      int a = 3 * solid.corners[t];
      int b = 3 * solid.corners[t + 1];
      int c = 3 * solid.corners[t + 2];
      if (!isUpright(solid.xyz, a, b, c)) {
        starts[used] = a;
        starts[used + 1] = b;
        starts[used + 2] = c;
        used += 3;
      }
    }
    return new VolumeInBox(solid.xyz, Arrays.copyOf(starts, used));
  }

  private static boolean isUpright(double[] xyz, int a, int b, int c) {
    double abx = xyz[b] - xyz[a];
    double aby = xyz[b + 1] - xyz[a + 1];
    double acx = xyz[c] - xyz[a];
    double acy = xyz[c + 1] - xyz[a + 1];
    return abx * acy == acx * aby;
  }

  private double least(int t, int axis) {
    return Math.min(
        xyz[corners[t] + axis], Math.min(xyz[corners[t + 1] + axis], xyz[corners[t + 2] + axis]));
  }

  private double most(int t, int axis) {
    return Math.max(
        xyz[corners[t] + axis], Math.max(xyz[corners[t + 1] + axis], xyz[corners[t + 2] + axis]));
  }

  /** The common volume, m³; every span of the box must have both ends. */
  double within(Box box) {
    double fromX = box.x().from();
    double toX = box.x().to();
    double fromY = box.y().from();
    double toY = box.y().to();
    double floor = box.z().from();
    CutToBox cut = new CutToBox(box);
    double sum = 0;
    for (int t = 0, r = 0; t < corners.length; t += 3, r += 5) {
      boolean overFoot =
          reach[r] < toX && reach[r + 1] > fromX && reach[r + 2] < toY && reach[r + 3] > fromY;
      if (overFoot && reach[r + 4] > floor) {
        sum += cut.volumeUnder(xyz, corners[t], corners[t + 1], corners[t + 2]);
      }
    }
    return sum;
  }

  /** A triangle cut to the foot of a box, as a polygon; lengths are from the box's least corner. */
  private static final class CutToBox {
    /**
     * A cut adds one corner, and where rounding has bent the polygon at most half as many as it
     * has: after five cuts of a triangle 4, 6, 9, 13, 19.
     */
    private static final int MOST = 19;

    private final double fromX;
    private final double fromY;
    private final double floor;
    private final double length;
    private final double breadth;
    private final double height;
    private double[] polygon = new double[3 * MOST];
    private double[] spare = new double[3 * MOST];

    CutToBox(Box box) {
      fromX = box.x().from();
      fromY = box.y().from();
      floor = box.z().from();
      length = box.x().length();
      breadth = box.y().length();
      height = box.z().length();
    }

    /** The volume of the box under a triangle; negative where that faces down. */
    double volumeUnder(double[] xyz, int a, int b, int c) {
      corner(0, xyz, a);
      corner(3, xyz, b);
      corner(6, xyz, c);
      int used = keep(9, 0, 1, 0);
      used = keep(used, 0, -1, length);
      used = keep(used, 1, 1, 0);
      used = keep(used, 1, -1, breadth);
      return volumeOver(used, 0) - volumeOver(used, height);
    }

    private void corner(int at, double[] xyz, int v) {
      polygon[at] = xyz[v] - fromX;
      polygon[at + 1] = xyz[v + 1] - fromY;
      polygon[at + 2] = xyz[v + 2] - floor;
    }

    /** Keeps the part of the polygon where {@code sign × coordinate + end ≥ 0}. */
    private int keep(int used, int axis, double sign, double end) {
      if (isWithin(used, axis, sign, end)) {
        return used;
      }
      int left = cut(used, axis, sign, end);
      double[] before = polygon;
      polygon = spare;
      spare = before;
      return left;
    }

    private boolean isWithin(int used, int axis, double sign, double end) {
      boolean within = true;
      for (int i = axis; i < used; i += 3) {
        within &= sign * polygon[i] + end >= 0;
      }
      return within;
    }

    /** Writes that part into the spare row and returns its length there. */
    private int cut(int used, int axis, double sign, double end) {
      int left = 0;
      for (int i = 0, before = used - 3; i < used; before = i, i += 3) {
        double here = sign * polygon[i + axis] + end;
        double there = sign * polygon[before + axis] + end;
        if (here >= 0 != there >= 0) {
          left = crossing(before, i, there / (there - here), left);
        }
        if (here >= 0) {
          System.arraycopy(polygon, i, spare, left, 3);
          left += 3;
        }
      }
      return left;
    }

    private int crossing(int p, int q, double share, int left) {
      for (int k = 0; k < 3; k++) {
        spare[left + k] = polygon[p + k] + share * (polygon[q + k] - polygon[p + k]);
      }
      return left + 3;
    }

    /** The volume between a level and the part of the polygon over it. */
    private double volumeOver(int used, double level) {
      return isWithin(used, 2, 1, -level)
          ? volumeOver(polygon, used, level)
          : volumeOver(spare, cut(used, 2, 1, -level), level);
    }

    private static double volumeOver(double[] p, int used, double level) {
      double sum = 0;
      for (int i = 3; i + 3 < used; i += 3) {
        double turn = (p[i] - p[0]) * (p[i + 4] - p[1]) - (p[i + 3] - p[0]) * (p[i + 1] - p[1]);
        sum += turn / 2 * ((p[2] + p[i + 2] + p[i + 5]) / 3 - level);
      }
      return sum;
    }
  }
}
