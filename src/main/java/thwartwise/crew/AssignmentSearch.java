package thwartwise.crew;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.DoubleAccumulator;
import java.util.stream.IntStream;
import thwartwise.boat.Body;
import thwartwise.boat.Place;
import thwartwise.boat.SeatPositions.Packing;
import thwartwise.geometry.Vector3;
import thwartwise.hull.HullForm;
import thwartwise.loadcase.LoadedBoat;

/**
 * The checks of named people in every seating and every mixture of their possible masses. The
 * search is exact: the order of questions and a bound only save work.
 */
public final class AssignmentSearch {
  private static final Vector3 AHEAD = Vector3.of(1, 0, 0);
  private static final int HANDFUL = 4;

  private final CrewAssessment assessment;
  private final List<Place> places;
  private final List<Boolean> orders;
  private final Map<List<NamedPerson.Range>, Optional<Assignment>> found =
      new ConcurrentHashMap<>();

  AssignmentSearch(CrewAssessment assessment) {
    this.assessment = assessment;
    this.places = assessment.model().boat().places();
    boolean one = assessment.model().isSymmetric() && places.stream().noneMatch(Place::hasLength);
    this.orders = one ? List.of(false) : List.of(false, true);
  }

  /** A seating and its least margin, as a share of the limit. */
  record Rated(Assignment assignment, int number, double margin) {

    /** The greater margin; of two equal ones the first. */
    static Rated better(Rated a, Rated b) {
      boolean second = b.margin > a.margin || b.margin == a.margin && b.number < a.number;
      return second ? b : a;
    }
  }

  /** Every mixture in one seating, with every packing of their places. */
  List<LoadedBoat> loadedBoats(List<NamedPerson> members, Assignment assignment) {
    boolean apart = assignment.places().stream().distinct().count() == members.size();
    List<Packing> packings = Packing.of(assignment.places().stream().map(places::get).toList());
    Set<List<Body>> ways = new LinkedHashSet<>();
    for (List<Double> masses : MassMixtures.of(members)) {
      for (boolean heavyLast : apart ? List.of(false) : orders) {
        for (Packing packing : packings) {
          ways.add(assignment.bodies(assessment.model(), masses, heavyLast, packing));
        }
      }
    }
    return ways.stream().map(bodies -> LoadedBoat.of(assessment.model(), bodies)).toList();
  }

  boolean meets(List<NamedPerson> members, Assignment assignment) {
    return loadedBoats(members, assignment).stream().allMatch(assessment::meets);
  }

  /** False proves that they find no seating, without trying one. */
  boolean mayBeLifted(List<NamedPerson> members) {
    return MassMixtures.of(members).stream()
        .allMatch(masses -> assessment.mayBeLifted(anywhere(masses)));
  }

  private List<Body> anywhere(List<Double> masses) {
    return places.isEmpty()
        ? List.of()
        : Seating.seated(assessment.model(), places.get(0), masses, Packing.SPREAD, 0);
  }

  /** Some seating in which they meet everything. */
  Optional<Assignment> any(List<NamedPerson> members) {
    Optional<Assignment> before = found.get(NamedPerson.ranges(members));
    if (before != null) {
      return before;
    }
    Optional<Assignment> one =
        mayBeLifted(members)
            ? firstIn(grown(members), members).or(() -> firstIn(middlingFirst(members), members))
            : Optional.empty();
    found.put(NamedPerson.ranges(members), one);
    return one;
  }

  /** Tries a few at a time, so that the likeliest are tried before others are begun. */
  private Optional<Assignment> firstIn(List<Assignment> ways, List<NamedPerson> members) {
    for (int i = 0; i < ways.size(); i += HANDFUL) {
      Optional<Assignment> one =
          ways.subList(i, Math.min(ways.size(), i + HANDFUL)).parallelStream()
              .filter(a -> meets(members, a))
              .findFirst();
      if (one.isPresent()) {
        return one;
      }
    }
    return Optional.empty();
  }

  /** The seats found for the crew without its last person, with one more seat. */
  private List<Assignment> grown(List<NamedPerson> members) {
    int last = members.size() - 1;
    Optional<Assignment> less =
        last < 0
            ? Optional.empty()
            : found.getOrDefault(NamedPerson.ranges(members.subList(0, last)), Optional.empty());
    return less.map(this::withOneMore).orElse(List.of());
  }

