package thwartwise.inspection;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.function.UnaryOperator;
import thwartwise.advice.Progress;
import thwartwise.boat.Boat;
import thwartwise.boat.Person;
import thwartwise.checks.Finding;
import thwartwise.checks.Outcome;
import thwartwise.crew.CrewAnswer;
import thwartwise.crew.NamedPerson;
import thwartwise.crew.Recommendation;
import thwartwise.crew.Recommendation.CrewLimit;
import thwartwise.crew.Seating;
import thwartwise.crew.WidenedSeatings;
import thwartwise.loadcase.LoadCase;
import thwartwise.loadcase.LoadedBoat;
import thwartwise.rules.RuleSet;
import thwartwise.spread.BoatSpread;
import thwartwise.spread.CaseFigures;
import thwartwise.spread.FigureSpread;
import thwartwise.spread.InputKind;
import thwartwise.spread.JudgedLimits;
import thwartwise.spread.SpreadAssessment;
import thwartwise.spread.SpreadAssessment.Judged;

/**
 * An inspection with the verdict by its spread. The search under the allowance is a fast screen.
 * For a seating that it allows, and in which fewer than 95 of 100 boats measured like this would
 * meet every limit, more allowances are applied until it is refused, and the search is run again.
 * So every reported figure is of one search, and none is above that of the first; the kilograms for
 * each number of people are lowered once more where too few boats would carry them.
 *
 * @param inspection of the search whose crew is sure enough
 * @param spread empty for measurements that no boat can have, and for a boat that the program does
 *     not cover
 * @param everyFinding judges those findings, too, that decide nothing
 * @param unsure selects the loaded boats that are not sure enough
 * @param sureLimits of each number of people
 * @param aboard judges the same boat with other people aboard
 */
record SpreadJudgement(
    Inspection inspection,
    Optional<BoatSpread> spread,
    UnaryOperator<BoatSpread> everyFinding,
    UnaryOperator<List<LoadedBoat>> unsure,
    JudgedLimits sureLimits,
    Function<List<Person>, JudgedBoat> aboard)
    implements JudgedBoat {

  /**
   * The search for the crew that is sure enough, with what was worked out so far.
   *
   * @param inspect the inspection of the boat with these people aboard and these allowances for
   *     some seatings
   * @param spreads how far a measurement may be off, by method
   * @param better kinds of measurement that were taken with more care
   * @param known figures of the same boat
   */
  record Search(
      BiFunction<List<Person>, Map<Seating, Double>, Inspection> inspect,
      RuleSet spreads,
      Set<InputKind> better,
      CaseFigures known,
      Progress progress) {

    /**
     * @param measured the boat of its file
     */
    SpreadJudgement of(Boat measured) {
      Function<List<Person>, JudgedBoat> aboard = people -> of(measured.withAboard(people));
      IntFunction<Runnable> counting = of -> progress.counting(Progress.Stage.SPREAD, of);
      Map<Seating, Double> widenings = new HashMap<>();
      Optional<BoatSpread> screened = Optional.empty();
      for (int round = 1; true; round++) {
        progress.at(Progress.Stage.CREW, 0, 1);
        Inspection inspection = inspect.apply(measured.aboard(), widenings);
        if (!inspection.refusals().isEmpty()) {
          return new SpreadJudgement(
              inspection,
              Optional.empty(),
              spread -> spread,
              loaded -> List.of(),
              JudgedLimits.NONE,
              aboard);
        }
        SpreadAssessment assessment = inspection.spread(measured, spreads, better, known);
        Judged judged = assessment.of(inspection.capacity().people(), counting);
        screened = Optional.of(screened.orElse(judged.answer()));
        if (judged.unsure().isEmpty()) {
          progress.carries(inspection.capacity().people());
          return new SpreadJudgement(
              inspection,
              Optional.of(judged.answer().loweredFrom(screened.get())),
              spread -> assessment.withEveryFinding(spread, judged, counting),
              loaded -> assessment.unsure(loaded, counting),
              sureLimits(inspection, assessment, counting),
              aboard);
        }
        for (Seating seating :
            round > WidenedSeatings.BY_SEATING ? alike(judged, inspection) : judged.unsure()) {
          widenings.put(seating, inspection.refusing(seating, judged.answer().each()));
        }
      }
    }
  }

  private static JudgedLimits sureLimits(
      Inspection inspection, SpreadAssessment assessment, IntFunction<Runnable> counting) {
    return assessment.sureLimits(
        () -> inspection.recommendation().crewLimits(), inspection.capacity().people(), counting);
  }

  /** Every seating of as many people as the ones that are not sure enough. */
  private static List<Seating> alike(Judged judged, Inspection inspection) {
    return judged.unsure().stream()
        .map(Seating::people)
        .distinct()
        .flatMap(n -> Seating.of(n, inspection.model().boat().places()).stream())
        .toList();
  }

  @Override
  public Report report() {
    return report(spread.map(everyFinding), sureLimits.rows());
  }

  /** The answer of a record, without advice: with the seatings for lighter people. */
  Report recorded() {
    return report(spread.map(everyFinding), sureLimits.withSeatings());
  }

  /** The answer as it is first heard; what decides nothing is as the screen has it. */
  Report judgedByCrew() {
    return report(spread, sureLimits.rows());
  }

  private Report report(Optional<BoatSpread> spread, List<CrewLimit> sure) {
    Report screened = inspection.report();
    return spread
        .map(
            judged ->
                screened.judged(
                    byShare(screened.findings(), judged),
                    screened.recommendation().lowered(sure, kitMass()),
                    judged))
        .orElse(screened);
  }

  @Override
  public JudgedBoat withAboard(List<Person> people) {
    return aboard.apply(people);
  }

  @Override
  public CrewAnswer seats(List<NamedPerson> members) {
    return inspection.seats(members, this::load, unsure);
  }

  /** As reported; both figures are rounded down, and neither is to shut out what the other has. */
  private double load() {
    Recommendation reported = inspection.recommendation().lowered(sureLimits.rows(), kitMass());
    return Math.max(reported.load(), reported.crew() + kitMass());
  }

  private double kitMass() {
    return inspection.model().boat().kitMass();
  }

  private static List<Finding> byShare(List<Finding> findings, BoatSpread judged) {
    return findings.stream().map(f -> byShare(f, judged)).toList();
  }

  private static Finding byShare(Finding finding, BoatSpread judged) {
    boolean loaded = finding.loadCase().kind() == LoadCase.Kind.AS_LOADED;
    return judged
        .figure(finding.question(), loaded)
        .map(figure -> finding.withOutcome(outcome(finding, figure)))
        .orElse(finding);
  }

  /**
   * The outcome, never more favourable than that of the screen, whose search found the crew: what
   * the screen calls borderline does not count as met.
   */
  static Outcome outcome(Finding finding, FigureSpread figure) {
    if (finding.outcome() == Outcome.NOT_ASSESSED) {
      return Outcome.NOT_ASSESSED;
    }
    if (finding.margin().met()) {
      return figure.isSure(finding.margin())
          ? finding.outcome()
          : Outcome.worse(finding.outcome(), Outcome.BORDERLINE);
    }
    return finding.margin().room() > -figure.spread() ? Outcome.BORDERLINE : Outcome.FALLS_SHORT;
  }
}
