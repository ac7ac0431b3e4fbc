package thwartwise.crew;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import thwartwise.boat.Loading;
import thwartwise.geometry.Vector3;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.rules.RuleSet;

/**
 * The greatest mass of people, and whether anything beside them could come to more, without the
 * table that tells how heavy each number of people may be. One number of people decides; each of
 * the others is looked into no farther than it takes to prove that it carries less.
 */
public final class CapacitySearch {
  private static final double NUMERIC = 1e-6;

  private final CrewAssessment assessment;
  private final CrewSearch search;
  private final FormulaCaps caps;
  private final RuleSet rules;
  private final double design;
  private final double heaviest;
  private final Supplier<List<Vector3>> spots;

  /** A matter of speed alone. */
  private volatile Extra lastRefused = new Extra(0, 0);

  /** Something more aboard, by its spot, and the crew that it is tried with, both by number. */
  private record Extra(int spot, int crew) {}

  CapacitySearch(CrewAssessment assessment, CrewSearch search, FormulaCaps caps, RuleSet rules) {
    this.assessment = assessment;
    this.search = search;
    this.caps = caps;
    this.rules = rules;
    this.design = rules.value("design-person");
    this.heaviest = rules.value("heaviest-person");
    this.spots = Lazy.of(() -> LoadSearch.spots(assessment.model()));
  }

  /**
   * The least that each of so many may be held to, where so many adults are carried, kg. Somebody
   * alone is no small child, whatever seat is left. Up to one person more than adults are carried,
   * children may fill the seats. Of more than that nobody is told who is lighter than somebody who
   * may go alone: it would read as permission for a crowd of children.
   */
  double least(int people, int adults) {
    boolean children = people > 1 && people <= adults + 1;
    return rules.value(children ? "lightest-person" : "lone-person");
  }

  /** How many people may be told of. */
  int most() {
    return Math.min(search.room(), caps.heads());
  }

  /** Of any number of people, kg. */
  double greatestMass(int adults) {
    double greatest = 0;
    for (int people : likeliestFirst(adults)) {
      if (people == adults || comesTo(people, next(people, greatest), adults)) {
        double each = Math.min(search.massLimit(people), caps.room() / people);
        greatest = Math.max(greatest, each < least(people, adults) ? 0 : people * each);
      }
    }
    return greatest;
  }

  /** Whether people come to so much, whatever their number. */
  boolean comesTo(double mass, int adults) {
    return mass <= caps.room()
        && likeliestFirst(adults).stream().anyMatch(n -> comesTo(n, atLeast(n, mass), adults));
  }

  private boolean comesTo(int people, double each, int adults) {
    double all = Math.max(each, least(people, adults));
    return each <= Math.min(heaviest, caps.room() / people)
        && search.mayCarry(people, all)
        && search.carryEach(people, all);
  }

  /** The number of adults, for what adults carry is mostly the most; then more people and fewer. */
  private List<Integer> likeliestFirst(int adults) {
    List<Integer> numbers = new ArrayList<>();
    IntStream.rangeClosed(Math.max(1, adults), most()).forEach(numbers::add);
    IntStream.range(1, adults).forEach(n -> numbers.add(adults - n));
    return numbers;
  }

  /** The first mass of each, to 0.1 kg, with which so many come to more. */
  private static double next(int people, double mass) {
    return (Math.floor(10 * mass / people + NUMERIC) + 1) / 10;
  }

  /** The same with which they come to as much. */
  private static double atLeast(int people, double mass) {
    return Math.ceil(10 * mass / people - NUMERIC) / 10;
  }

  /**
   * Whether so many people or fewer, none heavier than an adult, might with something besides come
   * to more than a mass. False proves that they do not.
   *
   * @param mass that no number of people comes to more than by themselves, kg
   */
  boolean mayLoadExceed(double mass, int adults) {
    return IntStream.rangeClosed(1, most())
        .map(n -> most() + 1 - n)
        .anyMatch(n -> mayLoadExceed(mass, n, adults));
  }

