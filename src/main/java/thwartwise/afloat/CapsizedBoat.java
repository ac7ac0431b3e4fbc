package thwartwise.afloat;

import java.util.Optional;
import java.util.OptionalDouble;
import thwartwise.geometry.Immersion;
import thwartwise.geometry.WaterPlane;

/**
 * A swamped boat upside down, and the effort to turn it back about its length, trim and sinkage
 * free, by the easier side.
 *
 * @param effort greatest moment on the way, N·m; 0 when it rolls back by itself; empty when it
 *     sinks
 * @param staysUp whether it stays upright once it is up
 * @param assessed false when the way back could not be followed
 */
public record CapsizedBoat(OptionalDouble effort, boolean staysUp, boolean assessed) {
  private static final int STEP = 2;

  public static CapsizedBoat of(FloatingBody swamped) {
    if (!(swamped.liftVolume() > swamped.neededVolume())) {
      return new CapsizedBoat(OptionalDouble.empty(), false, true);
    }
    OptionalDouble starboard = effort(swamped, 1);
    OptionalDouble port = effort(swamped, -1);
    if (starboard.isEmpty() && port.isEmpty()) {
      return new CapsizedBoat(OptionalDouble.empty(), false, false);
    }
    double easier =
        Math.min(starboard.orElse(Double.POSITIVE_INFINITY), port.orElse(Double.POSITIVE_INFINITY));
    return new CapsizedBoat(
        OptionalDouble.of(easier), Equilibrium.from(swamped).allUpright(), true);
  }

  /** The effort from 180 degrees of heel down to zero by one side. */
  private static OptionalDouble effort(FloatingBody swamped, double side) {
    Immersion immersion = new Immersion();
    double height = swamped.extent(WaterPlane.upward(Math.PI, 0)).middle();
    Optional<HeldHeel> here = TrimBalance.at(swamped, side * Math.PI, 0, height, immersion);
    double most = 0;
    for (int degree = 180; here.isPresent() && degree > 0; degree -= STEP) {
      most = Math.max(most, -side * here.get().heelMoment());
      here = here.get().at(side * Math.toRadians(degree - STEP), immersion);
    }
    if (here.isEmpty()) {
      return OptionalDouble.empty();
    }
    most = Math.max(most, -side * here.get().heelMoment());
    return OptionalDouble.of(most * swamped.density() * Gravity.STANDARD);
  }
}
