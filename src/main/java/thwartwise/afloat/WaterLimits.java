package thwartwise.afloat;

import java.util.List;
import java.util.OptionalDouble;
import thwartwise.boat.MethodAssumption;
import thwartwise.hull.FloodPoint;

/**
 * The loose water that a boat stands, m³.
 *
 * @param edgeUnder volume from which the first edge is under at a pose it reaches, or there is no
 *     such pose; empty when the hold is full before
 * @param edgeAt which edge; blank when the boat has no pose then, or is not upright
 * @param noReturn volume from which it does not return to its dry pose: it rolls over, or heels by
 *     more than a few degrees; empty when an edge is under before
 */
public record WaterLimits(OptionalDouble edgeUnder, String edgeAt, OptionalDouble noReturn) {
  /** A boat that water lays over by more than this no longer comes back upright (judgement). */
  static final double LIES_OVER = Math.toRadians(3);

  /** The heel beyond which water counts as laying a boat over, for the list of assumptions. */
  public static MethodAssumption assumption() {
    return new MethodAssumption.NoReturn(LIES_OVER);
  }

  /** The limits of one bay, found by adding a few litres at a time, then an ever larger share. */
  public static WaterLimits of(LooseWater water, Bay bay, List<FloodPoint> edges) {
    return WaterLimitsSearch.of(Double.POSITIVE_INFINITY, water, bay, edges, false);
  }

  /** The lesser of both; empty when there is neither. */
  public OptionalDouble trouble() {
    double least =
        Math.min(
            edgeUnder.orElse(Double.POSITIVE_INFINITY), noReturn.orElse(Double.POSITIVE_INFINITY));
    return least < Double.POSITIVE_INFINITY ? OptionalDouble.of(least) : OptionalDouble.empty();
  }

  /** Whether a boat with water in it lies as when dry, within a few degrees of heel. */
  public static boolean comesBack(Equilibria rest, Equilibria dry) {
    return rest.allStable()
        && rest.reached().stream().allMatch(Pose::isUpright)
        && heeled(rest, dry) <= LIES_OVER;
  }

  /** The greatest difference of its heel from that of the dry boat, rad. */
  static double heeled(Equilibria rest, Equilibria dry) {
    double heel = dry.worst().map(Pose::heel).orElse(0.0);
    return rest.reached().stream().mapToDouble(p -> Math.abs(p.heel() - heel)).max().orElse(0);
  }
}
