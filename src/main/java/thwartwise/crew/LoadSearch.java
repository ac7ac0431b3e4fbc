package thwartwise.crew;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.BiPredicate;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Loading;
import thwartwise.boat.Place;
import thwartwise.checks.Check;
import thwartwise.crew.LikelyRefusals.WeightCase;
import thwartwise.geometry.Box;
import thwartwise.geometry.Solid;
import thwartwise.geometry.Span;
import thwartwise.geometry.Vector3;
import thwartwise.loadcase.Allowance;
import thwartwise.loadcase.LoadedBoat;

/**
 * The search for extra weight besides people and the kit listed: on the middle line, on the floor,
 * a seat or a box, at the worst spot along the boat, with every crew from nobody up, in every
 * allowed seating and every mixture of heavy and light people.
 *
 * <p>Every weight up to the limit is carried, not only the limit itself: low weight can steady a
 * boat, and a swamped one can lose its stability over a range of a few kilograms, where the top of
 * a box goes under, and regain it. So each check of each mixture is asked at weights so close
 * together that the limits on heel leave no room for that between them ({@link Headroom}).
 */
public final class LoadSearch {
  static final int MOST = 300;

  private final CrewAssessment assessment;
  private final List<LoadedBoat> crews;
  private final List<Check> checks;
  private final List<Vector3> spots;
  private final LikelyRefusals likely;

  /**
   * @param each greatest mass of each person in these seatings
   */
  LoadSearch(CrewAssessment assessment, List<Seating> seatings, double each) {
    this(assessment, seatings, each, spots(assessment.model()));
  }

  /**
   * @param spots where something may be, as {@link #spots} finds them
   */
  LoadSearch(CrewAssessment assessment, List<Seating> seatings, double each, List<Vector3> spots) {
    this.assessment = assessment;
    this.crews = seatings.stream().flatMap(s -> assessment.loadedBoats(s, each).stream()).toList();
    this.checks = assessment.soonest();
    this.spots = spots;
    this.likely = assessment.balances().other(LikelyRefusals.class, LikelyRefusals::new);
  }

  /**
   * A check of one loading, and its headroom with no extra weight.
   *
   * @param crew mixture of heavy and light people, by number
   * @param taken whether the allowance is applied
   */
  private record Start(int crew, CrewAssessment.Asked asked, Headroom headroom, Allowance taken) {}

  /** The headroom of a loading with extra weight, whole kg. */
  private record Point(int mass, Headroom headroom) {}

  /** The extra weight, whole kg. */
  int extra() {
    return extra(0, MOST);
  }

  /**
   * The same, up to a bound.
   *
   * @param asked the search stops where the answer is less than this; the result is then less, too
   */
  int extra(int asked, int most) {
    int least = most;
    for (Allowance taken : assessment.allowances()) {
      for (int check = 0; check < checks.size() && least >= asked; check++) {
        for (Start start : starts(checks.get(check), taken)) {
          least = least >= asked ? least(check, start, least) : least;
        }
      }
    }
    return least;
  }

  private List<Start> starts(Check check, Allowance taken) {
    return IntStream.range(0, crews.size())
        .parallel()
        .mapToObj(crew -> start(check, crew, taken))
        .toList();
  }

  private Start start(Check check, int crew, Allowance taken) {
    CrewAssessment.Asked asked = assessment.asked(crews.get(crew), taken, List.of(check));
    return new Start(crew, asked, assessment.headroom(asked), taken);
  }

  // Every spot is tried with the same weights in any order, so the answer does not depend on the
  // order.
  private int least(int check, Start start, int end) {
    int differing = checks.get(check).byVolumesAlone() ? 1 : spots.size();
    List<Integer> carried =
        IntStream.range(0, differing)
            .parallel()
            .mapToObj(spot -> carried(start, spots.get(spot), end))
            .toList();
    int least = Collections.min(carried);
    if (least < end) {
      likely.remember(new WeightCase(check, carried.indexOf(least), start.crew));
    }
    return least;
  }

