package thwartwise.afloat;

import thwartwise.geometry.Vector3;
import thwartwise.geometry.WaterPlane;

/**
 * A horizontal force on the boat with its equal and opposite reaction under water. The boat may
 * swing but is free of both otherwise, so only the two moments count that heel and trim it.
 *
 * <p>Its size, its direction against the boat's heading and both points in the boat stay fixed
 * during a solve. So it has a potential energy, minus force times the distance the one point has
 * moved past the other: −ahead (u·r) − toPort (t·r), u and t level ahead and athwart, and the
 * search for balance goes downhill with it as with everything else. The derivatives follow {@link
 * WaterPlane#turned}: heel φ and trim θ change by h / cos θ and k to first order.
 *
 * @param ahead N toward the bow
 * @param toPort N
 * @param arm from the reaction to where the force attacks, m, in the boat's axes; for a force ahead
 *     without its part athwart and the other way round, because a boat that may swing lines them up
 */
public record Couple(double ahead, double toPort, Vector3 arm) {

  private static final double NUMERIC = 1e-9;

  /** A force toward the bow (negative: astern). */
  public static Couple ahead(double newtons, Vector3 at, Vector3 reaction) {
    Vector3 arm = at.minus(reaction);
    return new Couple(newtons, 0, Vector3.of(arm.x(), 0, arm.z()));
  }

  /** A force to port (negative: to starboard). */
  public static Couple toPort(double newtons, Vector3 at, Vector3 reaction) {
    Vector3 arm = at.minus(reaction);
    return new Couple(0, newtons, Vector3.of(0, arm.y(), arm.z()));
  }

  /** The height of the force above its reaction, m. */
  public double lever(WaterPlane plane) {
    return plane.up().dot(arm);
  }

  /** Potential energy, J, against the pose in which the arm lies square to the force. */
  double energy(WaterPlane plane) {
    return -ahead * plane.ahead().dot(arm) - toPort * plane.athwart().dot(arm);
  }

  /** Slope of the energy in heel, N·m. */
  double heelMoment(WaterPlane plane) {
    double across = toPort * inBeam(plane).dot(arm);
    double along = -ahead * sinTrim(plane) * plane.athwart().dot(arm);
    return (across + along) / cosTrim(plane);
  }

  /** Slope of the energy in trim, N·m. */
  double trimMoment(WaterPlane plane) {
    return -ahead * plane.up().dot(arm);
  }

  /** Curvature of the energy, N·m. */
  RestoringStiffness curvature(WaterPlane plane) {
    double c = cosTrim(plane);
    double s = sinTrim(plane);
    double across = plane.athwart().dot(arm);
    double slopeHeel = toPort * inBeam(plane).dot(arm) - ahead * s * across;
    double heelHeel = toPort * across + ahead * s * inBeam(plane).dot(arm);
    double heelTrim = -ahead * c * across;
    return new RestoringStiffness(
        heelHeel / (c * c) - trimMoment(plane) * s / c,
        ahead * plane.ahead().dot(arm),
        slopeHeel * s / (c * c) + heelTrim / c);
  }

  /** Perpendicular to athwart in the boat's own midship plane: (0, sin φ, cos φ). */
  private static Vector3 inBeam(WaterPlane plane) {
    Vector3 athwart = plane.athwart();
    return Vector3.of(0, -athwart.z(), athwart.y());
  }

  private static double sinTrim(WaterPlane plane) {
    return -plane.up().x();
  }

  // A boat standing on end has no heading; the bound keeps the sums finite on the way past it.
  private static double cosTrim(WaterPlane plane) {
    double across = plane.up().y() * plane.up().y() + plane.up().z() * plane.up().z();
    return Math.max(NUMERIC, Math.sqrt(across));
  }
}
