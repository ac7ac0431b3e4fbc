package thwartwise.inspection;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thwartwise.boat.Boat;
import thwartwise.boat.Body;
import thwartwise.boat.Craft;
import thwartwise.boat.Space;
import thwartwise.checks.Allowance;
import thwartwise.checks.CautiousChecks;
import thwartwise.checks.Check;
import thwartwise.checks.Finding;
import thwartwise.checks.Findings;
import thwartwise.checks.Role;
import thwartwise.checks.Trial;
import thwartwise.rules.HoldsFor;
import thwartwise.rules.RuleBook;
import thwartwise.rules.RuleSet;

/** One whole run over a boat: states, findings, chambers, limits. */
public final class Inspection {
  private final Craft craft;
  private final RulesApplied applied;
  private final RuleSet rules;
  private final Judge judge;

  private Inspection(Craft craft, RuleBook book) {
    this.craft = craft;
    this.applied = new RulesApplied(craft, book);
    this.rules = applied.inForce();
    this.judge = new Judge(craft, rules);
  }

  /** The same under our own limits alone, with no other rule set beside them. */
  public static Report of(Boat boat, RuleSet rules, LocalDate today) {
    return of(boat, RuleBook.of(rules), today);
  }

  /**
   * Inspects the boat as it stands on the given day, under every rule set that applies to it.
   *
   * @throws thwartwise.boat.UnusableBoat when the measurements contradict each other
   */
  public static Report of(Boat boat, RuleBook book, LocalDate today) {
    return new Inspection(Craft.of(boat, today), book).run();
  }

  private Report run() {
    Limits limits = new Limits(judge, rules, applied.caps());
    Recommendation recommendation = applied.recommendation(limits);
    Trial loaded = asLoaded();
    Trial limit = atLimit(limits.crew(Math.min(limits.people(), recommendation.people())));
    return new Report(
        craft.boat().name(),
        States.of(loaded),
        States.of(limit),
        craft.spaces().stream().map(Inspection::chamber).toList(),
        findings(loaded, limit, recommendation),
        recommendation,
        applied.figures(recommendation.withheld() ? List.of() : limit.people()),
        Assumptions.of(craft, rules),
        applied.ruleSet(),
        HoldsFor.words(rules, craft.boat().waters()));
  }

  private Trial asLoaded() {
    List<Body> people = craft.aboard();
    String who =
        people.isEmpty()
            ? "nobody aboard"
            : String.join(
                ", ",
                craft.boat().aboard().stream().map(p -> p.name() + " at " + p.place()).toList());
    return Trial.of(craft, people, "as loaded: " + who);
  }

  /** The recommended crew in the allowed seating that comes nearest to a limit. */
  private Trial atLimit(Limits.Crew crew) {
    Seating worst =
        crew.seatings().stream()
            .min(Comparator.comparingDouble(s -> judge.nearness(trial(s, crew.each()))))
            .orElseGet(() -> Seating.of(0, craft.boat().places()).get(0));
    return trial(worst, crew.each());
  }

  private Trial trial(Seating seating, double each) {
    List<Body> people = seating.bodies(craft, Collections.nCopies(seating.people(), each));
    String who =
        people.isEmpty()
            ? "nobody aboard"
            : String.format(
                Locale.ROOT,
                "%d of %.0f kg at %s",
                people.size(),
                each,
                String.join(", ", seating.places(craft)));
    return Trial.of(craft, people, "at the limit: " + who);
  }

  private List<Finding> findings(Trial loaded, Trial limit, Recommendation recommendation) {
    List<Finding> findings = new ArrayList<>();
    findings.addAll(of(loaded, checks(Role.LIMITS_CREW)));
    findings.addAll(of(loaded, checks(Role.FORBIDS_AN_ACT)));
    findings.addAll(applied.findings());
    if (!recommendation.withheld()) {
      findings.addAll(of(limit, checks(Role.LIMITS_CREW)));
      findings.addAll(worstActs(recommendation));
    }
    Trial crewed = loaded.people().isEmpty() ? limit : loaded;
    findings.addAll(of(crewed, checks(Role.INFORMATION)));
    findings.addAll(MeasuredLitres.findings(craft));
    findings.addAll(Plausibility.findings(loaded.loading()));
    return findings;
  }

  /** An act is forbidden when any crew that is recommended must not do it, heavy or light. */
  private List<Finding> worstActs(Recommendation recommendation) {
    return permitted(recommendation)
        .parallel()
        .flatMap(t -> of(t, checks(Role.FORBIDS_AN_ACT)).stream())
        .collect(Collectors.toMap(Finding::check, f -> f, Finding::worse, TreeMap::new))
        .values()
        .stream()
        .toList();
  }

  private Stream<Trial> permitted(Recommendation recommendation) {
    return recommendation.crewLimits().stream()
        .flatMap(
            limit ->
                Seating.of(limit.people(), craft.boat().places()).stream()
                    .filter(s -> !limit.excludedSeatings().contains(s.places(craft)))
                    .flatMap(
                        s ->
                            Stream.of(
                                trial(s, limit.eachUpTo()),
                                trial(s, rules.value("lightest-person")))));
  }

  private List<Check> checks(Role role) {
    return CautiousChecks.of(rules).stream().filter(c -> c.role() == role).toList();
  }

  private List<Finding> of(Trial trial, List<Check> checks) {
    return checks.parallelStream()
        .flatMap(c -> Findings.of(c, trial, Allowance.of(rules)).stream())
        .toList();
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
