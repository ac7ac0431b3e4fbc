package thwartwise.geometry;

/**
 * Immutable water surface seen from the boat: all points r with {@code up · r = height}.
 *
 * <p>Heel φ is positive starboard down, trim θ positive bow down; {@code up = (−sin θ, sin φ cos θ,
 * cos φ cos θ)}. They are read off {@code up} and never the other way round once a pose is solved.
 *
 * @param up unit vector away from the water, in the boat's axes
 */
public record WaterPlane(Vector3 up, double height) {

  private static final double NUMERIC = 1e-9;

  public static WaterPlane of(double heel, double trim, double height) {
    return new WaterPlane(upward(heel, trim), height);
  }

  public static Vector3 upward(double heel, double trim) {
    return Vector3.of(
        -Math.sin(trim), Math.sin(heel) * Math.cos(trim), Math.cos(heel) * Math.cos(trim));
  }

  /** The same with port for starboard. */
  public WaterPlane mirrored() {
    return new WaterPlane(up.mirrored(), height);
  }

  public WaterPlane withHeight(double newHeight) {
    return new WaterPlane(up, newHeight);
  }

  /** Heel in (−π, π]; a boat standing exactly on an end has none and reads 0. */
  public double heel() {
    return Math.hypot(up.y(), up.z()) < NUMERIC ? 0 : Math.atan2(up.y(), up.z());
  }

  /** Trim in [−π/2, π/2]. */
  public double trim() {
    return Math.asin(Math.max(-1, Math.min(1, -up.x())));
  }

  /** Level and athwart, toward port when upright: (0, cos φ, −sin φ). */
  public Vector3 athwart() {
    double across = Math.sqrt(up.y() * up.y() + up.z() * up.z());
    return across < NUMERIC
        ? Vector3.of(0, 1, 0)
        : Vector3.of(0, up.z() / across, -up.y() / across);
  }

  /** Level and along the boat, toward the bow when upright. */
  public Vector3 ahead() {
    return athwart().cross(up);
  }

  /** The height of a point above the water, perpendicular to it; negative under water. */
  public double above(Vector3 point) {
    return up.dot(point) - height;
  }

  /** The direction reached by turning {@code up} by small angles: heel and trim, rad. */
  public Vector3 turned(double heelBy, double trimBy) {
    double angle = Math.sqrt(heelBy * heelBy + trimBy * trimBy);
    if (!(angle > 0)) {
      return up;
    }
    Vector3 toward = athwart().times(heelBy / angle).minus(ahead().times(trimBy / angle));
    return up.times(Math.cos(angle)).plus(toward.times(Math.sin(angle))).unit();
  }
}
