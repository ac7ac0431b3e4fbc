package thwartwise.afloat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import thwartwise.hull.FloodPoint;

/**
 * The search for the loose water that a boat stands: a few litres at a time, then an ever larger
 * share, until the first edge is under. Not thread-safe.
 */
final class WaterLimitsSearch {
  private static final double STEP = 0.01;
  private static final double GROWTH = 0.15;
  private static final double TOLERANCE = 0.0001;

  /** Between two fillings so near there is seldom one of those that halving ends at. */
  private static final double FINE = TOLERANCE / 30;

  /** The height of an edge, m, that no nudge of a degree brings under. */
  private static final double HIGH = 0.04;

  /** A metacentric height, m, that no nudge of a degree overcomes. */
  private static final double STIFF = 0.15;

  /** A heel by loose water that is far from the greatest, rad. */
  private static final double HEELED = WaterLimits.LIES_OVER / 2;

  private final double enough;
  private final List<FloodPoint> edges;
  private final boolean roughly;
  private final FillingBoat boat;
  private final Map<Double, Equilibria> known = new HashMap<>();
  private final List<Double> fillings;
  private final Equilibria dry;

  private WaterLimitsSearch(
      double enough, LooseWater water, Bay bay, List<FloodPoint> edges, boolean roughly) {
    this.enough = enough;
    this.edges = edges;
    this.roughly = roughly;
    this.boat = new FillingBoat(water, bay);
    this.fillings = fillings(water.capacity(bay) * (1 - 1e-9));
    this.dry = rest(0);
  }

  /**
   * @param enough a volume at or above this is reported as this or more, m³
   * @param roughly whether a filling is passed over that is found harmless before the boat is
   *     nudged
   */
  static WaterLimits of(
      double enough, LooseWater water, Bay bay, List<FloodPoint> edges, boolean roughly) {
    return new WaterLimitsSearch(enough, water, bay, edges, roughly).run();
  }

  private static List<Double> fillings(double full) {
    List<Double> fillings = new ArrayList<>();
    double last = 0;
    for (double v = 0; last < full; v = Math.min(full, v + Math.max(STEP, GROWTH * v))) {
      fillings.add(v);
      last = v;
    }
    return fillings;
  }

  private WaterLimits run() {
    OptionalDouble noReturn = OptionalDouble.empty();
    for (int i = 0; i < fillings.size() && before(i) < enough; i++) {
      if (noReturn.isEmpty() && isHarmless(fillings.get(i))) {
        continue;
      }
      Equilibria rest = rest(fillings.get(i));
      if (noReturn.isEmpty() && !comesBack(rest)) {
        noReturn = OptionalDouble.of(first(i, this::uprightBy));
      }
      if (isWet(rest)) {
        double under = first(i, this::height);
        // A boat that just sinks there came back until then; one that rolls over did not.
        double latest = rest(under).exist() ? under : under - 2 * TOLERANCE;
        OptionalDouble earlier = noReturn.stream().filter(x -> x <= latest).findFirst();
        return new WaterLimits(OptionalDouble.of(under), at(under), earlier);
      }
    }
    return new WaterLimits(OptionalDouble.empty(), "", noReturn);
  }

  /** Whether a filling is far from either limit, where that is known without a nudge. */
  private boolean isHarmless(double volume) {
    if (!roughly || !(volume > 0)) {
      return false;
    }
    Optional<Equilibria> rest =
        boat.roughly(volume)
            .map(pose -> new Equilibria(List.of(pose), Equilibria.Ending.RESTS))
            .filter(this::isHarmless);
    rest.ifPresent(found -> known.put(volume, found));
    return rest.isPresent();
  }

  private double before(int filling) {
    return filling == 0 ? 0 : fillings.get(filling - 1);
  }

  private Equilibria rest(double volume) {
    return known.computeIfAbsent(volume, boat::with);
  }

  private boolean isHarmless(Equilibria rest) {
    return rest.reached().stream().allMatch(p -> p.metacentricHeight() > STIFF)
        && WaterLimits.heeled(rest, dry) < HEELED
        && height(rest) > HIGH;
  }

  private boolean comesBack(Equilibria rest) {
    return WaterLimits.comesBack(rest, dry);
  }

  private boolean isWet(Equilibria rest) {
    return !(height(rest) > 0);
  }

  /** The height of the lowest edge over all poses, m; not a number where there is none. */
  private double height(Equilibria rest) {
    return rest.reached().stream()
        .mapToDouble(p -> Freeboard.least(edges, p.plane()).height())
        .min()
        .orElse(Double.NaN);
  }

  /** What is left to the heel from which a boat no longer comes back, rad. */
  private double uprightBy(Equilibria rest) {
    return comesBack(rest) ? WaterLimits.LIES_OVER - WaterLimits.heeled(rest, dry) : Double.NaN;
  }

  private String at(double volume) {
    return rest(volume)
        .worst()
        .filter(Pose::isUpright)
        .map(p -> Freeboard.least(edges, p.plane()).at())
        .orElse("");
  }

  /**
   * The volume, up to a filling and from the one before, from which nothing is left of something.
   * Of the volumes that halving ends at, found by the secant.
   */
  private double first(int filling, ToDoubleFunction<Equilibria> left) {
    double low = before(filling);
    double high = fillings.get(filling);
    Bracket bracket =
        new Bracket(low, left.applyAsDouble(rest(low)), high, left.applyAsDouble(rest(high)));
    while (bracket.width() > FINE && bracket.low() < enough) {
      double at = bracket.next(FINE);
      bracket.cut(at, left.applyAsDouble(rest(at)));
    }
    while (high - low > TOLERANCE && low < enough) {
      double middle = (low + high) / 2;
      if (isReached(middle, bracket, left)) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return high;
  }

  private boolean isReached(double volume, Bracket bracket, ToDoubleFunction<Equilibria> left) {
    return volume >= bracket.high()
        || volume > bracket.low() && !(left.applyAsDouble(rest(volume)) > 0);
  }
}
