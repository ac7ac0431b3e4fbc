package thwartwise.afloat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import thwartwise.hull.FloodPoint;

/**
 * The search for the loose water that a boat stands: a few litres at a time, then an ever larger
 * share, until the first edge is under. Not thread-safe.
 */
public final class WaterLimitsSearch {
  private static final double STEP = 0.01;
  private static final double GROWTH = 0.15;
  private static final double TOLERANCE = 0.0001;

  /** Between two fillings so near there is seldom one of those that halving ends at. */
  private static final double FINE = TOLERANCE / 30;

  /** A measurement that is off by its spread moves an edge by less (judgement), m. */
  private static final double HIGH = 0.04;

  /** It changes a metacentric height by less (judgement), m. */
  private static final double STIFF = 0.15;

  /** It changes the heel that loose water causes by less (judgement), rad. */
  private static final double HEELED = WaterLimits.LIES_OVER / 3;

  private final double enough;
  private final List<FloodPoint> edges;
  private final Optional<Found> near;
  private final FillingBoat boat;
  private final Map<Double, Equilibria> known = new HashMap<>();
  private final List<Double> fillings;
  private final Equilibria dry;
  private final List<Boolean> harmless = new ArrayList<>();

  /**
   * The answer.
   *
   * @param harmless for each filling tried on the way, from none, whether it was far from either
   *     limit
   */
  public record Found(WaterLimits limits, List<Boolean> harmless) {
    public Found {
      harmless = List.copyOf(harmless);
    }
  }

  private WaterLimitsSearch(
      double enough, LooseWater water, Bay bay, List<FloodPoint> edges, Optional<Found> near) {
    this.enough = enough;
    this.edges = edges;
    this.near = near;
    this.boat = new FillingBoat(water, bay);
    this.fillings = fillings(water.capacity(bay) * (1 - 1e-9));
    this.dry = rest(0);
  }

  /**
   * @param enough a volume at or above this is reported as this or more, m³
   * @param near the answer for the same boat with slightly different measurements: fillings that
   *     were harmless then are not tried
   */
  static Found of(
      double enough, LooseWater water, Bay bay, List<FloodPoint> edges, Optional<Found> near) {
    WaterLimitsSearch search = new WaterLimitsSearch(enough, water, bay, edges, near);
    WaterLimits limits = search.run();
    return new Found(limits, search.harmless);
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
      if (noReturn.isEmpty() && isSkipped(i)) {
        harmless.add(true);
        continue;
      }
      Equilibria rest = rest(fillings.get(i));
      harmless.add(isHarmless(rest));
      if (noReturn.isEmpty() && !comesBack(rest)) {
        noReturn = OptionalDouble.of(first(back(i, this::comesBack), this::uprightBy));
      }
      if (isWet(rest)) {
        double under = first(back(i, r -> !isWet(r)), this::height);
        // A boat that just sinks there came back until then; one that rolls over did not.
        double latest = rest(under).exist() ? under : under - 2 * TOLERANCE;
        OptionalDouble earlier = noReturn.stream().filter(x -> x <= latest).findFirst();
        return new WaterLimits(OptionalDouble.of(under), at(under), earlier);
      }
    }
    return new WaterLimits(OptionalDouble.empty(), "", noReturn);
  }

  /** Whether it was harmless for much the same boat. */
  private boolean isSkipped(int filling) {
    List<Boolean> before = near.map(Found::harmless).orElse(List.of());
    return filling > 0 && filling < before.size() && before.get(filling);
  }

  /**
   * The first filling at which something no longer holds: this one, or one before that was skipped.
   */
  private int back(int filling, Predicate<Equilibria> holds) {
    int first = filling;
    while (first > 0 && !holds.test(rest(fillings.get(first - 1)))) {
      first--;
    }
    return first;
  }

  private double before(int filling) {
    return filling == 0 ? 0 : fillings.get(filling - 1);
  }

  private Equilibria rest(double volume) {
    return known.computeIfAbsent(volume, boat::with);
  }

  private boolean isHarmless(Equilibria rest) {
    return comesBack(rest)
        && rest.reached().stream().allMatch(p -> p.metacentricHeight() > STIFF)
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
