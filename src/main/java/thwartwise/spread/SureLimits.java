package thwartwise.spread;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.stream.Stream;
import thwartwise.crew.Recommendation.CrewLimit;
import thwartwise.crew.Recommendation.Lighter;

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
   * @param like the place of each person, where it is of one seating alone; otherwise empty
   * @param least of any use, kg
   */
  private record Limit(
      CrewLimit of,
      Quantity quantity,
      List<String> like,
      double least,
      List<DoubleFunction<? extends CrewCase>> crews,
      SureMass mass) {

    /** For a seating that carries less than the best one, any mass will do that is sure. */
    boolean isFound() {
      return mass.isFound() || !like.isEmpty() && !Double.isNaN(mass.carried());
    }

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
    add(limit, Quantity.MASS, List.of(), 0, crews, SureMass.above(known, limit.massLimit()));
  }

  /**
   * The same for a number of people who may be too many at any mass.
   *
   * @param least mass to which each of so many may be limited, kg
   */
  void addUncertainMass(
      CrewLimit limit, double least, List<DoubleFunction<? extends CrewCase>> crews) {
    addFrom(least, limit, List.of(), limit.massLimit(), crews);
  }

  /**
   * One of the seatings that lighter people may have; those that are not added nobody has.
   *
   * @param least mass to which each of so many may be limited, kg
   */
  void addSeating(
      CrewLimit limit,
      Lighter seating,
      double least,
      List<DoubleFunction<? extends CrewCase>> crews) {
    addFrom(least, limit, seating.places(), seating.massLimit(), crews);
  }

  private void addFrom(
      double least,
      CrewLimit limit,
      List<String> like,
      double screened,
      List<DoubleFunction<? extends CrewCase>> crews) {
    double useful = Math.min(least, screened);
    add(limit, Quantity.MASS, like, useful, crews, SureMass.from(useful, screened));
  }

  /**
   * @param crew with so much besides
   */
  void addExtra(CrewLimit limit, DoubleFunction<? extends CrewCase> crew) {
    SureMass mass = SureMass.above(0, limit.extraMass());
    add(limit, Quantity.EXTRA, List.of(), 0, List.of(crew), mass);
  }

  private void add(
      CrewLimit limit,
      Quantity quantity,
      List<String> like,
      double least,
      List<DoubleFunction<? extends CrewCase>> crews,
      SureMass mass) {
    all.add(new Limit(limit, quantity, like, least, new ArrayList<>(crews), mass));
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
      double besides = Double.isNaN(limit.extraMass()) ? limit.extraMass() : extra;
      CrewLimit lowered = limit.lowered(each, besides, lighter(limit, each));
      extra = lowered.extraMass() < extra ? lowered.extraMass() : extra;
      sure.add(lowered);
    }
    return sure;
  }

  private List<Limit> open() {
    return all.stream().filter(limit -> !limit.isFound()).toList();
  }

  /** The seatings of lighter people that are sure, none of them with heavier people than this. */
  private List<Lighter> lighter(CrewLimit of, double each) {
    return all.stream()
        .filter(limit -> limit.of == of && !limit.like.isEmpty())
        .filter(limit -> Math.min(each, limit.mass.carried()) >= limit.least)
        .map(limit -> new Lighter(limit.like, Math.min(each, limit.mass.carried())))
        .toList();
  }

  /** NaN where none is sure. */
  private double sure(CrewLimit of, Quantity quantity, double screened) {
    return limit(of, quantity).map(limit -> limit.mass.carried()).orElse(screened);
  }

  private double least(CrewLimit of) {
    return limit(of, Quantity.MASS).map(Limit::least).orElse(0.0);
  }

  private Optional<Limit> limit(CrewLimit of, Quantity quantity) {
    return all.stream()
        .filter(l -> l.of == of && l.quantity == quantity && l.like.isEmpty())
        .findFirst();
  }
}
