package thwartwise.crew;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import thwartwise.boat.Place;
import thwartwise.rules.RuleSet;

/**
 * The search for how many people may go and how heavy they may be, for each number separately. Each
 * seating has a greatest mass for everybody in it, with all smaller masses allowed; a number of
 * people may weigh what the best of their seatings carries, and not more than one person fewer.
 * Seatings that carry less are excluded for that number alone, each from its own mass up.
 */
public final class CrewSearch {
  /** The resolution of masses, so that the sum of many people's is good to a kilogram, kg. */
  static final double FINE = 0.1;

  private final CrewAssessment assessment;
  private final double design;
  private final double lightest;
  private final double heaviest;
  private final List<Place> places;
  private final SeatingCount ways;
  private final LikelySeatings likely;
  private final Map<Seating, SeatingWalk> walks = new ConcurrentHashMap<>();
  private final Supplier<Integer> adults = Lazy.of(this::countAdults);
  private final Map<Integer, Double> each = new ConcurrentHashMap<>();

  public CrewSearch(CrewAssessment assessment, RuleSet rules) {
    this.assessment = assessment;
    this.design = rules.value("design-person");
    this.lightest = rules.value("lightest-person");
    this.heaviest = rules.value("heaviest-person");
    this.places = assessment.model().boat().places();
    this.ways = SeatingCount.of(assessment.model());
    this.likely = assessment.balances().other(LikelySeatings.class, LikelySeatings::new);
  }

  /** Every seating of up to this number of people that is allowed at a mass. */
  List<Seating> seatings(int people, double mass) {
    List<Seating> seatings = new ArrayList<>();
    for (int n = 0; n <= people; n++) {
      seatings.addAll(allowed(n, mass));
    }
    return seatings;
  }

  /** The number of people for whom there are places and whose seatings can all be tried. */
  int room() {
    return ways.tried();
  }

  SeatingCount ways() {
    return ways;
  }

  /** The empty boat must meet everything first. */
  boolean emptyBoatMeets() {
    return assessment.meetsAll(nobody(), 0);
  }

  public int staysUpWith() {
    return most(s -> assessment.staysUp(s, design));
  }

  public int holdsUpWhenSwamped() {
    return most(s -> assessment.heldUp(s, design));
  }

  /** The number of adults of the design mass, so that fewer of them find seats too. */
  public int people() {
    return adults.get();
  }

  private int countAdults() {
    int people = 0;
    while (emptyBoatMeets() && people < room() && anyCarries(people + 1, design)) {
      people++;
    }
    return people;
  }

  private boolean anyCarries(int people, double mass) {
    return likeliestFirst(people).stream().anyMatch(s -> carries(s, mass));
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

  /** Seatings of this number of people that meet everything when nobody is heavier than this. */
  public List<Seating> allowed(int people, double mass) {
    return Seating.of(people, places).parallelStream().filter(s -> carries(s, mass)).toList();
  }

  Optional<Seating> firstAllowed(int people, double mass) {
    return Seating.of(people, places).stream().filter(s -> carries(s, mass)).findFirst();
  }

  private Seating nobody() {
    return Seating.of(0, places).get(0);
  }

  /** Seatings of 1 up to this number of people that fail at this mass. */
  List<List<String>> excluded(int people, double mass) {
    List<List<String>> excluded = new ArrayList<>();
    for (int n = 1; n <= people; n++) {
      below(n, mass).forEach(s -> excluded.add(s.places(assessment.model())));
    }
    return excluded;
  }

  /** Seatings of this number of people that carry less than this mass. */
  List<Seating> below(int people, double mass) {
    return Seating.of(people, places).parallelStream().filter(s -> !carries(s, mass)).toList();
  }

  /**
   * The greatest mass that each of this number of people may have in some seating, down to 0.1 kg;
   * never more than fewer people may have, because somebody gets out first. Zero when even the
   * lightest may not go, or when there is no room for so many. The limit of fewer people is
   * computed only where it is less.
   */
  public double massLimit(int people) {
    if (people == 0) {
      return emptyBoatMeets() ? heaviest : 0;
    }
    if (people > room() || !emptyBoatMeets()) {
      return 0;
    }
    Double before = each.get(people);
    if (before == null) {
      before = notAboveFewer(people);
      each.put(people, before);
    }
    return before;
  }

  private double notAboveFewer(int people) {
    double least = best(people);
    for (int fewer = people - 1; fewer > 0 && least > 0; fewer--) {
      Double known = each.get(fewer);
      if (known != null) {
        return Math.min(known, least);
      }
      least = anyCarries(fewer, least) ? least : Math.min(best(fewer), least);
    }
    return least;
  }

  /** Whether this number of people, and any fewer of them, may each be so heavy. */
  boolean carryEach(int people, double mass) {
    return mass <= heaviest
        && people <= room()
        && emptyBoatMeets()
        && IntStream.rangeClosed(1, people)
            .allMatch(fewer -> anyCarries(people + 1 - fewer, Math.max(lightest, mass)));
  }

  /**
   * The limit of the best seating. Another seating is searched upward only where it carries more.
   */
  private double best(int people) {
    double most = 0;
    for (Seating seating : likeliestFirst(people)) {
      double more = Math.max(lightest, Math.round((most + FINE) * 10) / 10.0);
      SeatingWalk walk = walk(seating);
      if (more <= heaviest && walk.mayCarryAll(more) && walk.carried() > most) {
        most = walk.carried();
        likely.remember(seating);
      }
    }
    return most;
  }

  /**
   * Every seating of this number of people, the one that carries most, as far as is known, first.
   */
  List<Seating> likeliestFirst(int people) {
    return likely.first(Seating.of(people, places));
  }

  /**
   * The whole mass up to which everybody in a seating may weigh, with every mixture and every
   * smaller mass; zero when even the lightest may not. That of nobody is infinite where the empty
   * boat meets everything.
   */
  public double massLimit(Seating seating) {
    if (seating.people() == 0) {
      return emptyBoatMeets() ? Double.POSITIVE_INFINITY : 0;
    }
    return walk(seating).carried(heaviest);
  }

  /** Whether everybody in a seating may weigh so much, every smaller mass included. */
  boolean carries(Seating seating, double mass) {
    return seating.people() == 0 ? emptyBoatMeets() : walk(seating).carries(mass);
  }

  /**
   * A quick look: false proves that this number of people of that mass, or of the lightest, may not
   * go.
   */
  boolean mayCarry(int people, double mass) {
    double each = Math.max(lightest, mass);
    return each <= heaviest
        && likeliestFirst(people).stream().anyMatch(s -> walk(s).mayCarry(each));
  }

  /** The same, with every mixture of heavy and light people looked at. */
  boolean mayCarryMixed(int people, double mass) {
    double each = Math.max(lightest, mass);
    return each <= heaviest
        && likeliestFirst(people).stream().anyMatch(s -> walk(s).mayCarryMixed(each));
  }

  private SeatingWalk walk(Seating seating) {
    return walks.computeIfAbsent(
        seating, s -> new SeatingWalk(assessment, s, lightest, heaviest, design));
  }
}
