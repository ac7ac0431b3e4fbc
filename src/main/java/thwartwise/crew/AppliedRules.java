package thwartwise.crew;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thwartwise.afloat.BalanceCache;
import thwartwise.boat.BoatModel;
import thwartwise.boat.Body;
import thwartwise.boat.KeptProof;
import thwartwise.boat.ObservedTrial;
import thwartwise.boat.PointAnswer;
import thwartwise.checks.CheckId;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.Finding;
import thwartwise.checks.Margin;
import thwartwise.checks.Measure;
import thwartwise.checks.Note;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.checks.Unit;
import thwartwise.loadcase.LoadCase;
import thwartwise.measure.UnitFormat;
import thwartwise.plausibility.Plausibility;
import thwartwise.plausibility.PlausibilityFinding;
import thwartwise.rules.CapKind;
import thwartwise.rules.CapacityFigure;
import thwartwise.rules.ExcludedUse;
import thwartwise.rules.RuleBook;
import thwartwise.rules.RuleSet;
import thwartwise.rules.WaterAdjustedLimits;

/** The effect of the available rule sets on one boat: limits in force, caps, second opinions. */
public final class AppliedRules {
  private final BoatModel model;
  private final BalanceCache balances;
  private final RuleBook calm;
  private final RuleBook book;
  private final RuleSet inForce;
  private final List<CapacityFigure> caps;
  private final List<PlausibilityFinding> plausibility;
  private final Supplier<List<Limits>> laxerLimits = Lazy.of(this::allLaxerLimits);
  private final Supplier<List<MilderBoat>> milder = Lazy.of(this::milderBoats);

  /** The boat with fewer of the faults that were found. */
  private record MilderBoat(AppliedRules applied, Limits limits) {
    Recommendation bound(int people) {
      return applied.bound(limits, people);
    }

    /** Not above another answer; what carries as much as that is not looked into further. */
    Capacity lowering(Capacity answer) {
      return applied.carries(limits, answer) ? answer : answer.notAbove(applied.capacity(limits));
    }

    boolean mayReach(Capacity told) {
      return applied.mayReach(limits, told);
    }
  }

  public AppliedRules(BoatModel model, RuleBook book) {
    this(model, book, new BalanceCache());
  }

  /**
   * @param balances equilibria found for this boat and for others of the same hull
   */
  public AppliedRules(BoatModel model, RuleBook book, BalanceCache balances) {
    this.balances = balances;
    UnitFormat units = new UnitFormat(model.boat().units());
    this.calm = book.in(units.system());
    this.book =
        new RuleBook(
            WaterAdjustedLimits.tightened(calm.base(), model.boat().waters(), units),
            calm.others());
    this.inForce = this.book.inForce(model);
    this.model = model.heldUpFor(60 * inForce.value("swamped-minutes"));
    this.caps = this.book.figures(model);
    this.plausibility = Plausibility.of(model, calm.base());
  }

  /** The boat under them: what counts of a leaking chamber follows from how long it must lift. */
  public BoatModel model() {
    return model;
  }

  /** Our own limits, tightened by the sets that apply and take part. */
  public RuleSet inForce() {
    return inForce;
  }

  /** The figures that depend on the boat alone, whoever is aboard. */
  public List<CapacityFigure> caps() {
    return caps;
  }

  /** All figures of the sets, with those that need the recommended crew. */
  public List<CapacityFigure> figures(List<Body> crew) {
    List<CapacityFigure> all = new ArrayList<>(caps);
    all.addAll(book.figures(model, crew, LoadTestRules.all()));
    return all;
  }

  /** The plausibility of the measurements. */
  public List<PlausibilityFinding> plausibility() {
    return plausibility;
  }

  /**
   * The reasons for recommending nothing; none when boat and waters are covered and no measurement
   * looks wrong.
   */
  public List<Refusal> loadRefusals() {
    return Stream.concat(implausible().stream(), notCovered().stream()).toList();
  }

  private List<Refusal> implausible() {
    return plausibility.stream()
        .filter(PlausibilityFinding::withholds)
        .<Refusal>map(f -> new Refusal.Implausible(f.id(), f.isConfirmedForOtherValue()))
        .toList();
  }

  private List<Refusal> notCovered() {
    return Stream.concat(
            Stream.concat(
                    book.notCovered(model).stream(), ExcludedUse.of(model, book.base()).stream())
                .map(Refusal.OutsideUse::new),
            Stream.concat(afloat().stream(), lookedAt().stream()))
        .toList();
  }

  private List<Refusal> lookedAt() {
    return model.boat().pointAnswers().stream()
        .filter(PointAnswer::holdsTheLaunch)
        .<Refusal>map(a -> new Refusal.LookedAt(a.date().toString(), a.by(), a.requirementOfItem()))
        .toList();
  }

  private List<Refusal> afloat() {
    return Stream.concat(failedTrial().stream(), failedProof().stream()).toList();
  }

  /** A boat that did not float as it was measured is not the boat that was computed. */
  private Optional<Refusal> failedProof() {
    return KeptProof.holding(model.boat().proofs())
        .map(
            proof ->
                new Refusal.FailedProof(
                    proof.day().toString(), proof.readings().by(), proof.outcome().suspect()));
  }

  /** A failed trial in knee-deep water holds, whatever the computation says. */
  private Optional<Refusal> failedTrial() {
    return model
        .boat()
        .observedTrial()
        .filter(ObservedTrial::failed)
        .map(
            seen ->
                new Refusal.FailedTrial(
                    seen.date().toString(),
                    seen.by(),
                    seen.people(),
                    seen.level(),
                    seen.headsClear()));
  }

