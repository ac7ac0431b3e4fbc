package thwartwise.spread;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.UnaryOperator;
import thwartwise.crew.Recommendation.CrewLimit;

/**
 * The limits of each number of people as far as enough boats measured like this carry them. The
 * screen searches them under the allowance, near what it takes; here each is lowered step by step,
 * all of them together, until its share is large enough.
 */
final class SureLimits {
  /** Shares of the mass that the screen has. */
  private static final double[] OF_MASS = {1, 0.99, 0.98, 0.96, 0.92, 0.84, 0.68};

  /** Shares of the extra weight that the screen has; none needs no judgement. */
  private static final double[] OF_EXTRA = {1, 0.75, 0.5, 0.25, 0};

  private final List<Limit> pending = new ArrayList<>();
  private final List<Limit> all = new ArrayList<>();

  /** One figure of one number of people, at the step it has been lowered to. */
  private static final class Limit {
    private final CrewLimit of;
    private final boolean isMass;
    private final double screened;
    private final double least;
    private final DoubleFunction<? extends CrewCase> crew;
    private int step;

    Limit(
        CrewLimit of,
        boolean isMass,
        double screened,
        double least,
        DoubleFunction<? extends CrewCase> crew) {
      this.of = of;
      this.isMass = isMass;
      this.screened = screened;
      this.least = least;
      this.crew = crew;
    }

    double value() {
      double[] shares = isMass ? OF_MASS : OF_EXTRA;
      return step < shares.length ? Math.max(least, Math.floor(screened * shares[step])) : least;
    }

    CrewCase atStep() {
      return crew.apply(value());
    }

    boolean isJudged() {
      return value() > least;
    }
  }

  /**
   * @param least what is known to be carried already, kg
   * @param crew with people of that mass
   */
  void addMass(CrewLimit limit, double least, DoubleFunction<? extends CrewCase> crew) {
    add(new Limit(limit, true, limit.massLimit(), least, crew));
  }

  /**
   * @param crew with so much besides
   */
  void addExtra(CrewLimit limit, DoubleFunction<? extends CrewCase> crew) {
    add(new Limit(limit, false, limit.extraMass(), 0, crew));
  }

  private void add(Limit limit) {
    all.add(limit);
    if (limit.isJudged()) {
      pending.add(limit);
    }
  }

  /**
   * @param screened every number of people
   * @param unsure selects the crews that are not sure enough
   */
  List<CrewLimit> of(List<CrewLimit> screened, UnaryOperator<Collection<CrewCase>> unsure) {
    while (!pending.isEmpty()) {
      Collection<CrewCase> refused = unsure.apply(pending.stream().map(Limit::atStep).toList());
      pending.removeIf(limit -> !refused.contains(limit.atStep()));
      pending.forEach(limit -> limit.step++);
      pending.removeIf(limit -> !limit.isJudged());
    }
    List<CrewLimit> lowered = new ArrayList<>();
    double extra = Double.POSITIVE_INFINITY;
    for (CrewLimit limit : screened) {
      // Some of the people may be left ashore, and the rest must carry what is besides them, too.
      extra = Math.min(extra, value(limit, false, limit.extraMass()));
      double each = value(limit, true, limit.massLimit());
      lowered.add(limit.lowered(each, Double.isNaN(limit.extraMass()) ? limit.extraMass() : extra));
    }
    return lowered;
  }

  private double value(CrewLimit of, boolean isMass, double screened) {
    return all.stream()
        .filter(limit -> limit.of == of && limit.isMass == isMass)
        .mapToDouble(Limit::value)
        .findFirst()
        .orElse(screened);
  }
}
