package thwartwise.crew;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import thwartwise.boat.BoatModel;
import thwartwise.checks.SwampedCrew;
import thwartwise.crew.CapacitySearch.ExtraWeight;
import thwartwise.crew.Recommendation.QuestionMargin;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.rules.CapacityFigure;
import thwartwise.rules.RuleSet;

/**
 * The making of the recommendation: our own search, the published formulas that apply, and the
 * lowest of them.
 */
public final class Limits {
  private final BoatModel model;
  private final RuleSet rules;
  private final List<CapacityFigure> figures;
  private final FormulaCaps caps;
  private final CrewSearch search;
  private final CapacitySearch capacity;
  private final CrewAssessment assessment;
  private final double design;
  private final Supplier<List<Row>> rows = Lazy.of(this::allRows);
  private final Supplier<List<ExtraWeight>> besides = Lazy.of(this::allBesides);

  public Limits(CrewAssessment assessment, RuleSet rules, List<CapacityFigure> figures) {
    this.assessment = assessment;
    this.model = assessment.model();
    this.rules = rules;
    this.figures = figures;
    this.caps = new FormulaCaps(figures, model.boat().kitMass());
    this.search = new CrewSearch(assessment, rules);
    this.capacity = new CapacitySearch(assessment, search, caps, rules);
    this.design = rules.value("design-person");
  }

  /** The crew for the other figures: the recommended one, or one light person. */
  public record Crew(int people, double each, List<Seating> seatings) {}

  /** The number of adults of the design mass, published formulas included. */
  public int people() {
    return Math.min(search.people(), caps.people(design));
  }

  public Crew crew(int people) {
    if (people > 0) {
      return new Crew(people, design, search.allowed(people, design));
    }
    double light = Math.floor(Math.min(search.massLimit(1), caps.room()));
    return light >= rules.value("lone-person")
        ? new Crew(1, light, search.allowed(1, light))
        : new Crew(0, 0, search.allowed(0, 0));
  }

  /**
   * The least mass to which each of a number of people may be limited, where a number of adults are
   * carried, kg.
   */
  public double least(int people, int adults) {
    return capacity.least(people, adults);
  }

  /** The first allowed seating of this number of adults. */
  public Optional<Seating> firstSeating(int people) {
    return search.firstAllowed(people, design);
  }

  /** Why nobody is recommended, not even one light person; empty when somebody is. */
  List<Refusal> refusals() {
    boolean adult =
        search.emptyBoatMeets() && caps.room() >= design && !search.allowed(1, design).isEmpty();
    Crew crew = adult ? new Crew(1, design, List.of()) : crew(0);
    return crew.people() > 0 ? List.of() : reasons(0, crew, List.of());
  }

  public Recommendation recommendation(List<Refusal> outside) {
    return recommendation(outside, Integer.MAX_VALUE, true);
  }

  /**
   * Only what {@link Recommendation#notAbove} needs: without the margins and the limits of lighter
   * people, and with the next person's failures only where it is below.
   *
   * @param people the number that another answer recommends
   */
  Recommendation bound(List<Refusal> outside, int people) {
    return recommendation(outside, people, false);
  }

  private Recommendation recommendation(List<Refusal> outside, int bounded, boolean whole) {
    int people = people();
    Crew crew = crew(people);
    boolean withheld = !outside.isEmpty() || crew.people() == 0;
    Capacity goal = capacity(people, !withheld);
    boolean governs = withheld || goal.people() < bounded;
    return new Recommendation(
        goal.people(),
        goal.crew(),
        goal.load(),
        withheld ? 0 : extra(crew),
        design,
        search.staysUpWith(),
        search.holdsUpWhenSwamped(),
        ifClaimedChambersProve(),
        governs ? governedBy(people) : Optional.empty(),
        governs ? List.copyOf(nextPersonBreaks(people)) : List.of(),
        withheld ? List.of() : search.excluded(people, design),
        withheld ? List.of() : crewLimits(whole),
        withheld,
        reasons(people, crew, outside),
        withheld || !whole ? List.of() : margins(crew),
        SwampedCrew.holdsOn(model, rules));
  }

