package thwartwise.geometry;

/**
 * Immersed volume of a solid that stands upright, by the height of the water: a first guess, good
 * to a millimetre or so of height, never an answer. Between its heights the volume is taken to grow
 * evenly, as it does in a block.
 */
final class VolumeTable {
  /**
   * What has fewer triangles or holds less, m³, is taken for a block: small pieces hardly count.
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
