package thwartwise.afloat;

import java.util.OptionalDouble;
import thwartwise.geometry.ImmersedPart;
import thwartwise.geometry.Vector3;
import thwartwise.geometry.WaterPlane;

/**
 * A balance of weight and buoyancy.
 *
 * @param part what is under water
 * @param restoring how it answers to small turns with sinkage free
 * @param neededVolume mass over water density, m³
 */
public record Pose(
    WaterPlane plane, ImmersedPart part, RestoringStiffness restoring, double neededVolume) {

  /** Below this the boat's own z axis lies too flat for a height along it to mean anything. */
  private static final double FLAT = 0.2;

  /** A boat counts as stable when either stiffness exceeds weight times this, m. */
  private static final double LEAST_METACENTRIC_HEIGHT = 0.001;

  /** The same with port for starboard. */
  Pose mirrored() {
    return new Pose(plane.mirrored(), part.mirrored(), restoring.mirrored(), neededVolume);
  }

  public double heel() {
    return plane.heel();
  }

  public double trim() {
    return plane.trim();
  }

  /** The angle between the boat's own upright and the vertical. */
  public double tilt() {
    return Math.acos(Math.max(-1, Math.min(1, plane.up().z())));
  }

  public boolean stable() {
    return restoring.softest() > neededVolume * LEAST_METACENTRIC_HEIGHT;
  }

  /** Slope of the righting arm at this pose, trim free, m. */
  public double metacentricHeight() {
    return restoring.heelTrimFree() / neededVolume;
  }

  public double above(Vector3 point) {
    return plane.above(point);
  }

  /** The height on the z axis through x = y = 0 at which the water cuts it. */
  public OptionalDouble waterAtOrigin() {
    double up = plane.up().z();
    return up < FLAT ? OptionalDouble.empty() : OptionalDouble.of(plane.height() / up);
  }

  public boolean isUpright() {
    return orientation() == PoseOrientation.UPRIGHT;
  }

  /** The orientation of the boat, in one word. */
  public String word() {
    return orientation().word();
  }

  public PoseOrientation orientation() {
    Vector3 up = plane.up();
    double most = Math.max(Math.abs(up.x()), Math.max(Math.abs(up.y()), Math.abs(up.z())));
    if (Math.abs(up.z()) == most) {
      return up.z() > 0 ? PoseOrientation.UPRIGHT : PoseOrientation.UPSIDE_DOWN;
    }
    if (Math.abs(up.y()) == most) {
      return PoseOrientation.ON_ITS_SIDE;
    }
    return up.x() > 0 ? PoseOrientation.BOW_UP : PoseOrientation.STERN_UP;
  }

  /** The orientation of the boat, by its axis that points most nearly up or down. */
  public enum PoseOrientation {
    UPRIGHT("upright"),
    ON_ITS_SIDE("on its side"),
    BOW_UP("bow up"),
    STERN_UP("stern up"),
    UPSIDE_DOWN("upside down");

    private final String word;

    PoseOrientation(String word) {
      this.word = word;
    }

    /** The word in a file and in a sentence. */
    public String word() {
      return word;
    }
  }
}
