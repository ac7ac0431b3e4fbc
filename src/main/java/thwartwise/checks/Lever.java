package thwartwise.checks;

import thwartwise.afloat.Pose;
import thwartwise.geometry.Profile;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Vector3;
import thwartwise.loadcase.LoadedBoat;

/** How far a level force attacks above what of the hull under water answers it. */
final class Lever {
  private Lever() {}

  /** At rest before the force came, m; no pose has no lever. */
  static double of(LoadedBoat boat, Vector3 at, Vector3 toward) {
    return boat.atRest().worst().map(p -> above(boat, at, p, toward)).orElse(0.0);
  }

  private static double above(LoadedBoat boat, Vector3 at, Pose pose, Vector3 toward) {
    Solid under = boat.model().form().outside().under(pose.plane());
    return pose.above(at) - pose.above(Profile.of(under, toward).centre());
  }
}
