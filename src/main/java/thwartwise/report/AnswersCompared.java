package thwartwise.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thwartwise.checks.CheckWords;
import thwartwise.checks.Finding;
import thwartwise.checks.LoadCaseWords;
import thwartwise.loadcase.LoadCase.Kind;
import thwartwise.page.FigureText;
import thwartwise.page.Page;
import thwartwise.record.AnswerChange;

/**
 * Every question whose answer is another one: first where the outcome changed, then where only the
 * figure did. A figure that is shown alike before and after did not change for a reader.
 */
final class AnswersCompared {
  private AnswersCompared() {}

  static void outcomes(Page page, List<AnswerChange> answers) {
    List<AnswerChange> outcomes = answers.stream().filter(AnswerChange::outcomeChanged).toList();
    page.heading("Answers that came out differently");
    if (outcomes.isEmpty()) {
      page.paragraph("None");
    }
    groups(page, outcomes);
  }

  static void figures(Page page, List<AnswerChange> answers) {
    List<AnswerChange> figures =
        answers.stream().filter(a -> !a.outcomeChanged()).filter(AnswersCompared::shows).toList();
    if (!figures.isEmpty()) {
      page.heading("Answers that came out alike, with another figure");
      groups(page, figures);
    }
  }

  private static void groups(Page page, List<AnswerChange> answers) {
    Map<Kind, List<AnswerChange>> byLoading = new LinkedHashMap<>();
    answers.forEach(a -> byLoading.computeIfAbsent(a.loading(), l -> new ArrayList<>()).add(a));
    boolean first = true;
    for (Map.Entry<Kind, List<AnswerChange>> group : byLoading.entrySet()) {
      if (!first) {
        page.gap();
      }
      page.paragraph(loading(group.getKey()));
      group.getValue().forEach(answer -> page.point(told(answer)));
      first = false;
    }
  }

  /** The crews may differ: what is compared is what each record says of its own. */
  private static String loading(Kind kind) {
    return kind == Kind.UNNAMED
        ? "Besides:"
        : LoadCaseWords.kind(kind)
            + (kind == Kind.AT_LIMIT ? ", each with the crew of its own record:" : ":");
  }

  private static boolean shows(AnswerChange answer) {
    return !answer
            .before()
            .map(AnswersCompared::figure)
            .equals(answer.after().map(AnswersCompared::figure))
        || !limits(answer.before()).equals(limits(answer.after()));
  }

  private static String told(AnswerChange answer) {
    return CheckWords.of(answer.latest().question())
        + ": "
        + (answer.outcomeChanged() ? outcomes(answer) : answer.latest().outcome().word())
        + "; "
        + figures(answer)
        + "; "
        + limit(answer);
  }

  private static String figures(AnswerChange answer) {
    if (answer.before().isEmpty() || answer.after().isEmpty()) {
      return figure(answer.latest()) + (answer.after().isEmpty() ? " before" : " after");
    }
    String before = figure(answer.before().get());
    String after = figure(answer.after().get());
    return before.equals(after) ? after : "from " + before + " to " + after;
  }

  private static String outcomes(AnswerChange answer) {
    return outcome(answer.before()) + " before, " + outcome(answer.after()) + " after";
  }

  private static String outcome(Optional<Finding> finding) {
    return finding.map(f -> f.outcome().word()).orElse("not asked");
  }

  private static String figure(Finding finding) {
    if (finding.margin().turnsOver()) {
      return "over 90" + FigureText.TIED + "degrees";
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
        .map(f -> (f.margin().atLeast() ? "at least " : "at most ") + FindingWords.limit(f))
        .orElse("");
  }
}
