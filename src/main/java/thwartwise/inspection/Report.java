package thwartwise.inspection;

import java.util.List;
import thwartwise.advice.Advice;
import thwartwise.checks.Finding;
import thwartwise.crew.Recommendation;
import thwartwise.rules.CapacityFigure;

/**
 * What one inspection found.
 *
 * @param asLoaded the boat as the file loads it
 * @param atLimit the recommended crew in the worst allowed seating
 * @param capacityFigures published formulas beside our own answer
 * @param assumptions what was taken for granted because nobody measured it
 * @param ruleSet name and edition of the limits used
 * @param waters in which waters the figures hold and in which not, in words; empty in records made
 *     before it was asked
 * @param advice what could be done about it; records of older programs have none
 */
public record Report(
    String boat,
    StateFigures asLoaded,
    StateFigures atLimit,
    List<ChamberFigures> chambers,
    List<Finding> findings,
    Recommendation recommendation,
    List<CapacityFigure> capacityFigures,
    List<String> assumptions,
    String ruleSet,
    List<String> waters,
    Advice advice) {

  public Report {
    chambers = List.copyOf(chambers);
    findings = List.copyOf(findings);
    capacityFigures = List.copyOf(capacityFigures);
    assumptions = List.copyOf(assumptions);
    waters = List.copyOf(waters);
  }

  /** A report that says nothing of the waters and gives no advice. */
  public Report(
      String boat,
      StateFigures asLoaded,
      StateFigures atLimit,
      List<ChamberFigures> chambers,
      List<Finding> findings,
      Recommendation recommendation,
      List<CapacityFigure> capacityFigures,
      List<String> assumptions,
      String ruleSet) {
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
        List.of(),
        Advice.NONE);
  }

  public Report with(Advice told) {
    return new Report(
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
        told);
  }

  /** True when nothing that limits crew falls short, is borderline or was not assessed. */
  public boolean nothingHoldsBack() {
    return !recommendation.withheld() && findings.stream().noneMatch(Finding::holdsBack);
  }
}
