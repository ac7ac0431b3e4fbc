package thwartwise.inspection;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.function.DoubleSupplier;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thwartwise.advice.Advice;
import thwartwise.advice.AdviceComparison;
import thwartwise.advice.AdviceSearch;
import thwartwise.advice.InspectedBoat;
import thwartwise.advice.Progress;
import thwartwise.afloat.BalanceCache;
import thwartwise.boat.Assumption;
import thwartwise.boat.Boat;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Body;
import thwartwise.boat.SeatPositions.Packing;
import thwartwise.boat.Space;
import thwartwise.checks.CautiousChecks;
import thwartwise.checks.Check;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.CheckQuestion.Subject;
import thwartwise.checks.CheckReading;
import thwartwise.checks.Finding;
import thwartwise.checks.Findings;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.crew.AppliedRules;
import thwartwise.crew.Capacity;
import thwartwise.crew.CrewAnswer;
import thwartwise.crew.CrewAssessment;
import thwartwise.crew.CrewSeating;
import thwartwise.crew.Lazy;
import thwartwise.crew.Limits;
import thwartwise.crew.NamedPerson;
import thwartwise.crew.Recommendation;
import thwartwise.crew.Refusal;
import thwartwise.crew.Seating;
import thwartwise.inspection.Report.ChamberFigures;
import thwartwise.loadcase.Allowance;
import thwartwise.loadcase.Crew;
import thwartwise.loadcase.LoadCase;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.remedy.Change;
import thwartwise.rules.RuleBook;
import thwartwise.rules.RuleSet;
import thwartwise.rules.ValidWaters;
import thwartwise.spread.BoatSpread;
import thwartwise.spread.CaseFigures;
import thwartwise.spread.InputKind;
import thwartwise.spread.SpreadAssessment;

/** One whole run over a boat: states, findings, chambers, limits. */
public final class Inspection implements InspectedBoat {
  private final BoatModel model;
  private final LocalDate date;
  private final RuleBook book;
  private final AppliedRules applied;
  private final RuleSet rules;
  private final CrewAssessment assessment;
  private final Limits limits;
  private final Supplier<Recommendation> recommendation;
  private final Supplier<Capacity> capacity;
  private final Supplier<LoadedBoat> limit;
  private final Supplier<List<Finding>> atLimit;
  private final Supplier<List<Finding>> findings = Lazy.of(this::allFindings);
  private final Supplier<List<Finding>> limiting;
  private final boolean hurried;

  /** Whether an act is already forbidden for the crews of the comparison. */
  private final Predicate<CheckQuestion> noWorse;

  private Inspection(BoatModel model, RuleBook book, LocalDate date) {
    this(model, book, date, new BalanceCache(), Map.of());
  }

  /**
   * A boat with cached balances of its own or of another boat with the same hull.
   *
   * @param widenings of seatings that are not sure enough: how many allowances are taken off
   */
  Inspection(
      BoatModel model,
      RuleBook book,
      LocalDate date,
      BalanceCache balances,
      Map<Seating, Double> widenings) {
    this.date = date;
    this.book = book;
    this.applied = new AppliedRules(model, book, balances);
    this.model = applied.model();
    this.rules = applied.inForce();
    this.assessment = new CrewAssessment(this.model, rules, balances, widenings);
    this.limits = new Limits(assessment, rules, applied.caps());
    this.recommendation = Lazy.of(() -> applied.recommendation(limits));
    this.capacity = Lazy.of(() -> applied.capacity(limits));
    this.limit = Lazy.of(() -> atLimit(crewAtLimit()));
    this.atLimit = Lazy.of(this::atLimitFindings);
    this.limiting = Lazy.of(this::askWhatLimits);
    this.hurried = false;
    this.noWorse = act -> false;
  }

