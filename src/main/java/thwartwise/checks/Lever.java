package thwartwise.checks;

import thwartwise.afloat.Pose;
import thwartwise.geometry.Profile;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Vector3;
import thwartwise.loadcase.LoadedBoat;

/** The height of a level force above the centre of the water's reaction on the hull. */
final class Lever {
  private Lever() {}

  /** At equilibrium before the force acts, m; zero without a pose. */
  static double of(LoadedBoat boat, Vector3 at, Vector3 toward) {
    return boat.atRest().worst().map(p -> above(boat, at, p, toward)).orElse(0.0);
  }

  private static double above(LoadedBoat boat, Vector3 at, Pose pose, Vector3 toward) {
    Solid under = boat.model().form().outside().under(pose.plane());
    return pose.above(at) - pose.above(Profile.of(under, toward).centre());
  }
}
