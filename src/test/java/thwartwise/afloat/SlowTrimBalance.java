package thwartwise.afloat;

import java.util.Optional;
import thwartwise.geometry.SlowImmersion;
import thwartwise.geometry.WaterPlane;

/** Holds a heel and lets trim and sinkage settle: Newton on the trim moment, never uphill. */
final class SlowTrimBalance {
  private static final double LONGEST_TURN = Math.toRadians(2);
  private static final double TOLERANCE = 1e-11;
  private static final double SHORTEST_TURN = 1e-13;

  // Where an edge just leaves the water the moment has a corner and the turns can stop a little
  // short of balance; anything more is none.
  private static final double AT_A_CORNER = 1e-7;
  private static final int MOST_TURNS = 200;

  private SlowTrimBalance() {}

  static Optional<SlowSettling> at(
      FloatingBody floating, double heel, double trim, double height, SlowImmersion immersion) {
    double needed = floating.neededVolume();
    double longest = LONGEST_TURN;
    Optional<SlowSettling> start =
        SlowSettling.at(floating, WaterPlane.upward(heel, trim), height, immersion);
    if (start.isEmpty()) {
      return start;
    }
    SlowSettling here = start.get();
    double angle = trim;
    for (int turn = 0; turn < MOST_TURNS; turn++) {
      double moment = Math.abs(here.trimMoment);
      if (moment <= TOLERANCE * needed) {
        return Optional.of(here);
      }
      if (longest < SHORTEST_TURN) {
        return moment <= AT_A_CORNER * needed ? Optional.of(here) : Optional.empty();
      }
      double step = step(here, longest);
      Optional<SlowSettling> next =
          SlowSettling.at(
              floating,
              WaterPlane.upward(heel, angle + step),
              here.heightAfter(0, step),
              immersion);
      boolean better =
          next.isPresent()
              && (next.get().energy < here.energy
                  || Math.abs(next.get().trimMoment) < Math.abs(here.trimMoment) / 2);
      if (better) {
        here = next.get();
        angle += step;
        longest = Math.min(LONGEST_TURN, 2 * longest);
      } else {
        longest = Math.abs(step) / 4;
      }
    }
    return Optional.empty();
  }

  private static double step(SlowSettling here, double longest) {
    double stiffness = here.restoring.trim();
    double newton = stiffness > 0 ? -here.trimMoment / stiffness : Double.POSITIVE_INFINITY;
    double downhill = -Math.signum(here.trimMoment) * longest;
    return Math.abs(newton) <= longest ? newton : downhill;
  }
}