  /** The same boat with other people aboard, whose capacity is already known. */
  private Inspection(Inspection other, BoatModel model) {
    this.model = model;
    this.date = other.date;
    this.book = other.book;
    this.applied = other.applied;
    this.rules = other.rules;
    this.assessment = other.assessment;
    this.limits = other.limits;
    this.recommendation = other.recommendation;
    this.capacity = other.capacity;
    this.limit = other.limit;
    this.atLimit = other.atLimit;
    this.limiting = Lazy.of(this::askWhatLimits);
    this.hurried = false;
    this.noWorse = act -> false;
  }

  /**
   * This boat with the crew recommended for another one, to find which outcomes are worse, not by
   * how much.
   */
  private Inspection(Inspection same, InspectedBoat crewed) {
    this.model = same.model;
    this.date = same.date;
    this.book = same.book;
    this.applied = same.applied;
    this.rules = same.rules;
    this.assessment = same.assessment;
    this.limits = crewed.limits();
    this.recommendation = crewed::recommendation;
    this.capacity = same.capacity;
    this.limiting = same.limiting;
    this.hurried = true;
    this.noWorse = act -> crewed.forbidsAtLimit(act);
    this.limit = Lazy.of(() -> atLimit(crewAtLimit()));
    this.atLimit = Lazy.of(this::atLimitFindings);
  }

  /** The report under our own limits alone, without other rule sets and without advice. */
  public static Report of(Boat boat, RuleSet rules, LocalDate today) {
    return withoutAdvice(boat, RuleBook.of(rules), today);
  }

  /**
   * The report on the boat as it stands on the given day, under every rule set that applies to it,
   * with advice.
   *
   * @throws thwartwise.hull.UnusableBoat when the measurements contradict each other
   */
  public static Report of(Boat boat, RuleBook book, LocalDate today) {
    return of(boat, book, today, Progress.UNHEARD);
  }

  /** The same with reports of progress. */
  public static Report of(Boat boat, RuleBook book, LocalDate today, Progress progress) {
    return of(boat, book, today, progress, report -> {});
  }

  /** The same with a listener that receives the answer before advice is searched. */
  public static Report of(Boat boat, RuleBook book, LocalDate today, InspectionProgress progress) {
    return of(boat, book, today, progress, progress::answered);
  }

  /**
   * The same, judged by the spread of the measurements: what falls short in more than 5 of 100
   * boats measured like this does not count as met. The number of people that leaves is found
   * before anything is answered; acts and information follow.
   *
   * @param spreads how far a measurement may be off, by method
   */
  public static Report judged(
      Boat boat, RuleBook book, RuleSet spreads, LocalDate today, InspectionProgress progress) {
    SpreadJudgement judgement = judgement(boat, book, spreads, Set.of(), today, progress);
    progress.answered(judgement.judgedByCrew());
    return judgement.recorded().with(AdviceSearch.of(judgement.inspection(), progress));
  }

  /** The same judgement, without advice. */
  public static JudgedBoat judgedWithoutAdvice(
      Boat boat, RuleBook book, RuleSet spreads, LocalDate today, Progress progress) {
    return judgement(boat, book, spreads, Set.of(), today, progress);
  }

  /**
   * The same of a boat that was changed and not measured again: never above the bounds that it kept
   * from before the change ({@link BoatModel#fittedOut}).
   */
  public static JudgedBoat judgedWithoutAdvice(
      BoatModel changed, RuleBook book, RuleSet spreads, LocalDate today, Progress progress) {
    return judgement(changed.boat(), changed, book, spreads, Set.of(), today, progress);
  }

  /**
   * How sure the answer is, alone. Empty for measurements that no boat can have, and for a boat
   * that the program does not cover.
   *
   * @param better kinds of measurement that were taken with more care
   */
  public static Optional<BoatSpread> spreadOf(
      Boat boat,
      RuleBook book,
      RuleSet spreads,
      Set<InputKind> better,
      LocalDate today,
      Progress progress) {
    return judgement(boat, book, spreads, better, today, progress).spread();
  }

  private static SpreadJudgement judgement(
      Boat boat,
      RuleBook book,
      RuleSet spreads,
      Set<InputKind> better,
      LocalDate today,
      Progress progress) {
    return judgement(boat, BoatModel.of(boat, today), book, spreads, better, today, progress);
  }

