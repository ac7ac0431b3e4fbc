package thwartwise.rules;

import thwartwise.boat.BoatModel;
import thwartwise.geometry.ImmersedPart;
import thwartwise.geometry.WaterPlane;
import thwartwise.hull.FloodPoint;

/**
 * The most water the boat displaces level, in calm fresh water, before any comes aboard: the
 * "maximum displacement" of 33 CFR 183.35 (READ).
 */
final class LevelImmersion {
  private static final double FRESH = 1000;

  private LevelImmersion() {}

  /** kg; nothing when the lowest edge is under the bottom. */
  static double displacement(BoatModel model) {
    double lowest =
        model.edges().stream().map(FloodPoint::at).mapToDouble(p -> p.z()).min().orElseThrow();
    return FRESH * ImmersedPart.of(model.form().outside(), WaterPlane.of(0, 0, lowest)).volume();
  }
}
