package thwartwise.spread;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import thwartwise.crew.Recommendation.CrewLimit;

/**
 * The limits of each number of people as far as enough boats measured like this carry them. The
 * screen searches them under the allowance, right up to what it takes; here each is lowered step by
 * step, all of them together, until its share is large enough.
 */
final class SureLimits {
  /** Shares of what the screen has. */
  private static final double[] SHARES = {
    1, 0.985, 0.97, 0.95, 0.925, 0.9, 0.87, 0.84, 0.8, 0.75, 0.68, 0.6, 0.5, 0.4, 0.25, 0
  };

  /** More than enough, since these crews are judged to second order and not in full. */
  private static final double SURE = BoatSpread.ENOUGH + 0.01;

  private static final double HALF = 0.5;
  private static final double MOST = 0.85;

  private final List<Limit> pending = new ArrayList<>();
  private final List<Limit> all = new ArrayList<>();

  private enum Quantity {
    MASS,
    EXTRA
  }

  /** One figure of one number of people, at the step it has been lowered to. */
  private static final class Limit {
    private final CrewLimit of;
    private final Quantity quantity;
    private final double screened;
    private final double least;
    private final DoubleFunction<? extends CrewCase> crew;
    private int step;

    Limit(
        CrewLimit of,
        Quantity quantity,
        double screened,
        double least,
        DoubleFunction<? extends CrewCase> crew) {
      this.of = of;
      this.quantity = quantity;
      this.screened = screened;
      this.least = least;
      this.crew = crew;
    }

    double value() {
      return Math.max(least, Math.floor(screened * SHARES[step]));
    }

    CrewCase atStep() {
      return crew.apply(value());
    }

    /** What is known to be carried, or nothing at all, needs no judgement. */
    boolean isJudged() {
      return value() > least;
    }

    /** Farther where fewer boats carry it; by a kilogram at least. */
    void lower(double share) {
      double before = value();
      step = Math.min(SHARES.length - 1, step + (share < HALF ? 4 : share < MOST ? 2 : 1));
      while (value() == before && isJudged()) {
        step++;
      }
    }
  }

  /**
   * @param least what is known to be carried already, kg
   * @param crew with nobody heavier than so much
   */
  void addMass(CrewLimit limit, double least, DoubleFunction<? extends CrewCase> crew) {
    add(new Limit(limit, Quantity.MASS, limit.massLimit(), least, crew));
  }

  /**
   * @param crew with so much besides
   */
  void addExtra(CrewLimit limit, DoubleFunction<? extends CrewCase> crew) {
    add(new Limit(limit, Quantity.EXTRA, limit.extraMass(), 0, crew));
  }

  private void add(Limit limit) {
    all.add(limit);
    if (limit.isJudged()) {
      pending.add(limit);
    }
  }

  /**
   * @param screened every number of people
   * @param shares of boats measured like this in which a crew meets every limit
   */
  List<CrewLimit> of(
      List<CrewLimit> screened, Function<List<CrewCase>, Map<CrewCase, Double>> shares) {
    while (!pending.isEmpty()) {
      Map<CrewCase, Double> found = shares.apply(pending.stream().map(Limit::atStep).toList());
      pending.removeIf(limit -> found.get(limit.atStep()) >= SURE);
      pending.forEach(limit -> limit.lower(found.get(limit.atStep())));
      pending.removeIf(limit -> !limit.isJudged());
    }
    List<CrewLimit> lowered = new ArrayList<>();
    double extra = Double.POSITIVE_INFINITY;
    for (CrewLimit limit : screened) {
      // Some of the people may be left ashore, and the rest must carry what is besides them, too.
      extra = Math.min(extra, value(limit, Quantity.EXTRA, limit.extraMass()));
      double besides = Double.isNaN(limit.extraMass()) ? limit.extraMass() : extra;
      lowered.add(limit.lowered(value(limit, Quantity.MASS, limit.massLimit()), besides));
    }
    return lowered;
  }

  private double value(CrewLimit of, Quantity quantity, double screened) {
    return all.stream()
        .filter(limit -> limit.of == of && limit.quantity == quantity)
        .mapToDouble(Limit::value)
        .min()
        .orElse(screened);
  }
}
