package thwartwise.geometry;

import java.util.List;

/**
 * Immutable closed surface of triangles seen counter-clockwise from outside.
 *
 * <p>"Closed" is meant as for sums: every edge is walked as often one way as the other. A cut is
 * capped with a fan about one point of the cutting plane; parts of the fan that fall outside a
 * hollow cap are walked both ways and cancel in every integral. So caps need no outline tracing and
 * may have any shape, with holes or in several pieces.
 */
public final class Solid {
  public static final Solid EMPTY = new Solid(new double[0], new int[0]);

  final double[] xyz;
  final int[] corners;

  // Made when they are first needed, because most solids only exist between one cut and the next.
  // Two threads that both do make the same ones.
  private Bounds bounds;
  private Box block;
  private Facets facets;
  private volatile VolumeTable table;
  private volatile VolumeInBox inBox;

  Solid(double[] xyz, int[] corners) {
    this.xyz = xyz;
    this.corners = corners;
  }

  Bounds bounds() {
    Bounds known = bounds;
    if (known == null) {
      known = Bounds.of(xyz);
      bounds = known;
    }
    return known;
  }

  Facets facets() {
    Facets known = facets;
    if (known == null) {
      known = Facets.of(xyz, corners);
      facets = known;
    }
    return known;
  }

  /** A solid from its vertices and, for each triangle, three vertex numbers. */
  public static Solid of(List<Vector3> vertices, List<int[]> triangles) {
    SolidBuilder builder = new SolidBuilder();
    int[] number = vertices.stream().mapToInt(builder::vertex).toArray();
    for (int[] t : triangles) {
      builder.triangle(number[t[0]], number[t[1]], number[t[2]]);
    }
    return builder.build();
  }

  /** The block itself; every span must have both ends. */
  public static Solid block(Box box) {
    SolidBuilder builder = new SolidBuilder();
    int[] v = new int[8];
    for (int i = 0; i < 8; i++) {
      v[i] =
          builder.vertex(
              Vector3.of(
                  (i & 1) == 0 ? box.x().from() : box.x().to(),
                  (i & 2) == 0 ? box.y().from() : box.y().to(),
                  (i & 4) == 0 ? box.z().from() : box.z().to()));
    }
    int[][] faces = {
      {0, 2, 3, 1}, {4, 5, 7, 6}, {0, 1, 5, 4}, {2, 6, 7, 3}, {0, 4, 6, 2}, {1, 3, 7, 5}
    };
    for (int[] f : faces) {
      builder.triangle(v[f[0]], v[f[1]], v[f[2]]);
      builder.triangle(v[f[0]], v[f[2]], v[f[3]]);
    }
    return builder.build();
  }

  public double volume() {
    return facets().volume;
  }

  /**
   * The approximate volume under a height while the solid stands upright, for a first guess, m³.
   */
  public double roughVolumeUnder(double height) {
    VolumeTable known = table;
    if (known == null) {
      known = VolumeTable.of(this);
      table = known;
    }
    return known.under(height);
  }

  /** First moment of volume about the origin, m⁴. */
  public Vector3 moment() {
    return facets().moment;
  }

  /** Centre of volume; a solid without volume has none. */
  public Vector3 centroid() {
    if (!(Math.abs(volume()) > 0)) {
      throw new IllegalStateException("Centre of a solid without volume");
    }
    return moment().times(1 / volume());
  }

  public int triangleCount() {
    return corners.length / 3;
  }

  /** The corners of triangle {@code i}, counter-clockwise from outside. */
  public List<Vector3> triangle(int i) {
    return List.of(vertex(corners[3 * i]), vertex(corners[3 * i + 1]), vertex(corners[3 * i + 2]));
  }

  /** The part of this solid inside the box. */
  public Solid within(Box box) {
    if (corners.length == 0 || !boundingBox().overlaps(box)) {
      return EMPTY;
    }
    return SolidCut.keepWithin(this, box);
  }

  /** The volume of the part inside a box whose spans have both ends, m³; no solid is cut. */
  public double volumeWithin(Box box) {
    if (corners.length == 0 || !boundingBox().overlaps(box)) {
      return 0;
    }
    VolumeInBox known = inBox;
    if (known == null) {
      known = VolumeInBox.of(this);
      inBox = known;
    }
    return known.within(box);
  }

  /** The part under a water plane, as a solid of its own. */
  public Solid under(WaterPlane plane) {
    return SolidCut.keepUnder(this, plane.up(), plane.height());
  }

  /** The least box along the axes that holds it; an empty solid has one of no size. */
  public Box boundingBox() {
    Box known = block;
    if (known == null) {
      known = bounds().block();
      block = known;
    }
    return known;
  }

  /** The lowest and highest {@code direction · r} of any vertex's bounding block. */
  public Span extent(Vector3 direction) {
    return bounds().extent(direction);
  }

  Vector3 vertex(int i) {
    return Vector3.of(xyz[3 * i], xyz[3 * i + 1], xyz[3 * i + 2]);
  }

  /**
   * Immersed volume of a solid that stands upright, by the height of the water: a first guess, good
   * to a millimetre or so of height, never an answer. Between its heights the volume is taken to
   * grow evenly, as it does in a block.
   */
  static final class VolumeTable {
    /**
     * A solid with fewer triangles or less volume, m³, counts as a block, because small pieces
     * hardly matter.
     */
    private static final int LEAST_TRIANGLES = 100;

    private static final double LEAST_VOLUME = 0.05;

    private static final int STEPS = 24;

    private final double bottom;
    private final double step;
    private final double[] volumes;

    private VolumeTable(double bottom, double step, double[] volumes) {
      this.bottom = bottom;
      this.step = step;
      this.volumes = volumes;
    }

    static VolumeTable of(Solid solid) {
      Span z = solid.bounds().extent(Vector3.of(0, 0, 1));
      boolean small = solid.triangleCount() < LEAST_TRIANGLES || solid.volume() < LEAST_VOLUME;
      int steps = small ? 1 : STEPS;
      double[] volumes = new double[steps + 1];
      Immersion immersion = new Immersion();
      for (int i = 1; i < steps; i++) {
        WaterPlane plane = WaterPlane.of(0, 0, z.from() + i * z.length() / steps);
        volumes[i] = immersion.at(plane).add(solid, 1).part().volume();
      }
      volumes[steps] = solid.volume();
      return new VolumeTable(z.from(), z.length() / steps, volumes);
    }

    double under(double height) {
      double at = (height - bottom) / step;
      int steps = volumes.length - 1;
      if (!(at > 0)) {
        return 0;
      }
      if (at >= steps) {
        return volumes[steps];
      }
      int below = (int) at;
      return volumes[below] + (at - below) * (volumes[below + 1] - volumes[below]);
    }
  }
}
