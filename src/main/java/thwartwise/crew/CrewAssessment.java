package thwartwise.crew;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import thwartwise.afloat.BalanceCache;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Body;
import thwartwise.boat.Loading;
import thwartwise.boat.Place;
import thwartwise.boat.SeatPositions.Packing;
import thwartwise.boat.Space;
import thwartwise.checks.CautiousChecks;
import thwartwise.checks.Check;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.CheckReading;
import thwartwise.checks.Role;
import thwartwise.crew.Recommendation.QuestionMargin;
import thwartwise.geometry.Box;
import thwartwise.loadcase.Allowance;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.rules.RuleSet;

/**
 * The assessment of seatings of one boat: whether a seating, with nobody heavier than a given mass,
 * meets every check that limits the crew, as measured and after the allowance, for every mixture of
 * masses.
 */
public final class CrewAssessment {
  /** The difference that sums in another order may have, kg. */
  private static final double NUMERIC = 1e-6;

  private final BoatModel model;
  private final RuleSet rules;
  private final boolean oneOrder;
  private final double lightest;
  private final Allowance allowance;
  private final Map<Seating, Double> widenings;
  private final List<Check> limiting;
  private final List<Check> volumes;
  private final List<Check> dry;
  private final List<Check> wet;
  private final List<Check> soonest;
  private final double liftEach;
  private final BalanceCache balances;
  private final boolean edgesStayOut;

  /** The check to ask first next time; only for speed. */
  private volatile Check lastRefusedBy;

  private final Map<SeatingQuestion, Boolean> known = new ConcurrentHashMap<>();
  private final Map<Allowance, Double> spareEmpty = new ConcurrentHashMap<>();
  private final Map<Seating, Integer> lastStop = new ConcurrentHashMap<>();

  private record SeatingQuestion(Seating seating, double heaviest, List<Check> checks) {}

  public CrewAssessment(BoatModel model, RuleSet rules) {
    this(model, rules, new BalanceCache());
  }

  /**
   * @param balances equilibria found for this boat and for others of the same hull
   */
  public CrewAssessment(BoatModel model, RuleSet rules, BalanceCache balances) {
    this(model, rules, balances, Map.of());
  }

  /**
   * @param widenings seatings that are not sure enough under one allowance, with the number of
   *     allowances to apply instead
   */
  public CrewAssessment(
      BoatModel model, RuleSet rules, BalanceCache balances, Map<Seating, Double> widenings) {
    this.widenings = Map.copyOf(widenings);
    this.balances = balances;
    this.model = model;
    this.oneOrder =
        model.isSymmetric() && model.boat().places().stream().noneMatch(Place::hasLength);
    this.rules = rules;
    this.lightest = rules.value("lightest-person");
    this.allowance = Allowance.of(rules, model);
    this.limiting =
        CautiousChecks.of(rules, model).stream().filter(c -> c.role() == Role.LIMITS_CREW).toList();
    this.dry = limiting.stream().filter(c -> !c.aboutSwamped()).toList();
    this.volumes = limiting.stream().filter(Check::byVolumesAlone).toList();
    this.wet = limiting.stream().filter(c -> c.aboutSwamped() && !c.byVolumesAlone()).toList();
    this.soonest = Stream.of(volumes, dry, wet).flatMap(List::stream).toList();
    this.lastRefusedBy = soonest.get(0);
    this.liftEach = rules.value("swamped-lift-per-person");
    this.edgesStayOut =
        Stream.of("freeboard-at-rest", "freeboard-at-rest-canoe", "freeboard-heeled")
            .allMatch(limit -> rules.value(limit) >= 0);
  }

  public BoatModel model() {
    return model;
  }

  /** The number of allowances by seating, where one is not enough. */
  public Map<Seating, Double> widenings() {
    return widenings;
  }

  /** The allowance for a loaded boat: one, or more where its seating needs them. */
  public Allowance allowance(LoadedBoat loadedBoat) {
    if (widenings.isEmpty()) {
      return allowance;
    }
    Double times = widenings.get(seating(loadedBoat));
    return times == null ? allowance : allowance.times(times);
  }

  /** The same boat with other widenings. */
  CrewAssessment widened(Map<Seating, Double> others) {
    return new CrewAssessment(model, rules, balances, others);
  }