  private List<Assignment> withOneMore(Assignment less) {
    List<Assignment> more = new ArrayList<>();
    for (int p = 0; p < places.size(); p++) {
      int here = p;
      if (less.places().stream().filter(q -> q == here).count() < places.get(p).people()) {
        List<Integer> all = new ArrayList<>(less.places());
        all.add(p);
        more.add(new Assignment(all));
      }
    }
    return more;
  }

  /**
   * The seating with the greatest least margin. A seating already worse than the best so far is
   * abandoned; an equal one is not, so that the first of them is named every time.
   */
  Optional<Rated> best(List<NamedPerson> members) {
    List<Assignment> all = middlingFirst(members);
    DoubleAccumulator most = new DoubleAccumulator(Math::max, 0);
    return IntStream.range(0, all.size())
        .parallel()
        .mapToObj(i -> rated(members, all.get(i), i, most))
        .filter(r -> r.margin >= 0)
        .reduce(Rated::better);
  }

  /**
   * Orders seatings by the distance of the weight from the middle of the boat, because the nearest
   * are the likeliest to be allowed.
   */
  private List<Assignment> middlingFirst(List<NamedPerson> members) {
    HullForm form = assessment.model().form();
    double middle = form.outside().extent(AHEAD).middle();
    Map<Assignment, Double> off = new HashMap<>();
    List<Assignment> ways = new ArrayList<>(Assignment.of(members, places));
    ways.forEach(a -> off.put(a, Math.abs(moment(members, a, middle))));
    ways.sort(Comparator.comparing(off::get));
    return ways;
  }

  private double moment(List<NamedPerson> members, Assignment assignment, double about) {
    return IntStream.range(0, members.size())
        .mapToDouble(
            i -> members.get(i).heaviest() * (places.get(assignment.places().get(i)).x() - about))
        .sum();
  }

  private Rated rated(
      List<NamedPerson> members, Assignment assignment, int number, DoubleAccumulator most) {
    double least = Double.POSITIVE_INFINITY;
    for (LoadedBoat loadedBoat : loadedBoats(members, assignment)) {
      least = Math.min(least, assessment.leastMargin(loadedBoat, most.get()));
      if (least < most.get()) {
        return new Rated(assignment, number, Double.NEGATIVE_INFINITY);
      }
    }
    most.accumulate(least);
    return new Rated(assignment, number, least);
  }

  /** What stops them in the seating that fails the fewest checks; if it is the lift, in any. */
  Optional<FailedChecks> breaks(List<NamedPerson> members) {
    if (!mayBeLifted(members)) {
      return Assignment.of(members, places).stream()
          .findFirst()
          .map(a -> new FailedChecks(assessment.notLifted(loadedBoats(members, a))));
    }
    int fewest = Integer.MAX_VALUE;
    Optional<Assignment> least = Optional.empty();
    for (Assignment assignment : Assignment.of(members, places)) {
      int breached = assessment.breached(loadedBoats(members, assignment), fewest);
      if (breached > 0 && breached < fewest) {
        fewest = breached;
        least = Optional.of(assignment);
      }
      if (fewest == 1) {
        break;
      }
    }
    return least.map(a -> new FailedChecks(assessment.notMet(loadedBoats(members, a))));
  }

  /**
   * The masses to try for some people: everyone at the greatest, then every mixture of greatest and
   * least, then everyone a third and two thirds of the way between. Each list has one mass for each
   * person; a person who was weighed has only one.
   */
  private static final class MassMixtures {
    private MassMixtures() {}

    static List<List<Double>> of(List<NamedPerson> members) {
      List<List<Double>> all = new ArrayList<>();
      mix(members, new ArrayList<>(), all);
      for (double share : List.of(1.0 / 3, 2.0 / 3)) {
        all.add(
            members.stream()
                .map(m -> m.lightest() + share * (m.heaviest() - m.lightest()))
                .toList());
      }
      return all.stream().distinct().toList();
    }

    private static void mix(List<NamedPerson> members, List<Double> sofar, List<List<Double>> all) {
      if (sofar.size() == members.size()) {
        all.add(List.copyOf(sofar));
        return;
      }
      NamedPerson next = members.get(sofar.size());
      for (double mass : List.of(next.heaviest(), next.lightest())) {
        List<Double> more = new ArrayList<>(sofar);
        more.add(mass);
        mix(members, more, all);
        if (next.heaviest() == next.lightest()) {
          return;
        }
      }
    }
  }
}
