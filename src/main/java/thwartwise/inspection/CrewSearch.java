package thwartwise.inspection;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.DoublePredicate;
import java.util.function.Predicate;
import thwartwise.boat.Place;
import thwartwise.rules.RuleSet;

/**
 * How many people, and how heavy. So many are recommended only when every smaller crew is too, and
 * when some seating of them meets every check for every mixture of masses; seatings that fail are
 * excluded by name.
 */
final class CrewSearch {
  private final Judge judge;
  private final double design;
  private final double lightest;
  private final double heaviest;
  private final List<Place> places;
  private final int room;
  private final Map<Integer, Seating> lastFound = new ConcurrentHashMap<>();
  private volatile Optional<Seating> lastLost = Optional.empty();

  CrewSearch(Judge judge, RuleSet rules) {
    this.judge = judge;
    this.design = rules.value("design-person");
    this.lightest = rules.value("lightest-person");
    this.heaviest = rules.value("heaviest-person");
    this.places = judge.craft().boat().places();
    this.room = places.stream().mapToInt(Place::people).sum();
  }

  /** Every seating of nobody up to so many people that is allowed at a mass. */
  List<Seating> seatings(int people, double mass) {
    List<Seating> seatings = new ArrayList<>();
    for (int n = 0; n <= people; n++) {
      seatings.addAll(allowed(n, mass));
    }
    return seatings;
  }

  int room() {
    return room;
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

  int people() {
    return most(s -> judge.meetsAll(s, design));
  }

  private int most(Predicate<Seating> meets) {
    if (!meets.test(nobody())) {
      return 0;
    }
    int people = 0;
    while (people < room && !allowed(people + 1, meets).isEmpty()) {
      people++;
    }
    return people;
  }

  /** Seatings of so many people that meet everything when nobody is heavier than this. */
  List<Seating> allowed(int people, double mass) {
    return allowed(people, s -> judge.meetsAll(s, mass));
  }

  private List<Seating> allowed(int people, Predicate<Seating> meets) {
    return Seating.of(people, places).parallelStream().filter(meets).toList();
  }

  private Seating nobody() {
    return Seating.of(0, places).get(0);
  }

  /** Seatings of 1 to so many people that fail at this mass. */
  List<List<String>> excluded(int people, double mass) {
    List<List<String>> excluded = new ArrayList<>();
    for (int n = 1; n <= people; n++) {
      List<Seating> allowed = allowed(n, mass);
      Seating.of(n, places).stream()
          .filter(s -> !allowed.contains(s))
          .forEach(s -> excluded.add(s.places(judge.craft())));
    }
    return excluded;
  }

  /**
   * The greatest whole mass each of so many people may have without losing a seating that people of
   * the design mass have.
   */
  double eachUpToKeepingSeats(int people) {
    return greatest(design, m -> keepsSeats(people, m));
  }

  // The seating that was lost last time is asked first; likewise below the one that was found.
  private boolean keepsSeats(int people, double mass) {
    if (lastLost.filter(s -> !judge.meetsAll(s, mass)).isPresent()) {
      return false;
    }
    for (int n = people; n >= 1; n--) {
      Optional<Seating> lost =
          allowed(n, design).parallelStream().filter(s -> !judge.meetsAll(s, mass)).findAny();
      if (lost.isPresent()) {
        lastLost = lost;
        return false;
      }
    }
    return true;
  }

  /**
   * The greatest whole mass each of so many people may have, so that they and every smaller crew
   * still find a seating; 0 when even the lightest do not.
   */
  double eachUpTo(int people) {
    if (people > room || !emptyBoatMeets() || !findSeats(people, lightest)) {
      return 0;
    }
    return greatest(lightest, m -> findSeats(people, m));
  }

  private boolean findSeats(int people, double mass) {
    for (int n = people; n >= 1; n--) {
      if (!isSeated(n, mass)) {
        return false;
      }
    }
    return true;
  }

  private boolean isSeated(int exactly, double mass) {
    Seating before = lastFound.get(exactly);
    if (before != null && judge.meetsAll(before, mass)) {
      return true;
    }
    Optional<Seating> found =
        Seating.of(exactly, places).parallelStream().filter(s -> judge.meetsAll(s, mass)).findAny();
    found.ifPresent(s -> lastFound.put(exactly, s));
    return found.isPresent();
  }

  private double greatest(double meets, DoublePredicate fits) {
    if (fits.test(heaviest)) {
      return heaviest;
    }
    double low = meets;
    double high = heaviest;
    while (high - low > 1) {
      double middle = Math.floor((low + high) / 2);
      if (fits.test(middle)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