  /**
   * A quick look at what refused last time, because it usually refuses again. False proves that the
   * weight is too much, true proves nothing.
   */
  boolean mayBe(int mass) {
    return likely.latest().stream()
        .filter(last -> last.spot() < spots.size() && last.crew() < crews.size())
        .allMatch(last -> meets(last, mass));
  }

  private boolean meets(WeightCase last, int mass) {
    Start start = start(checks.get(last.check()), last.crew(), assessment.allowances().get(0));
    return at(start, spots.get(last.spot()), mass).headroom.isMet();
  }

  /**
   * The spots to which no other one is worse: one farther from the middle on the same side and no
   * lower, with such a one at the other end too. What a boat carries at both ends it carries
   * between them, where it trims less.
   */
  public static List<Vector3> spots(BoatModel model) {
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

  // What is carried all the way after the allowance is checked as measured at its ends alone,
  // because the measured boat with a little more in it has been on that way already.
  private int carried(Start start, Vector3 spot, int end) {
    if (!start.headroom.isMet() || end == 0) {
      return 0;
    }
    Point last = at(start, spot, end);
    return last.headroom.isMet() && start.taken.equals(Allowance.NONE)
        ? end
        : carried(start, spot, new Point(0, start.headroom), last);
  }

  /** The last weight before the first that fails, or the end where all are carried up to it. */
  private int carried(Start start, Vector3 spot, Point from, Point to) {
    int stretch = to.mass - from.mass;
    if (to.headroom.isMet() && stretch <= from.headroom.mass() + to.headroom.mass()) {
      return to.mass;
    }
    if (stretch <= Math.max(1, from.headroom.mass())) {
      return to.headroom.isMet() ? to.mass : lastMet(start, spot, from, to);
    }
    Point middle = at(start, spot, from.mass + stretch / 2);
    int last = carried(start, spot, from, middle);
    return last < middle.mass ? last : carried(start, spot, middle, to);
  }

  private Point at(Start start, Vector3 spot, int mass) {
    return new Point(mass, assessment.headroom(start.asked.with(weight(spot, mass))));
  }

  private int lastMet(Start start, Vector3 spot, Point meets, Point fails) {
    DoubleFunction<Headroom> headroom =
        mass ->
            Stream.of(meets, fails)
                .filter(end -> end.mass == mass)
                .findFirst()
                .orElseGet(() -> at(start, spot, (int) mass))
                .headroom;
    return (int) BracketedSearch.lastMet(meets.mass, fails.mass, 1, headroom);
  }

  private static Loading.Weight weight(Vector3 at, int mass) {
    return new Loading.Weight(mass, at);
  }

  /**
   * The surfaces on which something can be set down low on the middle line of a boat: at each spot
   * along it the highest of floor, seat and box. Higher is never easier to carry: raising a weight
   * only reduces the righting moment. A chamber is a surface, whether its air counts or not, so
   * that one that does not count takes no spot away; one as high as a deck is none, and the floor
   * under it stays, because a space that does not count may be opened and filled.
   */
  private static final class LoadingSurfaces {
    private static final Vector3 AHEAD = Vector3.of(1, 0, 0);
    private static final Vector3 UP = Vector3.of(0, 0, 1);

    /** The spots from the ends of the boat to its middle, as shares of the length. */
    private static final List<Double> SHARES = List.of(0.08, 0.29, 0.5, 0.71, 0.92);

    /**
     * The greatest height above the floor; anything higher than a seat is a deck (judgement), m.
     */
    private static final double LOW = 0.45;

    /** Half the length of the hull considered at a spot, m. */
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

    /** The heights of the lowest and the highest point of a solid there; empty where it is not. */
    private static Stream<Span> heights(Solid solid, Box about) {
      Solid part = solid.within(about);
      return part.volume() > 0 ? Stream.of(part.extent(UP)) : Stream.empty();
    }
  }
}
