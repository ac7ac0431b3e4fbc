package thwartwise.afloat;

import java.util.Optional;
import thwartwise.geometry.Immersion;
import thwartwise.geometry.WaterPlane;

/**
 * A boat held at a heel and balanced in trim and sinkage.
 *
 * <p>What is left of the way there is eliminated from energy, moment and plane by Newton's equation
 * for the trim, so that a state near the balance is enough: of a trim that is off by e the energy
 * errs by e³, the rest by e².
 *
 * @param state near the balance
 * @param energy potential energy over ρg, m⁴
 * @param heelMoment over ρg, m⁴
 * @param plane the surface of the water
 */
record HeldHeel(HydrostaticState state, double energy, double heelMoment, WaterPlane plane) {

  static HeldHeel of(HydrostaticState state) {
    double turn = trimTurn(state);
    return new HeldHeel(
        state,
        state.energy + state.trimMoment * turn / 2,
        state.heelMoment + state.restoring.product() * turn,
        new WaterPlane(state.plane.turned(0, turn), state.heightAfter(0, turn)));
  }

  /** The turn in trim that is left, rad; none where the boat has no stiffness in trim. */
  static double trimTurn(HydrostaticState state) {
    double stiffness = state.restoring.trim();
    return stiffness > 0 ? -state.trimMoment / stiffness : 0;
  }

  /** The balance at another heel, found from this one. */
  Optional<HeldHeel> at(double heel, Immersion immersion) {
    return TrimBalance.near(state, heel, immersion);
  }
}
