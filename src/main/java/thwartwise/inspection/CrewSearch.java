package thwartwise.inspection;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import thwartwise.boat.Place;
import thwartwise.rules.RuleSet;

/**
 * How many people, and how heavy, for each number of them by itself. Each seating has a mass up to
 * which everybody in it may weigh, all masses below it included; so many people may weigh what the
 * best of their seatings carries, and not more than one person fewer. The seatings that carry less
 * are left out for that number alone, each with its own mass.
 */
final class CrewSearch {
  /** Masses are told apart to this, so that many people's are good to a kilogram, kg. */
  private static final double FINE = 0.1;

  /** The least and the greatest stride in which a seating is walked up, kg a person. */
  private static final double LEAST_STRIDE = 10;

  private static final double MOST_STRIDE = 25;

  private final Judge judge;
  private final double design;
  private final double lightest;
  private final double heaviest;
  private final List<Place> places;
  private final WaysToSit ways;
  private final Map<Seating, Walk> walks = new ConcurrentHashMap<>();
  private final Map<Integer, Double> each = new ConcurrentHashMap<>();

  /**
   * How far a seating was walked up. Only as far as somebody asks: most seatings need not be known
   * to the kilogram.
   *
   * @param carried every mass up to this is carried, kg; less than the lightest before the walk
   * @param stride from there
   * @param fails the least mass seen to fail, kg; endless while none was
   */
  private record Walk(double carried, double stride, double fails) {
    static final Walk NOT_BEGUN = new Walk(-1, 0, Double.POSITIVE_INFINITY);

    boolean isBegun() {
      return carried >= 0;
    }

    boolean isAtItsEnd() {
      return isBegun() && (carried == 0 || fails <= carried + 1);
    }
  }

  CrewSearch(Judge judge, RuleSet rules) {
    this.judge = judge;
    this.design = rules.value("design-person");
    this.lightest = rules.value("lightest-person");
    this.heaviest = rules.value("heaviest-person");
    this.places = judge.craft().boat().places();
    this.ways = WaysToSit.of(judge.craft());
  }

  /** Every seating of nobody up to so many people that is allowed at a mass. */
  List<Seating> seatings(int people, double mass) {
    List<Seating> seatings = new ArrayList<>();
    for (int n = 0; n <= people; n++) {
      seatings.addAll(allowed(n, mass));
    }
    return seatings;
  }

  /** As many people as there are places for and as can be tried in every way they can sit. */
  int room() {
    return ways.tried();
  }

  WaysToSit ways() {
    return ways;
  }

  /** The empty boat must meet everything first. */
  boolean emptyBoatMeets() {
    return judge.meetsAll(nobody(), 0);
  }

  int staysUpWith() {
    return most(s -> judge.staysUp(s, design));
  }

  int holdsUpWhenSwamped() {
    return most(s -> judge.heldUp(s, design));
  }

  /** Adults of the design mass. */
  int people() {
    int people = 0;
    while (people < room() && eachUpTo(people + 1) >= design) {
      people++;
    }
    return people;
  }

  private int most(Predicate<Seating> meets) {
    if (!meets.test(nobody())) {
      return 0;
    }
    int people = 0;
    while (people < room() && Seating.of(people + 1, places).parallelStream().anyMatch(meets)) {
      people++;
    }
    return people;
  }

  /** Seatings of so many people that meet everything when nobody is heavier than this. */
  List<Seating> allowed(int people, double mass) {
    return Seating.of(people, places).parallelStream().filter(s -> carries(s, mass)).toList();
  }

  private Seating nobody() {
    return Seating.of(0, places).get(0);
  }

  /** Seatings of 1 to so many people that fail at this mass. */
  List<List<String>> excluded(int people, double mass) {
    List<List<String>> excluded = new ArrayList<>();
    for (int n = 1; n <= people; n++) {
      below(n, mass).forEach(s -> excluded.add(s.places(judge.craft())));
    }
    return excluded;
  }

  /** Seatings of so many people that carry less than this mass. */
  List<Seating> below(int people, double mass) {
    return Seating.of(people, places).parallelStream().filter(s -> !carries(s, mass)).toList();
  }

