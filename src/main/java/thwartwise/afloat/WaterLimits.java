package thwartwise.afloat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoublePredicate;
import thwartwise.boat.FloodPoint;

/**
 * How much loose water a boat stands, m³.
 *
 * @param edgeUnder from how much on the first edge is under at a pose it comes to, or there is no
 *     such pose; empty when the hold is full before
 * @param edgeAt which edge; blank when there is no pose
 * @param noReturn from how much on it does not come back to one pose when nudged: it lolls, or lies
 *     over and stays; empty when an edge is under before
 */
public record WaterLimits(OptionalDouble edgeUnder, String edgeAt, OptionalDouble noReturn) {
  private static final double STEP = 0.01;
  private static final double GROWTH = 0.15;
  private static final double TOLERANCE = 0.0001;

  /** Looks for both in one bay, adding a few litres at a time, then an ever larger share. */
  public static WaterLimits of(LooseWater water, Bay bay, List<FloodPoint> edges) {
    return new Search(water, bay, edges).run();
  }

  /** The lesser of both; empty when there is neither. */
  public OptionalDouble trouble() {
    double least =
        Math.min(
            edgeUnder.orElse(Double.POSITIVE_INFINITY), noReturn.orElse(Double.POSITIVE_INFINITY));
    return least < Double.POSITIVE_INFINITY ? OptionalDouble.of(least) : OptionalDouble.empty();
  }

  private record Search(LooseWater water, Bay bay, List<FloodPoint> edges) {

    WaterLimits run() {
      double capacity = water.capacity(bay) * (1 - 1e-9);
      OptionalDouble noReturn = OptionalDouble.empty();
      double before = 0;
      for (double v : fillings(capacity)) {
        Equilibria rest = rest(v);
        if (noReturn.isEmpty() && !returns(rest)) {
          noReturn = OptionalDouble.of(first(before, v, x -> !returns(rest(x))));
        }
        if (wet(rest)) {
          double under = first(before, v, x -> wet(rest(x)));
          OptionalDouble earlier = noReturn.stream().filter(x -> x < under).findFirst();
          return new WaterLimits(OptionalDouble.of(under), at(under), earlier);
        }
        before = v;
      }
      return new WaterLimits(OptionalDouble.empty(), "", noReturn);
    }

    /** The last of them full: an edge may go under just before. */
    private static List<Double> fillings(double capacity) {
      List<Double> fillings = new ArrayList<>();
      for (double v = 0; v < capacity; v += Math.max(STEP, GROWTH * v)) {
        fillings.add(v);
      }
      fillings.add(capacity);
      return fillings;
    }

    private Equilibria rest(double volume) {
      return Equilibrium.from(water.in(bay, volume));
    }

    private boolean wet(Equilibria rest) {
      return !rest.exist()
          || rest.reached().stream().anyMatch(p -> Freeboard.least(edges, p.plane()).height() <= 0);
    }

    private static boolean returns(Equilibria rest) {
      return rest.allStable() && rest.reached().size() == 1;
    }

    private String at(double volume) {
      return rest(volume).worst().map(p -> Freeboard.least(edges, p.plane()).at()).orElse("");
    }

    /** Where between two fillings something begins to hold. */
    private static double first(double before, double from, DoublePredicate holds) {
      double low = before;
      double high = from;
      while (high - low > TOLERANCE) {
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