  private static SpreadJudgement judgement(
      Boat measured,
      BoatModel model,
      RuleBook book,
      RuleSet spreads,
      Set<InputKind> better,
      LocalDate today,
      Progress progress) {
    BalanceCache balances = new BalanceCache();
    return new SpreadJudgement.Search(
            (people, widenings) ->
                new Inspection(model.withAboard(people), book, today, balances, widenings),
            spreads,
            better,
            new CaseFigures(),
            progress)
        .of(measured);
  }

  SpreadAssessment spread(
      Boat measured, RuleSet spreads, Set<InputKind> better, CaseFigures known) {
    return new SpreadAssessment(measured, assessment, limits, rules, spreads, better, known);
  }

  /**
   * Which of these people may go, with at least as much taken off their seatings as here.
   *
   * @param load the load limit that is reported, kg
   * @param unsure of loaded boats those that are not sure enough
   */
  CrewAnswer seats(
      List<NamedPerson> members, DoubleSupplier load, UnaryOperator<List<LoadedBoat>> unsure) {
    return CrewSeating.of(applied, assessment, members, load, unsure);
  }

  /** The number of allowances with which a seating allows nobody so heavy. */
  double refusing(Seating seating, double each) {
    return assessment.refusing(seating, each);
  }

  private static Report of(
      Boat boat,
      RuleBook book,
      LocalDate today,
      Progress progress,
      Consumer<Report> withoutAdvice) {
    Inspection inspection = new Inspection(BoatModel.of(boat, today), book, today);
    progress.at(Progress.Stage.CREW, 0, 1);
    Report report = inspection.report();
    withoutAdvice.accept(report);
    return report.with(AdviceSearch.of(inspection, progress));
  }

  /** The same without advice. */
  public static Report withoutAdvice(Boat boat, RuleBook book, LocalDate today) {
    return new Inspection(BoatModel.of(boat, today), book, today).report();
  }

  Report report() {
    return new Report(
        model.boat().name(),
        LoadCaseFigures.of(asLoaded()),
        LoadCaseFigures.of(limit.get()),
        model.spaces().stream().map(Inspection::chamber).toList(),
        findings(),
        recommendation(),
        applied.figures(recommendation().withheld() ? List.of() : limit.get().people()),
        assumptions(model, rules),
        applied.ruleSet(),
        ValidWaters.of(rules, model.boat().waters()),
        Advice.NONE);
  }

  @Override
  public Inspection after(Change change) {
    BoatModel changed = model.fittedOut(change.boat(), date);
    return change.onlyToday()
        ? new Inspection(this, changed)
        : new Inspection(
            changed,
            book,
            date,
            assessment.balances(),
            changed.boat().places().equals(model.boat().places())
                ? assessment.widenings()
                : Map.of());
  }

  @Override
  public BoatModel model() {
    return model;
  }

  @Override
  public LocalDate date() {
    return date;
  }

  @Override
  public Limits limits() {
    return limits;
  }

  @Override
  public List<Refusal> refusals() {
    return applied.loadRefusals();
  }

  @Override
  public Recommendation recommendation() {
    return recommendation.get();
  }

  @Override
  public Capacity capacity() {
    return capacity.get();
  }

  @Override
  public boolean mayReach(Capacity told) {
    return applied.mayReach(limits, told);
  }

  @Override
  public List<Finding> findings() {
    return findings.get();
  }

  @Override
  public List<Finding> limitingAsLoaded() {
    return limiting.get();
  }

  private List<Finding> askWhatLimits() {
    return of(asLoaded(), checks(Role.LIMITS_CREW));
  }

  @Override
  public List<CheckReading> limitingReadings(Seating seating, List<Double> masses) {
    LoadedBoat loaded = assessment.loadedBoat(seating, masses);
    LoadedBoat cautious = assessment.remembering(loaded).under(assessment.allowance(loaded));
    return checks(Role.LIMITS_CREW).stream()
        .flatMap(c -> c.confirmedReadings(cautious).stream())
        .toList();
  }