  /** The number of allowances with which a seating allows nobody so heavy. */
  public double refusing(Seating seating, double each) {
    double times = 1;
    do {
      times *= WidenedSeatings.STEP;
    } while (widened(Map.of(seating, times)).meetsAll(seating, each));
    return times;
  }

  /** The seating of the people aboard. */
  public Seating seating(LoadedBoat loadedBoat) {
    return new Seating(
        model.boat().places().stream().map(place -> sitting(loadedBoat, place)).toList());
  }

  private static int sitting(LoadedBoat loadedBoat, Place place) {
    return (int) loadedBoat.people().stream().filter(b -> place.name().equals(b.place())).count();
  }

  /** The cached equilibria of this boat and of others of the same hull. */
  public BalanceCache balances() {
    return balances;
  }

  private List<List<Double>> masses(Seating seating, double heaviest) {
    return CrewMasses.of(seating, lightest, heaviest, oneOrder);
  }

  public boolean staysUp(Seating seating, double heaviest) {
    return meets(new SeatingQuestion(seating, heaviest, dry));
  }

  boolean heldUp(Seating seating, double heaviest) {
    return isLifted(seating, heaviest) && meets(new SeatingQuestion(seating, heaviest, wet));
  }

  public boolean meetsAll(Seating seating, double heaviest) {
    return isLifted(seating, heaviest) && staysUp(seating, heaviest) && heldUp(seating, heaviest);
  }

  private boolean isLifted(Seating seating, double heaviest) {
    return meets(new SeatingQuestion(seating, heaviest, volumes));
  }

  /** The checks that limit the crew, asked of one loading as measured or after the allowance. */
  record Asked(LoadedBoat loadedBoat, List<Check> checks) {
    Asked with(Loading.Weight extra) {
      return new Asked(loadedBoat.with(extra), checks);
    }
  }

  /** The question whether a loading meets some of the checks under one allowance. */
  Asked asked(LoadedBoat loadedBoat, Allowance taken, List<Check> checks) {
    Allowance off = taken.equals(Allowance.NONE) ? taken : allowance(loadedBoat);
    return new Asked(hurried(loadedBoat).under(off), checks);
  }

  /** The questions as measured and after the allowance. */
  List<Allowance> allowances() {
    return List.of(allowance, Allowance.NONE);
  }

  /** The checks that limit the crew, quick ones first. */
  List<Check> soonest() {
    return soonest;
  }

  /** The checks in two groups, of the boat afloat and swamped; quick ones first. */
  List<List<Check>> parts() {
    return List.of(Stream.concat(volumes.stream(), wet.stream()).toList(), dry);
  }

  /** The headroom of a loading to the limits of the crew. */
  Headroom headroom(Asked asked) {
    Headroom least = Headroom.UNLIMITED;
    for (Check check : refusingFirst(asked.checks)) {
      for (CheckReading reading : check.confirmedReadings(asked.loadedBoat)) {
        least = least.and(Headroom.of(reading, check.aboutSwamped()));
        if (!least.isMet()) {
          lastRefusedBy = check;
          return least;
        }
      }
    }
    return least;
  }

  /** Every mixture that grows with the heaviest person, as shares of the way from the lightest. */
  List<List<Double>> growing(Seating seating) {
    return CrewMasses.growing(seating, oneOrder);
  }

  public LoadedBoat loadedBoat(Seating seating, List<Double> masses) {
    return loadedBoat(seating, masses, Packing.SPREAD);
  }

  public LoadedBoat loadedBoat(Seating seating, List<Double> masses, Packing packing) {
    return LoadedBoat.of(model, seating.bodies(model, masses, packing));
  }

  public List<LoadedBoat> loadedBoats(Seating seating, double heaviest) {
    return masses(seating, heaviest).stream()
        .flatMap(masses -> seating.ways(model, masses).stream())
        .map(bodies -> LoadedBoat.of(model, bodies))
        .toList();
  }

  // This is not computed within the map, because other threads would wait for it.
  private boolean meets(SeatingQuestion asked) {
    Boolean before = known.get(asked);
    if (before != null) {
      return before;
    }
    List<LoadedBoat> loadedBoats = loadedBoats(asked.seating, asked.heaviest);
    boolean answer = allMeet(asked.seating, loadedBoats, t -> meets(t, asked.checks));
    known.put(asked, answer);
    return answer;
  }

