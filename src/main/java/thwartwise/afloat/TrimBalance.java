package thwartwise.afloat;

import java.util.Optional;
import thwartwise.geometry.Immersion;
import thwartwise.geometry.WaterPlane;

/** The balance in trim and sinkage at a held heel: Newton on the trim moment, never uphill. */
final class TrimBalance {
  private static final double LONGEST_TURN = Math.toRadians(2);
  private static final double TOLERANCE = 1e-11;
  private static final double SHORTEST_TURN = 1e-13;

  /**
   * A last turn, rad, and a last rise of the water, m, so short that they need not be computed:
   * what {@link HeldHeel} leaves out is their square times some tens.
   */
  private static final double LAST = 1e-6;

  // Where an edge just leaves the water the moment has a corner and the turns can stop a little
  // short of balance; anything more is none.
  private static final double AT_A_CORNER = 1e-7;
  private static final int MOST_TURNS = 200;

  private TrimBalance() {}

  static Optional<HeldHeel> at(
      FloatingBody floating, double heel, double trim, double height, Immersion immersion) {
    return HydrostaticState.nearly(floating, WaterPlane.upward(heel, trim), height, immersion)
        .flatMap(start -> from(start, heel, trim, immersion))
        .map(HeldHeel::of);
  }

  /**
   * The balance at another heel, started from where trim and water would be after so small a turn.
   */
  static Optional<HeldHeel> near(HydrostaticState before, double heel, Immersion immersion) {
    double trim = before.plane.trim();
    double by = Math.IEEEremainder(heel - before.plane.heel(), 2 * Math.PI) * Math.cos(trim);
    double stiffness = before.restoring.trim();
    double follows = stiffness > 0 ? -before.restoring.product() * by / stiffness : 0;
    double trimBy = Math.abs(follows) <= Math.abs(by) ? follows : 0;
    return before
        .turned(WaterPlane.upward(heel, trim + trimBy), by, trimBy, immersion)
        .flatMap(start -> from(start, heel, trim + trimBy, immersion))
        .map(HeldHeel::of);
  }

  private static Optional<HydrostaticState> from(
      HydrostaticState start, double heel, double trim, Immersion immersion) {
    double needed = start.neededVolume();
    HydrostaticState here = start;
    double angle = trim;
    double longest = LONGEST_TURN;
    for (int turn = 0; turn < MOST_TURNS; turn++) {
      double moment = Math.abs(here.trimMoment);
      boolean arrived = moment <= TOLERANCE * needed;
      if (arrived && here.isSettled() || isNearlyThere(here)) {
        return Optional.of(here);
      }
      if (longest < SHORTEST_TURN) {
        return moment <= AT_A_CORNER * needed ? Optional.of(here) : Optional.empty();
      }
      double step = step(here, longest);
      Optional<HydrostaticState> next =
          arrived
              ? Optional.empty()
              : here.turned(WaterPlane.upward(heel, angle + step), 0, step, immersion);
      if (next.isPresent() && better(here, next.get())) {
        here = next.get();
        angle += step;
        longest = Math.min(LONGEST_TURN, 2 * longest);
      } else if (!here.isSettled()) {
        here = here.settled(immersion).orElseThrow();
      } else {
        longest = Math.abs(step) / 4;
      }
    }
    return Optional.empty();
  }

  private static boolean isNearlyThere(HydrostaticState here) {
    return here.isSettled(LAST)
        && here.restoring.trim() > 0
        && Math.abs(HeldHeel.trimTurn(here)) <= LAST;
  }

  private static boolean better(HydrostaticState here, HydrostaticState next) {
    return next.energy < here.energy || Math.abs(next.trimMoment) < Math.abs(here.trimMoment) / 2;
  }

  private static double step(HydrostaticState here, double longest) {
    double stiffness = here.restoring.trim();
    double newton = stiffness > 0 ? -here.trimMoment / stiffness : Double.POSITIVE_INFINITY;
    double downhill = -Math.signum(here.trimMoment) * longest;
    return Math.abs(newton) <= longest ? newton : downhill;
  }
}