  /** The figures of the recommendation alone, which cost a part of the work. */
  public Capacity capacity() {
    int people = people();
    if (people > 0) {
      double crew = capacity.greatestMass(people);
      return capacity(people, crew, load(capacity.greatestLoad(crew, people)));
    }
    return capacity(people, people > 0 || crew(0).people() > 0);
  }

  /** Whether as much as another boat carries is carried here; false proves nothing. */
  boolean carries(Capacity other) {
    double kit = model.boat().kitMass();
    double load = Math.max(other.load(), other.room() + kit);
    return other.people() <= caps.people(design)
        && load <= caps.load()
        && search.carryEach(other.people(), design)
        && capacity.comesTo(Math.max(other.crew(), load - kit), other.people());
  }

  /** False proves that there are fewer adults, or as many and a lighter crew. */
  boolean mayReach(Capacity goal) {
    return goal.crew() == 0
        || mayReachAtOnce(goal)
            && (people() > goal.people()
                || people() == goal.people() && capacity.comesTo(goal.crew(), goal.people()));
  }

  /** The same by a quick look. */
  private boolean mayReachAtOnce(Capacity goal) {
    return search.mayCarry(goal.people() + 1, design)
        || IntStream.rangeClosed(1, search.room())
            .anyMatch(n -> search.mayCarry(n, goal.crew() / n));
  }

  private double greatestMass() {
    return rows.get().stream().mapToDouble(Row::mass).max().orElseThrow();
  }

  private Capacity capacity(int people, boolean anybody) {
    return anybody ? capacity(people, greatestMass(), load()) : Capacity.NOTHING;
  }

  private Capacity capacity(int people, double crew, double load) {
    double room = Math.max(0, load - model.boat().kitMass());
    return new Capacity(people, Math.floor(Math.min(crew, room)), load, room);
  }

  /** People, kit and everything else, published caps included, rounded down to whole kg. */
  private double load() {
    return load(rows.get().stream().mapToDouble(this::load).max().orElseThrow());
  }

  private double load(double besidesKit) {
    return Math.floor(Math.min(caps.load(), model.boat().kitMass() + besidesKit));
  }

  /** People, and extra weight while none of them is heavier than an adult, kg. */
  private double load(Row row) {
    return Math.max(row.mass(), row.people() * Math.min(row.each(), design) + besides(row).mass());
  }

  /** The extra weight, whole kg. */
  private double extra(Crew crew) {
    double room = Math.max(0, load() - model.boat().kitMass());
    return Math.floor(Math.min(extra(rows.get().get(crew.people() - 1)), room));
  }

  private double extra(Row row) {
    double people = row.people() * Math.min(row.each(), design);
    return Math.max(0, Math.min(besides(row).mass(), load() - model.boat().kitMass() - people));
  }

  private ExtraWeight besides(Row row) {
    return besides.get().get(row.people());
  }

  private List<QuestionMargin> margins(Crew crew) {
    List<LoadedBoat> loadedBoats =
        crew.seatings().stream()
            .flatMap(s -> assessment.loadedBoats(s, crew.each()).stream())
            .toList();
    return assessment.margins(loadedBoats).stream()
        .sorted(Comparator.comparingDouble(m -> m.margin().share()))
        .toList();
  }

  /** Never fewer than today, because an observed trial stays valid. */
  private int ifClaimedChambersProve() {
    boolean anyClaimed =
        model.spaces().stream().anyMatch(s -> s.counting().ifProven() > s.counting().share());
    if (!anyClaimed) {
      return people();
    }
    int proven = proven(model.withClaimsProven()).people();
    return Math.max(people(), proven);
  }

  private Limits proven(BoatModel model) {
    return new Limits(
        new CrewAssessment(model, rules, assessment.balances(), assessment.widenings()),
        rules,
        figures);
  }

  /**
   * One number of people.
   *
   * @param each the greatest mass of each, published caps included, kg
   */
  private record Row(int people, double each) {
    double mass() {
      return people * each;
    }
  }

  /**
   * For each number of people the greatest mass of each. A number above the recommended adults is
   * reported for one more at most, and others only where each may be as heavy as somebody who may
   * go alone, because a reader could take the rest as permission for a crowd of children.
   */
  private List<Row> allRows() {
    List<Row> all = new ArrayList<>();
    int people = people();
    for (int n = 1; n <= capacity.most(); n++) {
      double each = Math.min(search.massLimit(n), caps.room() / n);
      if (!(each >= capacity.least(n, people))) {
        return all;
      }
      all.add(new Row(n, each));
    }
    return all;
  }

