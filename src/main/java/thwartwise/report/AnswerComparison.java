package thwartwise.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thwartwise.checks.Finding;
import thwartwise.loadcase.LoadCase.Kind;
import thwartwise.measure.UnitFormat;
import thwartwise.page.Page;
import thwartwise.record.AnswerChange;

/**
 * Every question with a different answer: first those whose outcome changed, then those with
 * another figure. A figure that is shown alike before and after did not change for a reader.
 */
final class AnswerComparison {
  private AnswerComparison() {}

  static void outcomes(Page page, List<AnswerChange> answers, UnitFormat units) {
    List<AnswerChange> outcomes = answers.stream().filter(AnswerChange::outcomeChanged).toList();
    page.heading("Changed outcomes");
    if (outcomes.isEmpty()) {
      page.paragraph("None");
    }
    groups(page, outcomes, units);
  }

  static void figures(Page page, List<AnswerChange> answers, UnitFormat units) {
    List<AnswerChange> figures =
        answers.stream().filter(a -> !a.outcomeChanged()).filter(a -> shows(a, units)).toList();
    if (!figures.isEmpty()) {
      page.heading("Same outcomes, other figures");
      groups(page, figures, units);
    }
  }

  private static void groups(Page page, List<AnswerChange> answers, UnitFormat units) {
    Map<Kind, List<AnswerChange>> byLoading = new LinkedHashMap<>();
    answers.forEach(a -> byLoading.computeIfAbsent(a.loading(), l -> new ArrayList<>()).add(a));
    boolean first = true;
    for (Map.Entry<Kind, List<AnswerChange>> group : byLoading.entrySet()) {
      if (!first) {
        page.gap();
      }
      page.paragraph(loading(group.getKey()));
      group.getValue().forEach(answer -> page.point(sentence(answer, units)));
      first = false;
    }
  }

  /**
   * The kind of load case. The crews may differ, because each record is compared by what it says of
   * its own.
   */
  private static String loading(Kind kind) {
    return kind == Kind.UNNAMED
        ? "Besides:"
        : LoadCaseWords.kind(kind)
            + (kind == Kind.AT_LIMIT ? ", each with the crew of its own record:" : ":");
  }

  private static boolean shows(AnswerChange answer, UnitFormat units) {
    return !answer
            .before()
            .map(f -> figure(f, units))
            .equals(answer.after().map(f -> figure(f, units)))
        || !limits(answer.before(), units).equals(limits(answer.after(), units));
  }

  private static String sentence(AnswerChange answer, UnitFormat units) {
    return CheckWords.of(answer.latest().question())
        + ": "
        + (answer.outcomeChanged() ? outcomes(answer) : answer.latest().outcome().word())
        + "; "
        + figures(answer, units)
        + "; "
        + limit(answer, units);
  }

  private static String figures(AnswerChange answer, UnitFormat units) {
    if (answer.before().isEmpty() || answer.after().isEmpty()) {
      return figure(answer.latest(), units) + (answer.after().isEmpty() ? " before" : " after");
    }
    String before = figure(answer.before().get(), units);
    String after = figure(answer.after().get(), units);
    return before.equals(after) ? after : "from " + before + " to " + after;
  }

  private static String outcomes(AnswerChange answer) {
    return outcome(answer.before()) + " before, " + outcome(answer.after()) + " after";
  }

  private static String outcome(Optional<Finding> finding) {
    return finding.map(f -> f.outcome().word()).orElse("not asked");
  }

  private static String figure(Finding finding, UnitFormat units) {
    if (finding.margin().turnsOver()) {
      return "over 90\u00b0";
    }
    return finding.value().isEmpty()
        ? "no figure"
        : MarginWords.ofTheWater(
            finding.question().measure(),
            finding.margin(),
            FindingWords.distinguishing(finding, units));
  }

  private static String limit(AnswerChange answer, UnitFormat units) {
    String now = limits(Optional.of(answer.latest()), units);
    boolean same = answer.before().isEmpty() || limits(answer.before(), units).equals(now);
    return same ? now : now + " instead of " + limits(answer.before(), units);
  }

  private static String limits(Optional<Finding> finding, UnitFormat units) {
    return finding.map(f -> MarginWords.asked(f.margin(), units)).orElse("");
  }
}