  private boolean mayLoadExceed(double mass, int people, int adults) {
    if (people <= adults) {
      int extra = more(mass, people * design);
      return mayLeave(people, extra, s -> mayLeave(s, design, extra));
    }
    OptionalDouble each = mostEach(people, mass, adults);
    return each.isPresent() && mayLoadExceed(mass, people, adults, each.getAsDouble());
  }

  // How heavy each may be is one of some whole kilograms and what lies above it: each of them is
  // asked, with as much besides as it then takes to come to more. What lighter people would need
  // besides is more still. Besides more people there is never room for more than besides fewer of
  // them: adults, everybody heavy alone, tell where no lighter people need be asked.
  private boolean mayLoadExceed(double mass, int people, int adults, double most) {
    int least = (int) least(people, adults);
    int first = (int) most;
    for (int heavy = first; heavy >= least; heavy--) {
      int each = heavy;
      int extra = more(mass, people * Math.min(heavy + 1, most));
      if (Integer.bitCount(first - heavy) <= 1
          && !mayLeave(adults, extra, s -> allHeavyLeave(s, design, extra))) {
        return false;
      }
      if (mayLeave(people, extra, s -> mayLeave(s, each, extra))) {
        return mayLoadExceedAsFound(mass, people);
      }
    }
    return false;
  }

  /** The same once it is known how heavy each may be. */
  private boolean mayLoadExceedAsFound(double mass, int people) {
    double each = Math.min(search.massLimit(people), caps.room() / people);
    double heavy = Math.min(Math.floor(each), design);
    int then = more(mass, people * Math.min(each, design));
    return mayLeave(people, then, s -> mayLeave(s, heavy, then));
  }

  /** The least besides people of so much that comes to more, whole kg. */
  private static int more(double mass, double people) {
    return (int) Math.floor(mass - people) + 1;
  }

  /** More than any of so many people may be, as a quick look tells; none where there are not. */
  private OptionalDouble mostEach(int people, double mass, int adults) {
    double least = least(people, adults);
    double high = Math.min(design, mass / people);
    if (!(least <= high) || !search.mayCarry(people, least)) {
      return OptionalDouble.empty();
    }
    double low = least;
    while (high - low > 1) {
      double middle = Math.round((low + high) / 2);
      if (search.mayCarry(people, middle)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return OptionalDouble.of(high);
  }

  private boolean mayLeave(int people, int mass, Predicate<Seating> mayLeave) {
    return mass <= LoadSearch.MOST && search.likeliestFirst(people).stream().anyMatch(mayLeave);
  }

  /** One spot that does not carry so much proves that a seating leaves less. */
  boolean mayLeave(Seating seating, double heavy, int mass) {
    return allHeavyLeave(seating, heavy, mass)
        && mayLeave(assessment.loadedBoats(seating, heavy), mass);
  }

  /** The same of everybody heavy: mostly they decide. */
  private boolean allHeavyLeave(Seating seating, double heavy, int mass) {
    return mayLeave(assessment.loadedBoats(seating, heavy).subList(0, 1), mass);
  }

  // What refused last time is asked first: mostly it refuses again, and the rest need no asking.
  private boolean mayLeave(List<LoadedBoat> loadedBoats, int mass) {
    Extra last = lastRefused;
    if (last.crew < loadedBoats.size() && !leaves(last, loadedBoats, mass)) {
      return false;
    }
    for (int spot = 0; spot < spots.get().size(); spot++) {
      for (int crew = 0; crew < loadedBoats.size(); crew++) {
        Extra extra = new Extra(spot, crew);
        if (!extra.equals(last) && !leaves(extra, loadedBoats, mass)) {
          lastRefused = extra;
          return false;
        }
      }
    }
    return true;
  }

  private boolean leaves(Extra extra, List<LoadedBoat> loadedBoats, int mass) {
    Loading.Weight weight = new Loading.Weight(mass, spots.get().get(extra.spot));
    return assessment.meets(loadedBoats.get(extra.crew).with(weight));
  }
}
