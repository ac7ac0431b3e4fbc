package thwartwise.afloat;

import thwartwise.geometry.Immersion;

/** How much water stands in a boat that is open to the sea. */
public final class SwampedWater {
  private SwampedWater() {}

  /** What can be filled, up to the sea's level, m³. */
  public static double inside(LooseWater water, Bay bay, Pose pose) {
    return Lift.immersed(water.hold(bay), pose.plane(), new Immersion()).volume();
  }
}
