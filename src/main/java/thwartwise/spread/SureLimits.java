package thwartwise.spread;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.stream.Stream;
import thwartwise.crew.Recommendation.CrewLimit;

/**
 * The limits of each number of people as far as enough boats measured like this carry them. The
 * screen searches them under the allowance, right up to what it takes; here the greatest mass that
 * is sure enough is sought below each, all of them together.
 */
final class SureLimits {
  private final List<Limit> all = new ArrayList<>();

  private enum Quantity {
    MASS,
    EXTRA
  }

  /**
   * One figure of one number of people, for those of its crews that are not yet sure of more.
   *
   * @param least of any use, kg
   */
  private record Limit(
      CrewLimit of,
      Quantity quantity,
      double least,
      List<DoubleFunction<? extends CrewCase>> crews,
      SureMass mass) {
    Stream<CrewCase> asked() {
      return crews.stream().map(crew -> crew.apply(mass.asked()));
    }

    void judge(Map<CrewCase, Double> shares) {
      double asked = mass.asked();
      mass.judged(asked().mapToDouble(shares::get).min().orElse(1));
      if (mass.carried() < asked) {
        crews.removeIf(crew -> SureMass.isEnough(shares.get(crew.apply(asked))));
      }
    }
  }

  /**
   * @param known what each of so many may weigh for certain, kg
   * @param crews each with nobody heavier than so much
   */
  void addMass(CrewLimit limit, double known, List<DoubleFunction<? extends CrewCase>> crews) {
    add(limit, Quantity.MASS, 0, crews, SureMass.above(known, limit.massLimit()));
  }

  /**
   * The same for a number of people who may be too many at any mass.
   *
   * @param least mass to which each of so many may be limited, kg
   */
  void addUncertainMass(
      CrewLimit limit, double least, List<DoubleFunction<? extends CrewCase>> crews) {
    double useful = Math.min(least, limit.massLimit());
    add(limit, Quantity.MASS, useful, crews, SureMass.from(useful, limit.massLimit()));
  }

  /**
   * @param crew with so much besides
   */
  void addExtra(CrewLimit limit, DoubleFunction<? extends CrewCase> crew) {
    add(limit, Quantity.EXTRA, 0, List.of(crew), SureMass.above(0, limit.extraMass()));
  }

  private void add(
      CrewLimit limit,
      Quantity quantity,
      double least,
      List<DoubleFunction<? extends CrewCase>> crews,
      SureMass mass) {
    all.add(new Limit(limit, quantity, least, new ArrayList<>(crews), mass));
  }

  /**
   * The limits without those numbers of people of whom none are light enough.
   *
   * @param screened every number of people, the fewest first
   * @param shares of boats measured like this in which a crew meets every limit
   */
  List<CrewLimit> of(
      List<CrewLimit> screened, Function<List<CrewCase>, Map<CrewCase, Double>> shares) {
    for (List<Limit> open = open(); !open.isEmpty(); open = open()) {
      Map<CrewCase, Double> found = shares.apply(open.stream().flatMap(Limit::asked).toList());
      open.forEach(limit -> limit.judge(found));
    }
    List<CrewLimit> sure = new ArrayList<>();
    double each = Double.POSITIVE_INFINITY;
    double extra = Double.POSITIVE_INFINITY;
    for (CrewLimit limit : screened) {
      // Some of the people may be left ashore, and the rest must still be carried, with what is
      // besides them.
      each = Math.min(each, sure(limit, Quantity.MASS, limit.massLimit()));
      extra = Math.min(extra, sure(limit, Quantity.EXTRA, limit.extraMass()));
      if (!(each >= least(limit))) {
        return sure;
      }
      sure.add(limit.lowered(each, Double.isNaN(limit.extraMass()) ? limit.extraMass() : extra));
    }
    return sure;
  }

  private List<Limit> open() {
    return all.stream().filter(limit -> !limit.mass.isFound()).toList();
  }

  /** NaN where none is sure. */
  private double sure(CrewLimit of, Quantity quantity, double screened) {
    return limit(of, quantity).map(limit -> limit.mass.carried()).orElse(screened);
  }

  private double least(CrewLimit of) {
    return limit(of, Quantity.MASS).map(Limit::least).orElse(0.0);
  }

  private Optional<Limit> limit(CrewLimit of, Quantity quantity) {
    return all.stream().filter(l -> l.of == of && l.quantity == quantity).findFirst();
  }
}
