package thwartwise.crew;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import thwartwise.geometry.Vector3;
import thwartwise.rules.RuleSet;

/**
 * The search for the greatest mass of people, and for whether extra weight could make the total
 * larger, without the table of masses for each number of people. One number of people decides;
 * every other number is searched only far enough to prove that it carries less.
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

  /** The least extra weight known to be too much for a crew, whole kg. */
  private final Map<SeatedCrew, Integer> refused = new ConcurrentHashMap<>();

  /** By the number of people, the greatest extra weight as far as is known, whole kg. */
  private final NavigableMap<Integer, Integer> leaveAtMost = new ConcurrentSkipListMap<>();

  /** People in a seating, with the mass of the heavy ones, kg. */
  private record SeatedCrew(Seating seating, double heavy) {}

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
   * The least mass to which each of a number of people may be limited, where a number of adults are
   * carried, kg. A person alone is no small child, whatever seat is left. With up to one person
   * more than the adults carried, children may fill the seats. For more people the limit is never
   * below the mass of somebody who may go alone, because a reader could take it as permission for a
   * crowd of children.
   */
  double least(int people, int adults) {
    boolean children = people > 1 && people <= adults + 1;
    return rules.value(children ? "lightest-person" : "lone-person");
  }

  /** The greatest number of people to report. */
  int most() {
    return Math.min(search.room(), caps.heads());
  }

  /** The greatest mass of people over all numbers, kg. */
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

  /** Whether people come to this mass, whatever their number. */
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

  /**
   * The numbers to try: that of the adults first, because it usually carries the most; then more
   * people and fewer.
   */
  private List<Integer> likeliestFirst(int adults) {
    List<Integer> numbers = new ArrayList<>();
    IntStream.rangeClosed(Math.max(1, adults), most()).forEach(numbers::add);
    IntStream.range(1, adults).forEach(n -> numbers.add(adults - n));
    return numbers;
  }

  /** The least mass of each, to 0.1 kg, with which this number of people exceeds a total. */
  private static double next(int people, double mass) {
    return (Math.floor(10 * mass / people + NUMERIC) + 1) / 10;
  }

  /** The least mass of each with which this number of people reaches a total. */
  private static double atLeast(int people, double mass) {
    return Math.ceil(10 * mass / people - NUMERIC) / 10;
  }

  /**
   * The greatest mass of people, none heavier than an adult, with extra weight; of people alone
   * where that is no less.
   *
   * @param people that no number of people exceeds without extra weight, kg
   */
  double greatestLoad(double people, int adults) {
    double greatest = people;
    for (int number : likeliestFirst(adults)) {
      if (mayLoadExceed(greatest, number, adults)) {
        double all = number * Math.min(design, each(number, adults));
        int besides = extra(number, more(greatest, all), adults);
        greatest = Math.max(greatest, all + besides);
      }
    }
    return greatest;
  }

  /** False proves that this number of people with extra weight does not exceed a mass. */
  private boolean mayLoadExceed(double mass, int people, int adults) {
    return mayLeaveEnough(mass, people, adults)
        && each(people, adults) >= least(people, adults)
        && more(mass, people * Math.min(design, each(people, adults))) <= leaveAtMost(people);
  }

  // There is never room for more extra weight with more people than with fewer: where so little is
  // left, each has to be so heavy that a quick look usually shows that they are not carried.
  private boolean mayLeaveEnough(double mass, int people, int adults) {
    double least = least(people, adults);
    double over = mass - leaveAtMost(people);
    return people <= adults
        || people * least <= mass
            && over < mass
            && over < people * design
            && search.mayCarryMixed(people, Math.max(least, atLeast(people, over)));
  }

  /**
   * The greatest mass of each of a number of people, adults at the most, with whom extra weight is
   * allowed, kg.
   */
  private double each(int people, int adults) {
    return people <= adults ? design : Math.min(search.massLimit(people), caps.room() / people);
  }

  /** The mass of the heavy ones with extra weight, whole kg. */
  private double heavy(int people, int adults) {
    return people <= adults ? design : Math.min(Math.floor(search.massLimit(people)), design);
  }

  /** The least extra weight with which people of a mass exceed it, whole kg. */
  private static int more(double mass, double people) {
    return (int) Math.floor(mass - people) + 1;
  }

  /**
   * An upper bound of the extra weight with this number of people, none heavier than an adult,
   * whole kg.
   */
  private int leaveAtMost(int people) {
    return leaveAtMost.headMap(people, true).values().stream()
        .mapToInt(mass -> mass)
        .min()
        .orElse(LoadSearch.MOST);
  }

  /**
   * The extra weight with this number of people or fewer, whole kg; zero where it is less than is
   * asked for.
   */
  private int extra(int people, int asked, int adults) {
    int most = leaveAtMost(people);
    for (int number = people; number >= 0 && most >= asked; number--) {
      double heavy = number == 0 ? 0 : heavy(number, adults);
      int found = extraWeight(search.likeliestFirst(number), heavy, asked, most).mass();
      most = found == 0 ? asked - 1 : found;
      leaveAtMost.merge(number, most, Math::min);
    }
    return most < asked ? 0 : most;
  }

  /**
   * The extra weight besides people, whole kg, and how they sit then: in the seating that leaves
   * most. The least over all seatings would jump where the poorest of them comes to its limit and
   * is excluded, so that a boat a millimetre poorer carried more.
   *
   * @param like empty where there is none
   */
  record ExtraWeight(int mass, Optional<Seating> like) {}

  /**
   * The extra weight in the first seating that leaves most.
   *
   * @param asked zero where no seating leaves this much
   * @param most an upper bound
   */
  ExtraWeight extraWeight(List<Seating> seatings, double heavy, int asked, int most) {
    ExtraWeight best = new ExtraWeight(0, Optional.empty());
    for (Seating seating : seatings) {
      int more = Math.max(asked, best.mass + 1);
      if (more <= most && mayLeave(seating, heavy, more) && search.carries(seating, heavy)) {
        int mass = loadSearch(seating, heavy).extra(more, most);
        best = mass < more ? best : new ExtraWeight(mass, Optional.of(seating));
      }
    }
    return best;
  }

  /** A quick look: a single spot that carries less proves that a seating leaves less. */
  private boolean mayLeave(Seating seating, double heavy, int mass) {
    SeatedCrew crew = new SeatedCrew(seating, heavy);
    boolean leaves =
        mass < refused.getOrDefault(crew, Integer.MAX_VALUE)
            && loadSearch(seating, heavy).mayBe(mass);
    if (!leaves) {
      refused.merge(crew, mass, Math::min);
    }
    return leaves;
  }

  private LoadSearch loadSearch(Seating seating, double heavy) {
    return new LoadSearch(assessment, List.of(seating), heavy, spots.get());
  }
}
