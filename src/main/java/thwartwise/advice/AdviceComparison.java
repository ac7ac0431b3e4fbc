package thwartwise.advice;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import thwartwise.advice.AdvicePiece.AdviceWorse;
import thwartwise.checks.CheckId;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.Finding;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.loadcase.LoadCase.Kind;

/**
 * The findings of a boat compared with those of the same boat after a change, question by question.
 */
public final class AdviceComparison {
  private final Map<Asked, Finding> before;
  private final Map<Asked, Finding> after;

  /**
   * The loading of a question. A finding for information is asked of one loading only, whichever it
   * is.
   */
  private record Asked(CheckQuestion question, Role role, Kind loading) {
    static Asked of(Finding finding) {
      return new Asked(
          whicheverChamber(finding.question()),
          finding.role(),
          finding.role() == Role.INFORMATION ? Kind.UNNAMED : finding.loadCase().kind());
    }
  }

  private AdviceComparison(List<Finding> before, List<Finding> after) {
    this.before = worst(before);
    this.after = worst(after);
  }

  static AdviceComparison of(List<Finding> before, List<Finding> after) {
    return new AdviceComparison(before, after);
  }

  private static Map<Asked, Finding> worst(List<Finding> findings) {
    Map<Asked, Finding> worst = new LinkedHashMap<>();
    findings.forEach(f -> worst.merge(Asked.of(f), f, Finding::worse));
    return worst;
  }

  /**
   * The same question for any chamber, because another chamber may be the worst to lose after a
   * change.
   */
  static CheckQuestion whicheverChamber(CheckQuestion question) {
    return question.check() == CheckId.ONE_CHAMBER_LOST
        ? CheckQuestion.of(question.check(), question.measure())
        : question;
  }

  List<AdviceWorse> worse() {
    return after.keySet().stream().flatMap(q -> worse(q).stream()).toList();
  }

  private Optional<AdviceWorse> worse(Asked question) {
    Finding now = after.get(question);
    Optional<Finding> then = Optional.ofNullable(before.get(question));
    boolean isWorse =
        then.map(t -> now.outcome().isWorseThan(t.outcome()) && !isForbiddenAlready(t))
            .orElseGet(() -> newAndNotMet(question, now));
    return isWorse
        ? Optional.of(
            new AdviceWorse(
                now.question(),
                now.role(),
                now.loadCase().kind(),
                then.map(Finding::outcome),
                now.outcome()))
        : Optional.empty();
  }

  /** Whether no change can make this finding worse. */
  public static boolean isAsBadAsCanBe(Finding before) {
    return before.outcome() == Outcome.FALLS_SHORT || isForbiddenAlready(before);
  }

  /**
   * Whether the act is forbidden already because it was not assessed; falling short of it is no
   * worse.
   */
  private static boolean isForbiddenAlready(Finding act) {
    return act.role() == Role.FORBIDS_AN_ACT && act.outcome() == Outcome.NOT_ASSESSED;
  }

  // A chamber that counts for the first time is asked about for the first time, and with nobody
  // aboard before, nothing was asked of a crew; neither is worse than before.
  private boolean newAndNotMet(Asked question, Finding now) {
    boolean askedOfACrew =
        question.loading() != Kind.AT_LIMIT
            || before.keySet().stream().anyMatch(q -> q.loading() == Kind.AT_LIMIT);
    return now.role() != Role.INFORMATION && askedOfACrew && now.outcome() != Outcome.MEETS;
  }

  /**
   * The checks that held the boat back before and are asked and met now, whatever the loading is
   * called.
   */
  List<CheckQuestion> corrected() {
    return before.entrySet().stream()
        .filter(e -> e.getValue().holdsBack())
        .filter(e -> met(e.getKey()))
        .map(e -> e.getValue().question())
        .distinct()
        .toList();
  }

  private boolean met(Asked question) {
    return Stream.ofNullable(after.get(question)).anyMatch(f -> f.outcome() == Outcome.MEETS);
  }
}
