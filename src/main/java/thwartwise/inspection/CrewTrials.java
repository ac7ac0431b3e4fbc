package thwartwise.inspection;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.DoubleAccumulator;
import java.util.stream.IntStream;
import thwartwise.boat.Body;
import thwartwise.boat.HullForm;
import thwartwise.boat.Place;
import thwartwise.checks.Trial;
import thwartwise.geometry.Vector3;

/**
 * Named people put to the checks in every way they can sit, over every mixture of what they may
 * weigh. Exact: an order of asking and a bound only save questions.
 */
final class CrewTrials {
  private static final Vector3 AHEAD = Vector3.of(1, 0, 0);

  private final Judge judge;
  private final List<Place> places;
  private final List<Boolean> sides;
  private final Map<List<Member>, Optional<Assignment>> found = new ConcurrentHashMap<>();

  CrewTrials(Judge judge) {
    this.judge = judge;
    this.places = judge.craft().boat().places();
    this.sides = judge.craft().isSymmetric() ? List.of(false) : List.of(false, true);
  }

  /** A seating and the least margin in it, as a share of the limit. */
  record Rated(Assignment assignment, int number, double margin) {

    /** The greater margin; of two alike the one named first. */
    static Rated better(Rated a, Rated b) {
      boolean second = b.margin > a.margin || b.margin == a.margin && b.number < a.number;
      return second ? b : a;
    }
  }

  /** Every mixture in one seating; where nobody sits beside another one side will do. */
  List<Trial> trials(List<Member> members, Assignment assignment) {
    boolean apart = assignment.places().stream().distinct().count() == members.size();
    List<Trial> trials = new ArrayList<>();
    for (List<Double> masses : Mixtures.of(members)) {
      for (boolean heavyToPort : apart ? List.of(false) : sides) {
        trials.add(
            Trial.of(judge.craft(), assignment.bodies(judge.craft(), masses, heavyToPort), ""));
      }
    }
    return trials;
  }

  boolean meets(List<Member> members, Assignment assignment) {
    return trials(members, assignment).stream().allMatch(judge::meets);
  }

  /** False proves that they find no seating, without trying one. */
  boolean mayBeLifted(List<Member> members) {
    return Mixtures.of(members).stream().allMatch(masses -> judge.mayBeLifted(anywhere(masses)));
  }

  private List<Body> anywhere(List<Double> masses) {
    return places.isEmpty()
        ? List.of()
        : Seating.sideBySide(judge.craft(), places.get(0), masses, 0);
  }

  /** Some seating in which they meet everything; which one is of no account. */
  Optional<Assignment> any(List<Member> members) {
    Optional<Assignment> before = found.get(members);
    if (before != null) {
      return before;
    }
    Optional<Assignment> one =
        mayBeLifted(members)
            ? middlingFirst(members).parallelStream().filter(a -> meets(members, a)).findAny()
            : Optional.empty();
    found.put(members, one);
    return one;
  }

  /**
   * The seating with the greatest least margin. One that is already worse than the best so far is
   * not looked at further; one that is as good is, so that the first of them is named every time.
   */
  Optional<Rated> best(List<Member> members) {
    List<Assignment> all = middlingFirst(members);
    DoubleAccumulator most = new DoubleAccumulator(Math::max, 0);
    return IntStream.range(0, all.size())
        .parallel()
        .mapToObj(i -> rated(members, all.get(i), i, most))
        .filter(r -> r.margin >= 0)
        .reduce(Rated::better);
  }

  /** Those first whose weight lies nearest the middle of the boat: they are the likeliest to do. */
  private List<Assignment> middlingFirst(List<Member> members) {
    HullForm form = judge.craft().form();
    double middle = form.outside().extent(AHEAD).middle();
    return Assignment.of(members, places).stream()
        .sorted(Comparator.comparingDouble(a -> Math.abs(moment(members, a, middle))))
        .toList();
  }

  private double moment(List<Member> members, Assignment assignment, double about) {
    return IntStream.range(0, members.size())
        .mapToDouble(
            i -> members.get(i).heaviest() * (places.get(assignment.places().get(i)).x() - about))
        .sum();
  }

  private Rated rated(
      List<Member> members, Assignment assignment, int number, DoubleAccumulator most) {
    double least = Double.POSITIVE_INFINITY;
    for (Trial trial : trials(members, assignment)) {
      least = Math.min(least, judge.leastMargin(trial, most.get()));
      if (least < most.get()) {
        return new Rated(assignment, number, Double.NEGATIVE_INFINITY);
      }
    }
    most.accumulate(least);
    return new Rated(assignment, number, least);
  }

  /** What stops them in the seating that breaks least; where it is the lift, in any. */
  Optional<Breaks> breaks(List<Member> members) {
    if (!mayBeLifted(members)) {
      return Assignment.of(members, places).stream()
          .findFirst()
          .map(a -> new Breaks(judge.notLifted(trials(members, a))));
    }
    int fewest = Integer.MAX_VALUE;
    Optional<Assignment> least = Optional.empty();
    for (Assignment assignment : Assignment.of(members, places)) {
      int breached = judge.breached(trials(members, assignment), fewest);
      if (breached > 0 && breached < fewest) {
        fewest = breached;
        least = Optional.of(assignment);
      }
      if (fewest == 1) {
        break;
      }
    }
    return least.map(a -> new Breaks(judge.notMet(trials(members, a))));
  }
}