  // The mixture that was refused last time is tried first, then everybody heavy, because a seating
  // that fails usually fails at once. The order does not change any answer.
  private boolean allMeet(
      Seating seating, List<LoadedBoat> loadedBoats, Predicate<LoadedBoat> meets) {
    int first = Math.min(lastStop.getOrDefault(seating, 0), loadedBoats.size() - 1);
    if (!meets.test(loadedBoats.get(first))) {
      return false;
    }
    OptionalInt stop =
        IntStream.range(0, loadedBoats.size())
            .parallel()
            .filter(i -> i != first && !meets.test(loadedBoats.get(i)))
            .findAny();
    stop.ifPresent(i -> lastStop.put(seating, i));
    return stop.isEmpty();
  }

  /** Whether one loaded boat, as it stands, meets every check that limits the crew. */
  public boolean meets(LoadedBoat loadedBoat) {
    return refusingFirst(soonest).stream().allMatch(check -> meets(loadedBoat, List.of(check)));
  }

  // The order does not change any answer, because every check must be met.
  private List<Check> refusingFirst(List<Check> checks) {
    Check first = lastRefusedBy;
    if (checks.size() == 1 || !checks.contains(first)) {
      return checks;
    }
    return Stream.concat(Stream.of(first), checks.stream().filter(c -> c != first)).toList();
  }

  /**
   * Whether this number of people could be held up at all, in any seating and with any one chamber
   * lost: no body lifts more than its own volume, and everything else lifts the same without them.
   * False proves that the lift is too small; true proves nothing.
   */
  public boolean mayBeLifted(List<Body> people) {
    return model.observedTrial().filter(seen -> seen.covers(people)).isPresent()
        || Stream.of(allowance, Allowance.NONE)
            .allMatch(a -> spareAtMost(people, a) >= liftEach * people.size() - NUMERIC);
  }

  private double spareAtMost(List<Body> people, Allowance taken) {
    double bodies =
        people.stream()
            .map(b -> b.withMass(b.mass() * taken.massFactor()))
            .mapToDouble(b -> model.waterDensity() * volume(b) - b.mass())
            .sum();
    return bodies + spareEmpty.computeIfAbsent(taken, this::spareEmpty);
  }

  /** The spare lift with the chamber lost that costs most. */
  private double spareEmpty(Allowance taken) {
    LoadedBoat empty = LoadedBoat.of(model, List.of()).under(taken);
    return Stream.concat(Stream.of(List.<Space>of()), model.spaces().stream().map(List::of))
        .mapToDouble(empty::spareBuoyancy)
        .min()
        .orElseThrow();
  }

  private static double volume(Body body) {
    return body.boxes().stream().mapToDouble(Box::volume).sum();
  }

  /**
   * The least margin of any reading as a share of its limit, as measured and after the allowance;
   * negative when something is not met.
   *
   * @param enough the search stops once it is below this
   */
  public double leastMargin(LoadedBoat loadedBoat, double enough) {
    double least = Double.POSITIVE_INFINITY;
    for (LoadedBoat t :
        List.of(hurried(loadedBoat).under(allowance(loadedBoat)), hurried(loadedBoat))) {
      for (Check check : soonest) {
        for (CheckReading reading : check.confirmedReadings(t)) {
          least = Math.min(least, reading.margin().share());
        }
        if (least < enough) {
          return least;
        }
      }
    }
    return least;
  }

  /** The worst reading of every check over some loaded boats, after the allowance. */
  List<QuestionMargin> margins(List<LoadedBoat> loadedBoats) {
    List<QuestionMargin> worst = new ArrayList<>();
    for (Check check : limiting) {
      List<List<CheckReading>> all =
          loadedBoats.parallelStream()
              .map(t -> check.readings(inFull(t).under(allowance(t))))
              .toList();
      int readings = all.stream().mapToInt(List::size).min().orElse(0);
      for (int i = 0; i < readings; i++) {
        int which = i;
        all.stream()
            .map(r -> r.get(which))
            .min(Comparator.comparingDouble(r -> r.margin().share()))
            .flatMap(QuestionMargin::of)
            .ifPresent(worst::add);
      }
    }
    return worst;
  }

