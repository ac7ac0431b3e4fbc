package thwartwise.inspection;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import thwartwise.checks.Finding;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;

/** The findings of a boat beside those of the same boat after a change, question by question. */
final class AdviceComparison {
  private static final String AT_THE_LIMIT = "at the limit";

  private final Map<Question, Finding> before;
  private final Map<Question, Finding> after;

  /** What is for the reader to know is asked of one loading only, whichever it is. */
  private record Question(String check, Role role, String loading) {
    static Question of(Finding finding) {
      return new Question(
          question(finding.check(), finding.role()),
          finding.role(),
          finding.role() == Role.INFORMATION ? "" : loadingOf(finding));
    }
  }

  private AdviceComparison(List<Finding> before, List<Finding> after) {
    this.before = worst(before);
    this.after = worst(after);
  }

  static AdviceComparison of(List<Finding> before, List<Finding> after) {
    return new AdviceComparison(before, after);
  }

  private static Map<Question, Finding> worst(List<Finding> findings) {
    Map<Question, Finding> worst = new LinkedHashMap<>();
    findings.forEach(f -> worst.merge(Question.of(f), f, Finding::worse));
    return worst;
  }

  private static String loadingOf(Finding finding) {
    return finding.condition().split("[:;]", 2)[0].strip();
  }

  /** Which chamber is the worst to lose may change; the question stays the same. */
  static String question(String check, Role role) {
    boolean lost = role == Role.LIMITS_CREW && check.endsWith(" lost");
    return lost ? "swamped, one chamber lost" : check;
  }

  List<AdviceWorse> worse() {
    return after.keySet().stream().flatMap(q -> worse(q).stream()).toList();
  }

  private Optional<AdviceWorse> worse(Question question) {
    Finding now = after.get(question);
    Optional<Finding> then = Optional.ofNullable(before.get(question));
    boolean isWorse =
        then.map(t -> now.outcome().isWorseThan(t.outcome()) && !isForbiddenAlready(t))
            .orElseGet(() -> newAndNotMet(question, now));
    return isWorse
        ? Optional.of(
            new AdviceWorse(
                now.check(), now.role(), loadingOf(now), then.map(Finding::outcome), now.outcome()))
        : Optional.empty();
  }

  /** Whether nothing that a change does to this finding is worse. */
  static boolean isAsBadAsCanBe(Finding before) {
    return before.outcome() == Outcome.FALLS_SHORT || isForbiddenAlready(before);
  }

  /** Nobody does what could not be worked out; to fall short of it is no worse. */
  private static boolean isForbiddenAlready(Finding act) {
    return act.role() == Role.FORBIDS_AN_ACT && act.outcome() == Outcome.NOT_ASSESSED;
  }

  // A chamber that counts for the first time is asked about for the first time, and with nobody
  // aboard before, nothing was asked of a crew: neither is worse than it was.
  private boolean newAndNotMet(Question question, Finding now) {
    boolean askedOfACrew =
        !question.loading().equals(AT_THE_LIMIT)
            || before.keySet().stream().anyMatch(q -> q.loading().equals(AT_THE_LIMIT));
    return now.role() != Role.INFORMATION && askedOfACrew && now.outcome() != Outcome.MEETS;
  }

  /** What held back before and is asked and met now, whatever the loading is called. */
  List<String> putRight() {
    return before.entrySet().stream()
        .filter(e -> e.getValue().holdsBack())
        .filter(e -> met(e.getKey()))
        .map(e -> e.getValue().check())
        .distinct()
        .toList();
  }

  private boolean met(Question question) {
    return Stream.ofNullable(after.get(question)).anyMatch(f -> f.outcome() == Outcome.MEETS);
  }
}
