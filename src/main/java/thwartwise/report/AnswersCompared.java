package thwartwise.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thwartwise.checks.Finding;
import thwartwise.record.AnswerChange;

/**
 * Every question whose answer is another one: first where the outcome changed, then where only the
 * figure did. A figure that is shown alike before and after did not change for a reader.
 */
final class AnswersCompared {
  private AnswersCompared() {}

  static void write(Page page, List<AnswerChange> answers) {
    List<AnswerChange> outcomes = answers.stream().filter(AnswerChange::outcomeChanged).toList();
    page.heading("Answers that came out differently");
    if (outcomes.isEmpty()) {
      page.paragraph("None");
    }
    groups(page, outcomes);
    List<AnswerChange> figures =
        answers.stream().filter(a -> !a.outcomeChanged()).filter(AnswersCompared::shows).toList();
    if (!figures.isEmpty()) {
      page.heading("Answers that came out alike, with another figure");
      groups(page, figures);
    }
  }

  private static void groups(Page page, List<AnswerChange> answers) {
    Map<String, List<AnswerChange>> byLoading = new LinkedHashMap<>();
    answers.forEach(a -> byLoading.computeIfAbsent(a.loading(), l -> new ArrayList<>()).add(a));
    byLoading.forEach(
        (loading, group) -> {
          page.gap().paragraph(loading.isBlank() ? "" : loading + ":");
          group.forEach(answer -> page.point(told(answer)));
        });
  }

  private static boolean shows(AnswerChange answer) {
    return !answer
            .before()
            .map(AnswersCompared::figure)
            .equals(answer.after().map(AnswersCompared::figure))
        || !limits(answer.before()).equals(limits(answer.after()));
  }

  private static String told(AnswerChange answer) {
    Finding latest = answer.latest();
    return latest.check()
        + ": "
        + (answer.outcomeChanged() ? outcomes(answer) + "; " : latest.outcome().word() + "; ")
        + side(answer.before())
        + " before, "
        + side(answer.after())
        + " after; "
        + limit(answer);
  }

  private static String outcomes(AnswerChange answer) {
    return outcome(answer.before()) + " before, " + outcome(answer.after()) + " after";
  }

  private static String outcome(Optional<Finding> finding) {
    return finding.map(f -> f.outcome().word()).orElse("not asked");
  }

  private static String side(Optional<Finding> finding) {
    return finding.map(AnswersCompared::figure).orElse("no figure");
  }

  private static String figure(Finding finding) {
    if (FindingWords.turnsOver(finding)) {
      return "over 90" + Shown.TIED + "degrees";
    }
    return finding.value().isEmpty() ? "no figure" : FindingWords.value(finding);
  }

  private static String limit(AnswerChange answer) {
    String now = limits(Optional.of(answer.latest()));
    boolean same = answer.before().isEmpty() || limits(answer.before()).equals(now);
    return same ? now : now + " instead of " + limits(answer.before());
  }

  private static String limits(Optional<Finding> finding) {
    return finding
        .map(f -> (f.atLeast() ? "at least " : "at most ") + FindingWords.limit(f))
        .orElse("");
  }
}
