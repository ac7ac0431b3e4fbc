package thwartwise.afloat;

import java.util.Optional;
import java.util.OptionalDouble;
import thwartwise.geometry.Vector3;

/**
 * A boat at rest with one amount of loose water after another in one bay. A search begins at the
 * balance with the amount before where that was the only one, stable and upright, and otherwise
 * upright. Not thread-safe.
 */
final class FillingBoat {
  private final LooseWater water;
  private final Bay bay;
  private Optional<HydrostaticState> before = Optional.empty();

  FillingBoat(LooseWater water, Bay bay) {
    this.water = water;
    this.bay = bay;
  }

  /** Every pose with a volume of water, m³. */
  Equilibria with(double volume) {
    Equilibrium.Found found = Equilibrium.found(water.in(bay, volume), before);
    Equilibria rest = found.rest();
    before = found.first().filter(first -> rest.reached().size() == 1 && rest.allUpright());
    return rest;
  }

  /**
   * The balance with a volume of water, m³, roughly and without nudges; none where it is not
   * upright and stable.
   */
  Optional<Pose> roughly(double volume) {
    Optional<Equilibrium.Rough> rough =
        Equilibrium.rough(water.in(bay, volume), before)
            .filter(found -> found.pose().isUpright() && found.pose().stable());
    before = rough.map(Equilibrium.Rough::here).or(() -> before);
    return rough.map(Equilibrium.Rough::pose);
  }

  /**
   * The height of the water inside above a point, m, with the volume asked about last and at a pose
   * then; empty when there is none.
   */
  OptionalDouble depthOver(Vector3 point, double volume, Pose pose) {
    return before.isPresent()
        ? before.get().poolOver(point)
        : water.depthOver(point, pose.plane().up(), bay, volume);
  }
}
