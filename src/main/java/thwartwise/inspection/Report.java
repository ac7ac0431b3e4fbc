package thwartwise.inspection;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import thwartwise.advice.Advice;
import thwartwise.boat.Assumption;
import thwartwise.boat.Boat;
import thwartwise.boat.BuoyancyReason;
import thwartwise.boat.ObservedTrial;
import thwartwise.checks.Finding;
import thwartwise.crew.Recommendation;
import thwartwise.geometry.Vector3;
import thwartwise.rules.CapacityFigure;
import thwartwise.rules.ValidWaters.WaterStatement;
import thwartwise.spread.BoatSpread;

/**
 * The result of one inspection.
 *
 * @param asLoaded the boat as the file loads it
 * @param atLimit the recommended crew in the worst allowed seating
 * @param capacityFigures published formulas next to our own answer
 * @param assumptions what was assumed because nobody measured it, the boat's own first
 * @param ruleSet name and edition of the limits used
 * @param waters in which waters the figures hold and in which not; empty in records made before it
 *     was asked
 * @param advice possible changes; records of older programs have none
 * @param spread how sure the answer is; empty where it was not judged by that, as in records of
 *     older programs, and for measurements that no covered boat can have
 */
public record Report(
    String boat,
    StateFigures asLoaded,
    StateFigures atLimit,
    List<ChamberFigures> chambers,
    List<Finding> findings,
    Recommendation recommendation,
    List<CapacityFigure> capacityFigures,
    List<Assumption> assumptions,
    String ruleSet,
    List<WaterStatement> waters,
    Advice advice,
    Optional<BoatSpread> spread) {

  public Report {
    chambers = List.copyOf(chambers);
    findings = List.copyOf(findings);
    capacityFigures = List.copyOf(capacityFigures);
    assumptions = List.copyOf(assumptions);
    waters = List.copyOf(waters);
  }

  /** A report that was not judged by its spread. */
  public Report(
      String boat,
      StateFigures asLoaded,
      StateFigures atLimit,
      List<ChamberFigures> chambers,
      List<Finding> findings,
      Recommendation recommendation,
      List<CapacityFigure> capacityFigures,
      List<Assumption> assumptions,
      String ruleSet,
      List<WaterStatement> waters,
      Advice advice) {
    this(
        boat,
        asLoaded,
        atLimit,
        chambers,
        findings,
        recommendation,
        capacityFigures,
        assumptions,
        ruleSet,
        waters,
        advice,
        Optional.empty());
  }

  /** The observed trial in the flooded boat, if it counts on that day. */
  public Optional<ObservedTrial> observedTrial(Boat of, LocalDate day) {
    boolean chamberCounts = chambers.stream().anyMatch(ChamberFigures::counted);
    return of.observedTrial().filter(seen -> seen.counts(day, chamberCounts));
  }

  public Report with(Advice other) {
    return copy(findings, recommendation, other, spread);
  }

  /** A copy with the verdicts by how sure each figure is. */
  public Report judged(List<Finding> byShare, Recommendation sureEnough, BoatSpread judged) {
    return copy(byShare, sureEnough, advice, Optional.of(judged));
  }

  private Report copy(
      List<Finding> others, Recommendation lower, Advice other, Optional<BoatSpread> sure) {
    return new Report(
        boat,
        asLoaded,
        atLimit,
        chambers,
        others,
        lower,
        capacityFigures,
        assumptions,
        ruleSet,
        waters,
        other,
        sure);
  }

  /** True when nothing that limits crew falls short, is borderline or was not assessed. */
  public boolean isUnrestricted() {
    return !recommendation.withheld() && findings.stream().noneMatch(Finding::holdsBack);
  }

  /**
   * A chamber as drawn inside the shell.
   *
   * @param volume drawn, m³
   * @param countedVolume counted when swamped, m³
   * @param counted whether anything counts
   * @param why the reason for counting or not counting
   */
  public record ChamberFigures(
      String name,
      double volume,
      Vector3 centre,
      double countedVolume,
      boolean counted,
      BuoyancyReason why) {}
}