  private boolean meets(LoadedBoat loadedBoat, List<Check> checks) {
    return Stream.of(allowance(loadedBoat), Allowance.NONE)
        .map(hurried(loadedBoat)::under)
        .allMatch(t -> refusingFirst(checks).stream().allMatch(check -> meets(t, check)));
  }

  private boolean meets(LoadedBoat hurried, Check check) {
    boolean met = allMet(check.confirmedReadings(hurried));
    if (!met) {
      lastRefusedBy = check;
    }
    return met;
  }

  // A hurried loaded boat stops where an edge is under water, which no sensible rule would allow.
  public LoadedBoat hurried(LoadedBoat loadedBoat) {
    return edgesStayOut ? loadedBoat.hurried(balances) : loadedBoat;
  }

  /** The loaded boat in full, with the cached equilibria of this boat. */
  public LoadedBoat remembering(LoadedBoat loadedBoat) {
    return loadedBoat.remembering(balances);
  }

  // For figures that are shown: every equilibrium is found from upright, and none twice.
  private LoadedBoat inFull(LoadedBoat loadedBoat) {
    return loadedBoat.remembering(balances).fromUpright();
  }

  private static boolean allMet(List<CheckReading> readings) {
    return readings.stream().allMatch(CheckReading::met);
  }

  /**
   * The number of readings that some mixture does not meet, as measured or after the allowance,
   * counted up to a bound.
   */
  int breached(Seating seating, double heaviest, int enough) {
    return breached(loadedBoats(seating, heaviest), enough);
  }

  int breached(List<LoadedBoat> loadedBoats, int enough) {
    Set<CheckQuestion> names = ConcurrentHashMap.newKeySet();
    loadedBoats.parallelStream()
        .map(this::hurried)
        .flatMap(t -> Stream.of(t, t.under(allowance(t))))
        .anyMatch(t -> addNotMet(t, names) >= enough);
    return names.size();
  }

  private int addNotMet(LoadedBoat loadedBoat, Set<CheckQuestion> names) {
    for (Check check : limiting) {
      check.confirmedReadings(loadedBoat).stream()
          .filter(r -> !r.met())
          .map(CheckReading::question)
          .forEach(names::add);
    }
    return names.size();
  }

  /**
   * The worst reading of every check that limits the crew and is not met, over all mixtures: as
   * measured if that is not met, otherwise after the allowance.
   */
  public List<Refusal.ByCheck> notMet(Seating seating, double heaviest) {
    return notMet(loadedBoats(seating, heaviest));
  }

  public List<Refusal.ByCheck> notMet(List<LoadedBoat> measured) {
    return notMet(measured, limiting);
  }

  /** The same for those checks alone that need the lift and no equilibrium. */
  List<Refusal.ByCheck> notLifted(List<LoadedBoat> measured) {
    return notMet(measured, volumes);
  }

  private List<Refusal.ByCheck> notMet(List<LoadedBoat> measured, List<Check> checks) {
    Map<CheckQuestion, Refusal.ByCheck> worst = new LinkedHashMap<>();
    List<LoadedBoat> whole = measured.stream().map(this::inFull).toList();
    List<LoadedBoat> cautious = whole.stream().map(t -> t.under(allowance(t))).toList();
    for (Check check : checks) {
      whole.forEach(t -> note(check.readings(t), false, worst));
      cautious.forEach(t -> note(check.readings(t), true, worst));
    }
    return List.copyOf(worst.values());
  }

  private static void note(
      List<CheckReading> readings,
      boolean afterAllowance,
      Map<CheckQuestion, Refusal.ByCheck> worst) {
    readings.stream()
        .filter(r -> !r.met())
        .forEach(
            r ->
                worst.merge(
                    r.question(), Refusal.ByCheck.of(r, afterAllowance), Refusal.ByCheck::worse));
  }

  /** The least margin of a loaded boat under the allowance, as a share. */
  public double nearness(LoadedBoat loadedBoat) {
    return limiting.stream()
        .flatMap(c -> c.readings(inFull(loadedBoat).under(allowance(loadedBoat))).stream())
        .mapToDouble(r -> r.margin().share())
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }
}