  @Override
  public List<Finding> comparable(InspectedBoat other) {
    return other == this ? findings() : new Inspection(this, other).findings();
  }

  @Override
  public List<Subject> forbiddenActs(InspectedBoat other) {
    Set<Subject> then =
        forbidden(
            of(
                assessment.hurried(atLimit(limits.crew(capacity().people()))),
                checks(Role.FORBIDS_AN_ACT)));
    then.removeAll(other.forbiddenAtLimit());
    return List.copyOf(then);
  }

  @Override
  public Set<Subject> forbiddenAtLimit() {
    return forbidden(atLimit.get());
  }

  @Override
  public boolean forbidsAtLimit(CheckQuestion act) {
    return atLimit.get().stream()
        .anyMatch(f -> f.question().equals(act) && AdviceComparison.isAsBadAsCanBe(f));
  }

  private static List<Assumption> assumptions(BoatModel model, RuleSet rules) {
    return Stream.concat(model.boat().assumptions().stream(), Assumptions.of(model, rules).stream())
        .toList();
  }

  private static Set<Subject> forbidden(List<Finding> findings) {
    return findings.stream()
        .filter(f -> f.role() == Role.FORBIDS_AN_ACT && f.outcome() != Outcome.MEETS)
        .map(f -> f.question().subject())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private LoadedBoat asLoaded() {
    List<Body> people = model.aboard();
    return LoadedBoat.of(model, people, LoadCase.of(LoadCase.Kind.AS_LOADED, aboard(model.boat())));
  }

  private static Crew aboard(Boat boat) {
    return boat.aboard().isEmpty()
        ? new Crew.Nobody()
        : new Crew.Named(
            boat.aboard().stream().map(p -> new Crew.Seat(p.name(), p.place())).toList());
  }

  private Limits.Crew crewAtLimit() {
    return applied.isImplausible()
        ? new Limits.Crew(0, 0, List.of())
        : limits.crew(recommendation().people());
  }

  /** The recommended crew in the allowed seating that comes nearest to a limit. */
  private LoadedBoat atLimit(Limits.Crew crew) {
    Seating worst =
        crew.seatings().stream()
            .min(Comparator.comparingDouble(s -> assessment.nearness(loadedBoat(s, crew.each()))))
            .orElseGet(() -> Seating.of(0, model.boat().places()).get(0));
    return loadedBoat(worst, crew.each());
  }

  private LoadedBoat loadedBoat(Seating seating, double each) {
    return loadedBoats(model, seating, each)
        .min(Comparator.comparingDouble(assessment::nearness))
        .orElseThrow();
  }

  /** The seatings with every packing of the length of their places. */
  private static Stream<LoadedBoat> loadedBoats(BoatModel model, Seating seating, double each) {
    List<Double> masses = Collections.nCopies(seating.people(), each);
    return seating.packings(model.boat().places()).stream()
        .map(
            packing ->
                LoadedBoat.of(
                    model,
                    seating.bodies(model, masses, packing),
                    atLimit(model, seating, each, packing)));
  }

  private static LoadCase atLimit(BoatModel model, Seating seating, double each, Packing packing) {
    return LoadCase.of(LoadCase.Kind.AT_LIMIT, seating.crew(model, each, packing));
  }

  private List<Finding> allFindings() {
    LoadedBoat loaded = asLoaded();
    List<Finding> all = new ArrayList<>(limitingAsLoaded());
    all.addAll(of(asked(loaded), checks(Role.FORBIDS_AN_ACT)));
    all.addAll(applied.findings());
    all.addAll(atLimit.get());
    LoadedBoat crewed = loaded.people().isEmpty() ? limit.get() : loaded;
    of(asked(crewed), checks(Role.INFORMATION))
        .forEach(f -> all.add(ChecklistFindings.counted(f, model.boat())));
    all.addAll(ChecklistFindings.of(model.boat()));
    all.addAll(ElectricalFindings.of(model.boat()));
    all.addAll(ChamberVolumeComparison.findings(model));
    all.addAll(OutfitFindings.of(model, rules));
    applied.plausibility().forEach(p -> all.add(p.finding()));
    return all;
  }

  private List<Finding> atLimitFindings() {
    if (recommendation().withheld()) {
      return List.of();
    }
    List<Finding> found = new ArrayList<>(of(asked(limit.get()), checks(Role.LIMITS_CREW)));
    found.addAll(worstActs(recommendation()));
    return found;
  }

  /** An act is forbidden when any recommended crew, heavy or light, must not do it. */
  private List<Finding> worstActs(Recommendation recommendation) {
    List<LoadedBoat> crews =
        Stream.concat(
                model.withOtherHullWeight().stream().flatMap(m -> permitted(recommendation, m)),
                permitted(recommendation, model).map(this::asked))
            .toList();
    return checks(Role.FORBIDS_AN_ACT).parallelStream()
        .flatMap(check -> worst(check, crews))
        .collect(Collectors.toMap(Finding::question, f -> f, Finding::worse, TreeMap::new))
        .values()
        .stream()
        .toList();
  }

  // The last crew is the largest and is asked everything. Where every answer was as bad before, or
  // is as bad as possible, no other crew is asked.
  private Stream<Finding> worst(Check check, List<LoadedBoat> crews) {
    Map<CheckQuestion, Finding> worst = new LinkedHashMap<>();
    if (crews.isEmpty()) {
      return Stream.empty();
    }
    List<Finding> last = of(crews.get(crews.size() - 1), check).toList();
    if (last.stream().allMatch(f -> noWorse.test(f.question()))) {
      return last.stream();
    }
    for (int i = 0; i < crews.size() && !isSettled(worst, last.size()); i++) {
      (i + 1 == crews.size() ? last.stream() : of(crews.get(i), check))
          .forEach(f -> worst.merge(f.question(), f, Finding::worse));
    }
    return worst.values().stream();
  }

  private boolean isSettled(Map<CheckQuestion, Finding> worst, int asked) {
    return worst.size() == asked && worst.values().stream().allMatch(this::isSettled);
  }

  // In a comparison only the outcome counts, and one that was as bad before is not asked for.
  private boolean isSettled(Finding finding) {
    return hurried
        ? finding.outcome() == Outcome.FALLS_SHORT || noWorse.test(finding.question())
        : finding.isWorst();
  }

  private Stream<LoadedBoat> permitted(Recommendation recommendation, BoatModel boat) {
    return recommendation.crewLimits().stream().flatMap(limit -> permitted(limit, boat));
  }

  /** Heavy and light people, in the seatings of that number and in those of lighter people. */
  private Stream<LoadedBoat> permitted(Recommendation.CrewLimit limit, BoatModel boat) {
    double lightest = rules.value("lightest-person");
    return Seating.of(limit.people(), model.boat().places()).stream()
        .flatMap(
            s ->
                limit.upTo(s.places(model)).stream()
                    .boxed()
                    .flatMap(most -> Stream.of(most, lightest))
                    .flatMap(each -> loadedBoats(boat, s, each)));
  }

  private LoadedBoat asked(LoadedBoat loadedBoat) {
    return hurried ? assessment.hurried(loadedBoat) : assessment.remembering(loadedBoat);
  }

  private List<Check> checks(Role role) {
    return CautiousChecks.of(rules, model).stream().filter(c -> c.role() == role).toList();
  }

  private List<Finding> of(LoadedBoat loadedBoat, List<Check> checks) {
    return checks.parallelStream().flatMap(c -> of(loadedBoat, c)).toList();
  }

  private Stream<Finding> of(LoadedBoat loadedBoat, Check check) {
    return Findings.of(check, loadedBoat, Allowance.of(rules, model)).stream();
  }

  private static ChamberFigures chamber(Space space) {
    double volume = space.solid().volume();
    double counted = volume * space.counting().share();
    return new ChamberFigures(
        space.name(),
        volume,
        space.solid().centroid(),
        counted,
        counted > 0,
        space.counting().why());
  }
}