  /**
   * The greatest mass each of so many people may have in some seating, down to 0.1 kg; never more
   * than one person fewer may have, because somebody gets out first. Nought when even the lightest
   * may not, or when there is no room for so many.
   */
  double eachUpTo(int people) {
    if (people == 0) {
      return emptyBoatMeets() ? heaviest : 0;
    }
    if (people > room()) {
      return 0;
    }
    Double before = each.get(people);
    if (before == null) {
      double fewer = eachUpTo(people - 1);
      before = fewer == 0 ? 0 : Math.min(fewer, best(people));
      each.put(people, before);
    }
    return before;
  }

  /**
   * Of the best seating, which alone is looked at more finely than whole kilograms. Another one is
   * walked up only where it carries more than the best so far.
   */
  private double best(int people) {
    double most = 0;
    for (Seating seating : Seating.of(people, places)) {
      double more = Math.max(lightest, Math.round((most + FINE) * 10) / 10.0);
      if (more <= heaviest && judge.meetsAll(seating, more)) {
        most = Math.max(most, finely(seating));
      }
    }
    return most;
  }

  private double finely(Seating seating) {
    double whole = upTo(seating);
    return whole == 0 || whole == heaviest ? whole : between(seating, whole, whole + 1, FINE);
  }

  /**
   * The whole mass up to which everybody in a seating may weigh, every mixture and every mass below
   * it included; nought when even the lightest may not. Nobody's is endless where the boat empty
   * meets everything.
   */
  double upTo(Seating seating) {
    return walked(seating, heaviest).carried();
  }

  /** Whether everybody in a seating may weigh so much, every mass below it included. */
  private boolean carries(Seating seating, double mass) {
    Walk before = walks.getOrDefault(seating, Walk.NOT_BEGUN);
    if (before.carried() >= mass) {
      return true;
    }
    if (before.fails() <= mass || before.isAtItsEnd()) {
      return false;
    }
    if (seating.people() > 0 && !judge.meetsAll(seating, mass)) {
      walks.put(seating, new Walk(before.carried(), before.stride(), mass));
      return false;
    }
    return walked(seating, mass).carried() >= mass;
  }

  /** Walked up at least to a mass, or to where it fails before. */
  private Walk walked(Seating seating, double mass) {
    Walk now = walks.getOrDefault(seating, Walk.NOT_BEGUN);
    if (!now.isBegun()) {
      now = begun(seating, now.fails());
    }
    while (!now.isAtItsEnd() && now.carried() < Math.min(mass, heaviest)) {
      now = oneStride(seating, now);
    }
    walks.put(seating, now);
    return now;
  }

  private Walk begun(Seating seating, double fails) {
    if (seating.people() == 0) {
      return new Walk(judge.meetsAll(seating, 0) ? Double.POSITIVE_INFINITY : 0, 0, fails);
    }
    return judge.meetsAll(seating, lightest)
        ? new Walk(lightest, judge.stride(seating, lightest), fails)
        : new Walk(0, 0, lightest);
  }

  private Walk oneStride(Seating seating, Walk from) {
    double each = Math.floor(from.stride() / seating.people());
    double length = Math.max(LEAST_STRIDE, Math.min(MOST_STRIDE, each));
    double next = Math.min(Math.min(heaviest, from.fails()), from.carried() + length);
    double stride = next < from.fails() ? judge.stride(seating, next) : -1;
    if (stride >= 0) {
      return new Walk(next, stride, from.fails());
    }
    double carried = between(seating, from.carried(), next, 1);
    return new Walk(carried, 0, carried + 1);
  }

  /**
   * The last mass that all mixtures meet everything at. What is met at both ends of a stride is met
   * between them, so the mixture that fails is asked there first, and the others only at what it
   * carries.
   */
  private double between(Seating seating, double meets, double fails, double step) {
    double end = fails;
    OptionalInt stop = judge.firstNotMet(seating, end, 0);
    while (stop.isPresent() && end > meets) {
      int mixture = stop.getAsInt();
      end = Bisection.last(meets, end, step, each -> judge.meets(seating, each, mixture));
      stop = end > meets ? judge.firstNotMet(seating, end, mixture) : OptionalInt.empty();
    }
    return end;
  }
}
