package thwartwise.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import thwartwise.checks.CheckId;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.Finding;
import thwartwise.checks.Measure;
import thwartwise.checks.Outcome;
import thwartwise.checks.Unit;
import thwartwise.crew.LimitingFactor;
import thwartwise.inspection.Report;
import thwartwise.loadcase.LoadCase;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.page.Sentence;
import thwartwise.spread.BoatSpread;

/**
 * What happens to the people where a check that limits the crew falls short, each mishap once: a
 * boat that sinks does not also capsize.
 */
final class MishapWords {
  private MishapWords() {}

  /**
   * What stops one more person, without figures; the name of the check where there are no words for
   * it.
   */
  static String of(LimitingFactor factor) {
    return factor instanceof LimitingFactor.ByCheck check
        ? of(check.question())
        : LimitingFactorWords.of(factor);
  }

  private static String of(CheckQuestion question) {
    String when = when(question);
    if (!when.isEmpty()) {
      return question.measure() == Measure.FREEBOARD
          ? "its side comes too near the water " + when
          : (isSwamped(question) ? "full of water, it " : "it ") + "leans too far " + when;
    }
    return switch (question.check()) {
      case FREEBOARD_AT_REST -> "its edge comes too near the water";
      case SWAMPED_LIFT -> "full of water, it lifts too little";
      case ONE_CHAMBER_LOST -> "full of water with one chamber leaking, it lifts too little";
      case SWAMPED_LEVEL ->
          switch (question.measure()) {
            case HIGHER_END -> "full of water, both ends go too deep";
            case LOWER_END -> "full of water, one end goes too deep";
            default -> "full of water, it leans or rolls over";
          };
      default -> CheckWords.of(question);
    };
  }

  private static boolean isSwamped(CheckQuestion question) {
    return question.subject().check() == CheckId.SWAMPED_LEVEL;
  }

  /** The condition that people move or sit so; blank where there is none. */
  private static String when(CheckQuestion question) {
    return switch (question.check()) {
      case THREE_FIFTHS_TO_ONE_SIDE -> "when everyone moves to one side";
      case STIFF_OFF_THE_MIDDLE -> "when people sit stiff a hand's breadth off the middle";
      case SWAMPED_MARGIN ->
          question.measure() == Measure.HALF_TO_ONE_SIDE
              ? "when people lean to one side"
              : "when people sit a little off the middle";
      default -> "";
    };
  }

  static List<String> of(Report report, UnitFormat units) {
    Map<CheckQuestion, Finding> worst = new LinkedHashMap<>();
    report.findings().stream()
        .filter(Finding::holdsBack)
        .forEach(f -> worst.merge(f.question(), f, Finding::worse));
    List<Finding> all = List.copyOf(worst.values());
    boolean sinks = all.stream().anyMatch(f -> isLift(f) && f.value().orElse(0) < 0);
    return all.stream()
        .filter(f -> !(sinks && isSwamped(f.question()) && !isLift(f)))
        .filter(f -> !followsFrom(f, all))
        .map(f -> sentence(f, report, units))
        .distinct()
        .toList();
  }

  private static boolean isLift(Finding finding) {
    return finding.question().check() == CheckId.SWAMPED_LIFT;
  }

  /**
   * Whether a mishap follows from another: in a boat that capsizes, the remaining freeboard and the
   * end that lifts do not matter.
   */
  private static boolean followsFrom(Finding finding, List<Finding> all) {
    return finding.margin().unit() == Unit.METRE
        && all.stream()
            .anyMatch(
                f ->
                    f.margin().unit() == Unit.DEGREE
                        && rolls(f)
                        && f.question().subject().equals(finding.question().subject()));
  }

  private static boolean rolls(Finding finding) {
    return finding.outcome() == Outcome.FALLS_SHORT
        && (finding.value().isEmpty() || finding.margin().turnsOver());
  }

  private static String sentence(Finding finding, Report report, UnitFormat units) {
    if (!finding.question().check().hasFigure()) {
      return Sentence.capital(ChecklistWords.of(finding));
    }
    if (finding.outcome() == Outcome.NOT_ASSESSED) {
      return CheckWords.of(finding.question()) + ": not worked out, so it counts against the boat";
    }
    String words = words(finding, units);
    return finding.outcome() == Outcome.BORDERLINE ? words + doubt(finding, report) : words;
  }

  /**
   * Why the outcome is in doubt. A limit that seems far away may still be passed where the boat
   * capsizes soon after it.
   */
  private static String doubt(Finding finding, Report report) {
    boolean loaded = finding.loadCase().kind() == LoadCase.Kind.AS_LOADED;
    return report
        .spread()
        .flatMap(spread -> spread.figure(finding.question(), loaded))
        .filter(figure -> finding.margin().met() && figure.share() < BoatSpread.ENOUGH)
        .map(figure -> "; in " + SpreadWords.lost(figure.share()) + " it goes past that")
        .orElse("; tape and scales are too coarse to decide");
  }

  private static String words(Finding finding, UnitFormat units) {
    CheckQuestion question = finding.question();
    if (finding.margin().unit() == Unit.KILOGRAM && isSwamped(question)) {
      return lift(finding, units);
    }
    if (finding.margin().unit() == Unit.DEGREE) {
      return heel(finding, units);
    }
    if (question.check() == CheckId.FREEBOARD_AT_REST) {
      return edge(finding, "Its lowest edge", "", units);
    }
    return switch (question.measure()) {
      case HIGHER_END -> edge(finding, "Full of water, its higher end", "", units);
      case LOWER_END ->
          finding.value().isEmpty()
              ? "Full of water, it does not lie level"
              : "Full of water, one end goes "
                  + FindingWords.value(finding, units)
                  + " under; limit "
                  + FindingWords.limit(finding, units);
      case FREEBOARD -> edge(finding, "Its side", " " + when(question), units);
      default -> FindingWords.of(finding, units);
    };
  }

  private static String lift(Finding finding, UnitFormat units) {
    String lost =
        finding.question().check() == CheckId.ONE_CHAMBER_LOST ? " with one chamber leaking" : "";
    OptionalDouble has = finding.value();
    return has.orElse(-1) < 0
        ? "It sinks when full of water"
            + lost
            + (has.isEmpty() ? "" : ": " + units.mass(-has.getAsDouble(), Side.UP) + " too heavy")
        : "Full of water"
            + lost
            + ", it lifts "
            + FindingWords.value(finding, units)
            + " more than its load; it needs "
            + FindingWords.limit(finding, units);
  }

  private static String heel(Finding finding, UnitFormat units) {
    String when = when(finding.question());
    String start = isSwamped(finding.question()) ? "Full of water, it " : "It ";
    String end = when.isEmpty() ? "" : " " + when;
    return rolls(finding)
        ? start + "rolls over" + end
        : start
            + "leans "
            + FindingWords.value(finding, units)
            + end
            + "; limit "
            + FindingWords.limit(finding, units);
  }

  private static String edge(Finding finding, String what, String when, UnitFormat units) {
    double has = finding.value().orElse(-1);
    return has < 0
        ? what + " goes under the water" + when
        : what
            + " is "
            + FindingWords.value(finding, units)
            + " above the water"
            + when
            + "; it needs "
            + FindingWords.limit(finding, units);
  }
}
