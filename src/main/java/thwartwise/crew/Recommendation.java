package thwartwise.crew;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.CheckReading;
import thwartwise.checks.Margin;

/**
 * How many and how much. A recommendation, not a capacity plate.
 *
 * @param people adults of the design mass; the smaller of what stays up and what is held up
 * @param crew greatest mass of people, rounded down to whole kg
 * @param load greatest mass of people and everything not built in, rounded down to whole kg
 * @param extra part of that load besides people and the kit listed, whole kg
 * @param adult what an unnamed adult counts, dressed, kg
 * @param governedBy what stops the next person
 * @param nextPersonBreaks every check that the next person fails
 * @param excludedSeatings seatings that fail by themselves: the place of each person
 * @param crewLimits for each number of people up to one more than recommended, the greatest mass of
 *     each
 * @param withheld true when nothing is recommended
 * @param reasons why it is withheld or lower than hoped
 * @param margins of the recommended crew, the worst in any seating it is allowed, nearest to its
 *     limit first
 * @param heldOnTo whether its crew holds on to the swamped boat from the water and does not sit in
 *     it
 */
public record Recommendation(
    int people,
    double crew,
    double load,
    double extra,
    double adult,
    int staysUpWith,
    int holdsUpWhenSwamped,
    int ifClaimsProven,
    Optional<LimitingFactor> governedBy,
    List<Refusal> nextPersonBreaks,
    List<List<String>> excludedSeatings,
    List<CrewLimit> crewLimits,
    boolean withheld,
    List<Refusal> reasons,
    List<QuestionMargin> margins,
    boolean heldOnTo) {

  /** An adult who is too heavy by this little is mentioned, kg. */
  private static final double NEARLY = 3;

  public Recommendation {
    margins = List.copyOf(margins);
    nextPersonBreaks = List.copyOf(nextPersonBreaks);
    excludedSeatings = List.copyOf(excludedSeatings);
    crewLimits = List.copyOf(crewLimits);
    reasons = List.copyOf(reasons);
  }

  /** Nothing is recommended and nothing was searched. */
  static Recommendation withheld(double adult, List<Refusal> reasons) {
    return new Recommendation(
        0,
        0,
        0,
        0,
        adult,
        0,
        0,
        0,
        Optional.empty(),
        List.of(),
        List.of(),
        List.of(),
        true,
        reasons,
        List.of(),
        false);
  }

  /** Whether the boat's capacity was searched, if only to be withheld. */
  public boolean wasSearched() {
    return !withheld || governedBy.isPresent() || !nextPersonBreaks.isEmpty();
  }

  /**
   * One adult more than recommended, where each of so many may be only a little lighter than an
   * adult: a step in the number of adults that is hardly one in kilograms.
   */
  public Optional<CrewLimit> nearlyOneMore() {
    return crewLimits.stream()
        .filter(limit -> people > 0 && limit.people() == people + 1)
        .filter(limit -> limit.massLimit() < adult && limit.massLimit() >= adult - NEARLY)
        .findFirst();
  }

  /**
   * A copy that is nowhere above another answer for the same boat; nothing is recommended if the
   * other recommends nothing.
   */
  Recommendation notAbove(Recommendation other) {
    if (withheld || other.withheld) {
      return withheld ? this : other;
    }
    return new Recommendation(
        Math.min(people, other.people),
        Math.min(crew, other.crew),
        Math.min(load, other.load),
        Math.min(extra, other.extra),
        adult,
        Math.min(staysUpWith, other.staysUpWith),
        Math.min(holdsUpWhenSwamped, other.holdsUpWhenSwamped),
        Math.min(ifClaimsProven, other.ifClaimsProven),
        people > other.people ? other.governedBy : governedBy,
        people > other.people ? other.nextPersonBreaks : nextPersonBreaks,
        excludedSeatings,
        crewLimits.stream().flatMap(limit -> limit.notAbove(other.crewLimits)).toList(),
        false,
        reasons,
        margins,
        heldOnTo);
  }

  /**
   * A copy with lower limits for some numbers of people; mass of people, load and extra weight
   * follow them.
   *
   * @param lower for each number of people one limit that is not above this one; none for those of
   *     whom not even the lightest are to go
   * @param kit the mass of the kit listed, kg
   */
  public Recommendation lowered(List<CrewLimit> lower, double kit) {
    if (withheld) {
      return this;
    }
    double mass = greatest(lower, CrewLimit::mass);
    double most = mass < greatest(crewLimits, CrewLimit::mass) ? Math.min(crew, mass) : crew;
    double all = Math.floor(kit + Math.max(most, greatest(lower, l -> l.massWithExtra(adult))));
    return new Recommendation(
        people,
        most,
        Math.min(load, all),
        Math.min(extra, extraBesides(lower)),
        adult,
        staysUpWith,
        holdsUpWhenSwamped,
        ifClaimsProven,
        governedBy,
        nextPersonBreaks,
        excludedSeatings,
        lower,
        false,
        reasons,
        margins,
        heldOnTo);
  }

  private static double greatest(List<CrewLimit> limits, ToDoubleFunction<CrewLimit> mass) {
    return limits.stream().mapToDouble(mass).max().orElse(0);
  }

  private double extraBesides(List<CrewLimit> limits) {
    return limits.stream()
        .filter(l -> l.people == Math.max(1, people))
        .mapToDouble(CrewLimit::extraMass)
        .findFirst()
        .orElse(0);
  }

  /**
   * The limits of one number of people, none of them heavier than this.
   *
   * @param massLimit whole kg
   * @param extraMass extra weight besides them and the kit listed while nobody is heavier than an
   *     adult, whole kg; NaN in a record from before it was given for each number of people
   * @param extraSeating how they sit with that: the place of each person; empty where it makes no
   *     difference, and in a record from before it did
   * @param excludedSeatings seatings of so many that fail at that mass
   * @param lighter of those, the ones that lighter people may have
   */
  public record CrewLimit(
      int people,
      double massLimit,
      double extraMass,
      List<String> extraSeating,
      List<List<String>> excludedSeatings,
      List<Lighter> lighter) {
    public CrewLimit {
      extraSeating = List.copyOf(extraSeating);
      excludedSeatings = List.copyOf(excludedSeatings);
      lighter = List.copyOf(lighter);
    }

    /** The limits in a record from before each number of people had a figure of its own. */
    public CrewLimit(int people, double eachUpTo, List<List<String>> excludedSeatings) {
      this(people, eachUpTo, Double.NaN, List.of(), excludedSeatings, List.of());
    }

    /** The greatest mass of each in a seating, whole kg; empty where nobody may sit like that. */
    public OptionalDouble upTo(List<String> places) {
      return excludedSeatings.contains(places)
          ? lighter.stream()
              .filter(l -> l.places.equals(places))
              .mapToDouble(l -> Math.min(massLimit, l.massLimit))
              .findFirst()
          : OptionalDouble.of(massLimit);
    }

    /**
     * A copy with other figures, none of them above these, and with no extra weight where nobody
     * may sit any more as they sit with it.
     */
    public CrewLimit lowered(double each, double extra, List<Lighter> lighterPeople) {
      CrewLimit all =
          new CrewLimit(people, each, extra, extraSeating, excludedSeatings, lighterPeople);
      return extraSeating.isEmpty() || all.upTo(extraSeating).isPresent()
          ? all
          : new CrewLimit(people, each, 0, List.of(), excludedSeatings, lighterPeople);
    }

    /** The seatings of lighter people, where none of so many may be heavier than this, kg. */
    private List<Lighter> lighterUpTo(double each) {
      return lighter.stream().map(l -> new Lighter(l.places, Math.min(each, l.massLimit))).toList();
    }

    /** Of all these people, kg. */
    private double mass() {
      return people * massLimit;
    }

    /** Of all these people, none of them heavier than an adult, and of what is besides them, kg. */
    private double massWithExtra(double adult) {
      return people * Math.min(massLimit, adult) + Math.max(0, extraMass);
    }

    private Stream<CrewLimit> notAbove(List<CrewLimit> others) {
      return others.stream()
          .filter(o -> o.people == people)
          .map(
              o ->
                  new CrewLimit(
                      people,
                      Math.min(massLimit, o.massLimit),
                      Math.min(extraMass, o.extraMass),
                      extraSeating,
                      Stream.concat(excludedSeatings.stream(), o.excludedSeatings.stream())
                          .distinct()
                          .toList(),
                      lighterUpTo(o.massLimit)));
    }
  }

  /**
   * A seating that carries less than the best one of so many people.
   *
   * @param places the place of each person
   * @param massLimit whole kg
   */
  public record Lighter(List<String> places, double massLimit) {
    public Lighter {
      places = List.copyOf(places);
    }
  }

  /** The margin of one figure after the allowance. */
  public record QuestionMargin(CheckQuestion question, Margin margin) {

    /** The margin of a reading; empty without a value. */
    static Optional<QuestionMargin> of(CheckReading reading) {
      return reading.value().isEmpty()
          ? Optional.empty()
          : Optional.of(new QuestionMargin(reading.question(), reading.margin()));
    }
  }
}