  /** Whether a measurement looks so wrong that the figures would be those of another boat. */
  public boolean isImplausible() {
    return !implausible().isEmpty();
  }

  /**
   * The recommendation. Where limits were tightened, it is never above the one without that,
   * because a stricter limit that rules out a bad seat could otherwise allow heavier people in the
   * remaining seats. Nor is it above that of the boat with fewer faults, because air lost on one
   * side could otherwise level the swamped boat.
   */
  public Recommendation recommendation(Limits limits) {
    if (isImplausible()) {
      return Recommendation.withheld(inForce.value("design-person"), loadRefusals());
    }
    return lowest(limits.recommendation(notCovered()));
  }

  /** The parts of the recommendation that {@link Limits#bound} gives. */
  private Recommendation bound(Limits limits, int people) {
    return isImplausible()
        ? Recommendation.withheld(inForce.value("design-person"), loadRefusals())
        : lowest(limits.bound(notCovered(), people));
  }

  // A withheld recommendation stays withheld, whatever the others are.
  private Recommendation lowest(Recommendation found) {
    Recommendation answer = found;
    for (Limits other : answer.withheld() ? List.<Limits>of() : laxerLimits.get()) {
      answer = answer.notAbove(other.bound(notCovered(), answer.people()));
    }
    for (MilderBoat before : answer.withheld() ? List.<MilderBoat>of() : milder.get()) {
      answer = answer.notAbove(before.bound(answer.people()));
    }
    return answer;
  }

  /** The figures of the recommendation alone; zero where nothing is recommended. */
  public Capacity capacity(Limits limits) {
    if (!loadRefusals().isEmpty()) {
      return Capacity.NOTHING;
    }
    Capacity answer = limits.capacity();
    for (Limits other : laxerLimits.get()) {
      answer = other.carries(answer) ? answer : answer.notAbove(other.capacity());
    }
    for (MilderBoat before : milder.get()) {
      answer = before.lowering(answer);
    }
    return answer;
  }

  /** Whether as much as another boat carries is carried; false proves nothing. */
  private boolean carries(Limits limits, Capacity other) {
    return loadRefusals().isEmpty()
        && limits.carries(other)
        && laxerLimits.get().stream().allMatch(laxer -> laxer.carries(other))
        && milder.get().stream().allMatch(m -> m.applied.carries(m.limits, other));
  }

  /** False proves that there are fewer adults than given, or as many and a lighter crew. */
  public boolean mayReach(Limits limits, Capacity told) {
    return loadRefusals().isEmpty()
        && limits.mayReach(told)
        && laxerLimits.get().stream().allMatch(other -> other.mayReach(told))
        && milder.get().stream().allMatch(before -> before.mayReach(told));
  }

  /** Why nobody is recommended, not even one light person; empty when somebody is. */
  List<Refusal> crewRefusals(Limits limits) {
    List<Refusal> reasons = limits.refusals();
    return Stream.concat(
            Stream.of(reasons), milder.get().stream().map(before -> before.limits.refusals()))
        .filter(found -> !found.isEmpty())
        .findFirst()
        .orElse(reasons);
  }

  private List<MilderBoat> milderBoats() {
    return model.withFewerAnswers().stream().map(this::milderBoat).toList();
  }

  private MilderBoat milderBoat(BoatModel before) {
    AppliedRules rules = new AppliedRules(before, calm, balances);
    CrewAssessment assessment = new CrewAssessment(rules.model, rules.inForce, balances);
    return new MilderBoat(rules, new Limits(assessment, rules.inForce, rules.caps));
  }

  private List<Limits> allLaxerLimits() {
    return laxer().stream()
        .map(set -> new Limits(new CrewAssessment(model, set, balances), set, caps))
        .toList();
  }

  private Set<RuleSet> laxer() {
    Set<RuleSet> laxer = new LinkedHashSet<>(book.lessStrict(model));
    laxer.add(calm.inForce(model));
    laxer.remove(inForce);
    return laxer;
  }

  /**
   * Our own set, every set that tightened one of its limits, and those whose formulas were
   * computed.
   */
  public String ruleSet() {
    return book.base().cited()
        + cited("; made stricter by ", book.tightening(model))
        + cited("; beside them ", book.alternatives(model));
  }

  private static String cited(String before, List<RuleSet> sets) {
    return sets.isEmpty()
        ? ""
        : sets.stream().map(RuleSet::cited).collect(Collectors.joining("; ", before, ""));
  }

  /** Forbids full power with a motor that is stronger than a participating rule gives. */
  public List<Finding> findings() {
    return caps.stream()
        .filter(f -> f.caps() == CapKind.POWER && f.takesPart() && f.fallsShort())
        .map(AppliedRules::tooStrong)
        .toList();
  }

  private static Finding tooStrong(CapacityFigure figure) {
    return new Finding(
        CheckQuestion.of(CheckId.FULL_POWER, Measure.POWER),
        Role.FORBIDS_AN_ACT,
        Outcome.FALLS_SHORT,
        Margin.atMost(figure.value(), figure.has(), Unit.WATT),
        figure.formula() + ": " + figure.source(),
        LoadCase.UNNAMED,
        Note.of(Note.Fact.MOTOR_TOO_STRONG));
  }
}
