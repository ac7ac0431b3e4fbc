package thwartwise.crew;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;
import java.util.stream.Stream;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Loading;
import thwartwise.boat.Place;
import thwartwise.checks.Check;
import thwartwise.geometry.Box;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;

/**
 * How much more may be aboard besides people and the kit listed: extra weight on the middle line,
 * on the floor, a seat or a box, at whichever spot along the boat is worst, with every crew from
 * nobody up, in every allowed seating and every mixture of heavy and light people.
 *
 * <p>Every weight up to the limit is carried, not only the limit itself: low weight can steady a
 * boat, and a swamped one can lose its steadiness over a stretch of a few kilograms, where the top
 * of a box goes under, and find it again. So each check of each mixture is walked up from nothing,
 * in strides as long as the limits on heel leave room for ({@link Headroom}).
 */
public final class LoadSearch {
  static final int MOST = 300;

  private final CrewAssessment assessment;
  private final List<Seating> seatings;
  private final double each;

  /** For these seatings, nobody heavier than {@code each}. */
  LoadSearch(CrewAssessment assessment, List<Seating> seatings, double each) {
    this.assessment = assessment;
    this.seatings = seatings;
    this.each = each;
  }

  /** A check of one loading, and how far that is from its limits with nothing more aboard. */
  private record Start(CrewAssessment.Asked asked, Headroom headroom) {}

  /** Whole kg. */
  int extra() {
    return extra(MOST);
  }

  /** The same, not more than so much. */
  int extra(int most) {
    List<Vector3> spots = spots(assessment.model());
    int least = most;
    for (Check check : assessment.soonest()) {
      for (Start start : starts(check)) {
        least = least(start, check.byVolumesAlone() ? spots.subList(0, 1) : spots, least);
      }
    }
    return least;
  }

  private List<Start> starts(Check check) {
    return seatings.parallelStream()
        .flatMap(seating -> assessment.loadedBoats(seating, each).stream())
        .flatMap(
            boat ->
                assessment.allowances().stream()
                    .map(a -> assessment.asked(boat, a, List.of(check))))
        .map(asked -> new Start(asked, assessment.headroom(asked)))
        .toList();
  }

  // Every spot is asked about the same weights, whichever comes first: the answer does not depend
  // on the order.
  private int least(Start start, List<Vector3> spots, int end) {
    return spots.parallelStream()
        .mapToInt(spot -> carried(start, spot, end))
        .reduce(end, Math::min);
  }

  /**
   * Of the spots those that no other one is worse than: one farther from the middle on the same
   * side and no lower, with such a one at the other end too. What a boat carries at both ends it
   * carries between them, where it trims less.
   */
  static List<Vector3> spots(BoatModel model) {
    List<Vector3> all = LoadingSurfaces.of(model);
    return all.stream()
        .filter(
            at ->
                !isTopped(at, all, (x, other) -> other < x)
                    || !isTopped(at, all, (x, other) -> other > x))
        .toList();
  }

  private static boolean isTopped(
      Vector3 at, List<Vector3> all, BiPredicate<Double, Double> isFarther) {
    return all.stream().anyMatch(o -> o.z() >= at.z() && isFarther.test(at.x(), o.x()));
  }

  /** The last weight before the first that fails, or so much where that is carried. */
  private int carried(Start start, Vector3 spot, int end) {
    Headroom headroom = start.headroom;
    int at = 0;
    while (headroom.isMet() && at < end) {
      int next = at + (int) Math.max(1, Math.min(end - at, headroom.mass()));
      headroom = assessment.headroom(start.asked.with(weight(spot, next)));
      at = headroom.isMet() ? next : lastMet(start, spot, at, next);
    }
    return at;
  }

  private int lastMet(Start start, Vector3 spot, int meets, int fails) {
    return (int)
        Bisection.last(
            meets,
            fails,
            1,
            mass -> assessment.headroom(start.asked.with(weight(spot, (int) mass))).isMet());
  }

  private static Loading.Weight weight(Vector3 at, int mass) {
    return new Loading.Weight(mass, at);
  }

  /**
   * Where something can be set down low on the middle line of a boat: at a spot along it the
   * highest of floor, seat and box. Higher is never easier to carry: raising a weight only takes
   * from what turns the boat back. A chamber is a thing to set weights on, whether its air counts
   * or not, so that one that counts for nothing takes no spot away; one as high as a deck is none,
   * and the floor under it stays, because a space that does not count may be opened and filled.
   */
  private static final class LoadingSurfaces {
    private static final Vector3 AHEAD = Vector3.of(1, 0, 0);
    private static final Vector3 UP = Vector3.of(0, 0, 1);

    /** From the ends of the boat to its middle, as shares of the length. */
    private static final List<Double> SHARES = List.of(0.08, 0.29, 0.5, 0.71, 0.92);

    /** Above the floor; what is higher than any seat is a deck (judgement), m. */
    private static final double LOW = 0.45;

    /** Half of what is looked at of the hull about a spot, m. */
    private static final double HALF = 0.01;

    private final BoatModel model;

    private LoadingSurfaces(BoatModel model) {
      this.model = model;
    }

    /** Spots along the whole boat, at every place and on every box. */
    static List<Vector3> of(BoatModel model) {
      return new LoadingSurfaces(model).spots();
    }

    private List<Vector3> spots() {
      Span hull = model.form().outside().extent(AHEAD);
      List<Double> along = new ArrayList<>();
      SHARES.forEach(share -> along.add(hull.from() + share * hull.length()));
      model.boat().places().stream().map(Place::x).forEach(along::add);
      model.spaces().stream().map(s -> s.solid().extent(AHEAD).middle()).forEach(along::add);
      return along.stream().map(this::highest).distinct().toList();
    }

    private Vector3 highest(double x) {
      Box about = new Box(new Span(x - HALF, x + HALF), new Span(-HALF, HALF), Span.ALL);
      double floor =
          heights(model.form().inside(), about)
              .mapToDouble(Span::from)
              .reduce(model.boat().hull().floor(), Math::max);
      Stream<Double> boxes =
          model.spaces().stream().flatMap(s -> heights(s.solid(), about)).map(Span::to);
      Stream<Double> seats =
          model.boat().places().stream()
              .filter(p -> p.along().contains(x) && p.across().contains(0))
              .map(Place::z);
      double height =
          Stream.concat(boxes, seats).filter(z -> z <= floor + LOW).reduce(floor, Math::max);
      return Vector3.of(x, 0, height);
    }

    /** From the lowest to the highest point of a solid there; none where it is not. */
    private static Stream<Span> heights(Solid solid, Box about) {
      Solid part = solid.within(about);
      return part.volume() > 0 ? Stream.of(part.extent(UP)) : Stream.empty();
    }
  }
}
