package thwartwise.afloat;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoublePredicate;
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
  private static final double STEP = 0.01;
  private static final double GROWTH = 0.15;
  private static final double TOLERANCE = 0.0001;

  /** A boat that water lays over by more than this no longer comes back upright (judgement). */
  private static final double LIES_OVER = Math.toRadians(3);

  /** The heel beyond which water counts as laying a boat over, for the list of assumptions. */
  public static MethodAssumption assumption() {
    return new MethodAssumption.NoReturn(LIES_OVER);
  }

  /** The limits of one bay, found by adding a few litres at a time, then an ever larger share. */
  public static WaterLimits of(LooseWater water, Bay bay, List<FloodPoint> edges) {
    return upTo(Double.POSITIVE_INFINITY, water, bay, edges);
  }

  /**
   * The same for the question whether a volume is stood: less is given exactly, as much or more
   * only as that.
   *
   * @param enough m³
   */
  static WaterLimits upTo(double enough, LooseWater water, Bay bay, List<FloodPoint> edges) {
    return new Search(enough, water, bay, edges).run();
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
    double heel = dry.worst().map(Pose::heel).orElse(0.0);
    return rest.allStable()
        && rest.reached().stream()
            .allMatch(p -> p.isUpright() && Math.abs(p.heel() - heel) <= LIES_OVER);
  }

  private record Search(double enough, LooseWater water, Bay bay, List<FloodPoint> edges) {

    WaterLimits run() {
      double full = water.capacity(bay) * (1 - 1e-9);
      Equilibria dry = rest(0);
      OptionalDouble noReturn = OptionalDouble.empty();
      double before = 0;
      for (double v = 0;
          before < Math.min(full, enough);
          v = Math.min(full, v + Math.max(STEP, GROWTH * v))) {
        Equilibria rest = rest(v);
        if (noReturn.isEmpty() && !comesBack(rest, dry)) {
          noReturn = OptionalDouble.of(first(before, v, x -> !comesBack(rest(x), dry)));
        }
        if (wet(rest)) {
          double under = first(before, v, x -> wet(rest(x)));
          // A boat that just sinks there came back until then; one that rolls over did not.
          double latest = rest.exist() ? under : under - 2 * TOLERANCE;
          OptionalDouble earlier = noReturn.stream().filter(x -> x <= latest).findFirst();
          return new WaterLimits(OptionalDouble.of(under), at(under), earlier);
        }
        if (v > 0) {
          before = v;
        }
      }
      return new WaterLimits(OptionalDouble.empty(), "", noReturn);
    }

    private Equilibria rest(double volume) {
      return Equilibrium.from(water.in(bay, volume));
    }

    private boolean wet(Equilibria rest) {
      return !rest.exist()
          || rest.reached().stream().anyMatch(p -> Freeboard.least(edges, p.plane()).height() <= 0);
    }

    private String at(double volume) {
      return rest(volume)
          .worst()
          .filter(Pose::isUpright)
          .map(p -> Freeboard.least(edges, p.plane()).at())
          .orElse("");
    }

    /** The filling, between two, from which something holds. */
    private double first(double before, double from, DoublePredicate holds) {
      double low = before;
      double high = from;
      while (high - low > TOLERANCE && low < enough) {
        double middle = (low + high) / 2;
        if (holds.test(middle)) {
          high = middle;
        } else {
          low = middle;
        }
      }
      return high;
    }
  }
}