  /**
   * By the number of people, from nobody, the extra weight with them or fewer of them, nobody
   * heavier than an adult.
   */
  private List<ExtraWeight> allBesides() {
    List<ExtraWeight> all = new ArrayList<>();
    all.add(capacity.extraWeight(Seating.of(0, model.boat().places()), 0, 0, LoadSearch.MOST));
    for (Row row : rows.get()) {
      double heavy = Math.min(Math.floor(search.massLimit(row.people())), design);
      List<Seating> seatings = search.allowed(row.people(), heavy);
      all.add(capacity.extraWeight(seatings, heavy, 0, all.get(row.people() - 1).mass()));
    }
    return all;
  }

  private List<Recommendation.CrewLimit> crewLimits(boolean whole) {
    return rows.get().stream().map(row -> crewLimit(row, whole)).toList();
  }

  private Recommendation.CrewLimit crewLimit(Row row, boolean whole) {
    List<Seating> less = search.below(row.people(), Math.floor(row.each()));
    return new Recommendation.CrewLimit(
        row.people(),
        Math.floor(row.each()),
        Math.floor(extra(row)),
        like(row),
        less.stream().map(s -> s.places(model)).toList(),
        whole ? lighter(row, less) : List.of());
  }

  private List<Recommendation.Lighter> lighter(Row row, List<Seating> less) {
    double least = capacity.least(row.people(), people());
    return less.stream()
        .filter(s -> search.massLimit(s) >= least)
        .map(s -> new Recommendation.Lighter(s.places(model), Math.floor(search.massLimit(s))))
        .toList();
  }

  /** Empty where there is no extra weight, or only one seating. */
  private List<String> like(Row row) {
    boolean one = Seating.of(row.people(), model.boat().places()).size() == 1;
    return one || extra(row) < 1 ? List.of() : besides(row).like().orElseThrow().places(model);
  }

  private Optional<LimitingFactor> governedBy(int people) {
    if (people < search.people()) {
      return caps.lowest(design).map(f -> f);
    }
    if (people == search.room()) {
      return Optional.of(full());
    }
    return next(people, Math.max(search.massLimit(people + 1) + 1, rules.value("lightest-person")))
        .map(b -> new LimitingFactor.ByCheck(b.first()));
  }

  private LimitingFactor full() {
    return search.ways().leftOut().orElseGet(LimitingFactor.NoPlaceLeft::new);
  }

  /**
   * The checks that one more person fails; if so many could go, those that fewer of that mass fail.
   */
  private Optional<FailedChecks> next(int people, double mass) {
    return FailedChecks.of(assessment, people + 1, mass)
        .or(() -> FailedChecks.of(assessment, people, mass));
  }

  private List<? extends Refusal> nextPersonBreaks(int people) {
    if (people < search.people()) {
      return caps.lowest(design).map(Refusal.ByLimit::new).stream().toList();
    }
    if (people == search.room()) {
      return List.of(new Refusal.ByLimit(full()));
    }
    return next(people, design).map(FailedChecks::breaches).orElse(List.of());
  }

  private List<Refusal> reasons(int people, Crew crew, List<Refusal> outside) {
    List<Refusal> reasons = new ArrayList<>(outside);
    if (!search.emptyBoatMeets()) {
      FailedChecks.of(assessment, 0, 0)
          .ifPresent(b -> b.breaches().forEach(c -> reasons.add(new Refusal.EmptyBoat(c))));
    } else if (people == 0 && crew.people() == 1) {
      reasons.add(new Refusal.OnlyLighter(design, crew.each()));
    } else if (search.room() == 0) {
      reasons.add(
          search
              .ways()
              .leftOut()
              .<Refusal>map(Refusal.ByLimit::new)
              .orElseGet(Refusal.NoPlaces::new));
    } else if (people == 0) {
      reasons.add(new Refusal.NotOnePerson(design, rules.value("lone-person")));
    }
    return reasons;
  }
}
