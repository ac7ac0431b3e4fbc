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

/** The findings of a boat next to those of the same boat after a change, question by question. */
public final class AdviceComparison {
  private final Map<Asked, Finding> before;
  private final Map<Asked, Finding> after;

  /** What is for the reader to know is asked of one loading only, whichever it is. */
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

  /** Which chamber is the worst to lose may change; the question stays the same. */
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

  /** Whether nothing that a change does to this finding is worse. */
  public static boolean isAsBadAsCanBe(Finding before) {
    return before.outcome() == Outcome.FALLS_SHORT || isForbiddenAlready(before);
  }

  /** Nobody does what could not be worked out; to fall short of it is no worse. */
  private static boolean isForbiddenAlready(Finding act) {
    return act.role() == Role.FORBIDS_AN_ACT && act.outcome() == Outcome.NOT_ASSESSED;
  }

  // A chamber that counts for the first time is asked about for the first time, and with nobody
  // aboard before, nothing was asked of a crew: neither is worse than it was.
  private boolean newAndNotMet(Asked question, Finding now) {
    boolean askedOfACrew =
        question.loading() != Kind.AT_LIMIT
            || before.keySet().stream().anyMatch(q -> q.loading() == Kind.AT_LIMIT);
    return now.role() != Role.INFORMATION && askedOfACrew && now.outcome() != Outcome.MEETS;
  }

  /** What held back before and is asked and met now, whatever the loading is called. */
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
