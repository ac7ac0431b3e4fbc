package thwartwise.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import thwartwise.checks.CheckQuestion;
import thwartwise.checks.CheckQuestion.Subject;
import thwartwise.checks.Finding;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;
import thwartwise.checks.UntestedAct;
import thwartwise.inspection.Report;
import thwartwise.measure.UnitFormat;
import thwartwise.page.Page;
import thwartwise.page.Sentence;
import thwartwise.page.Table;

/**
 * What nobody may do in this boat, whoever is aboard. An act that was not assessed is not allowed
 * either.
 */
final class ForbiddenSection {
  private ForbiddenSection() {}

  private static final String NONE_LOOKED_AT =
      "No act was worked out: sit down, sit still, sit in the middle";

  private static final String ACTS =
      Arrays.stream(UntestedAct.values()).map(CheckWords::of).collect(Collectors.joining(", "));

  private static final String UNTRIED = "Not worked out: " + ACTS;

  private static final List<Table.Column> COLUMNS =
      List.of(new Table.Column("Act", 27), new Table.Column("What happens", 52));

  private static final String NOT_TRIED = "Not worked out, so nobody does it: " + ACTS;

  static void write(Page page, Report report, UnitFormat units) {
    page.heading("What nobody may do, and why");
    if (Verdict.of(report) == Verdict.HELD) {
      page.paragraph("Nobody goes aboard: the launch is held");
      return;
    }
    Map<Subject, List<Finding>> acts = byAct(report.findings());
    Map<Subject, List<Finding>> forbidden = forbidden(acts);
    if (acts.isEmpty()) {
      page.paragraph(NONE_LOOKED_AT);
    } else if (forbidden.isEmpty()) {
      page.paragraph(
          "Within the limits in calm water: " + Sentence.list(words(acts)),
          "This is no permission to do it: sit still all the same");
    } else {
      page.table(Table.close(COLUMNS, rows(forbidden, units)));
    }
  }

  private static List<List<String>> rows(Map<Subject, List<Finding>> forbidden, UnitFormat units) {
    List<List<String>> rows = new ArrayList<>();
    forbidden.forEach(
        (act, against) ->
            rows.add(List.of(Sentence.capital(CheckWords.subject(act)), happens(against, units))));
    return rows;
  }

  /** The acts alone, for a reader who has seen the reasons. */
  static void brief(Page page, List<Finding> findings) {
    Map<Subject, List<Finding>> acts = byAct(findings);
    List<String> forbidden = words(forbidden(acts));
    page.paragraph("What nobody may do:");
    if (!forbidden.isEmpty()) {
      page.point("Never in this boat: " + Sentence.list(forbidden));
    }
    if (acts.isEmpty()) {
      page.point(NONE_LOOKED_AT);
    }
    page.point(NOT_TRIED);
  }

  /** The acts in a sentence or two, up to a number of them by name. */
  static List<String> listed(List<Finding> findings, int most) {
    Map<Subject, List<Finding>> acts = byAct(findings);
    List<String> all = words(forbidden(acts));
    List<String> named = new ArrayList<>(all.subList(0, Math.min(most, all.size())));
    if (named.size() < all.size()) {
      named.add(all.size() - named.size() + " more (page)");
    }
    return List.of(
        acts.isEmpty() ? NONE_LOOKED_AT : named.isEmpty() ? "" : Sentence.list(named), UNTRIED);
  }

  private static List<String> words(Map<Subject, List<Finding>> acts) {
    return acts.keySet().stream().map(CheckWords::subject).toList();
  }

  private static Map<Subject, List<Finding>> forbidden(Map<Subject, List<Finding>> acts) {
    Map<Subject, List<Finding>> forbidden = new LinkedHashMap<>();
    acts.forEach(
        (act, answers) ->
            forbidden.put(
                act, answers.stream().filter(a -> a.outcome() != Outcome.MEETS).toList()));
    forbidden.values().removeIf(List::isEmpty);
    return forbidden;
  }

  /** The answers by act; an act has more than one. */
  private static Map<Subject, List<Finding>> byAct(List<Finding> findings) {
    Map<Subject, List<Finding>> acts = new LinkedHashMap<>();
    findings.stream()
        .filter(finding -> finding.role() == Role.FORBIDS_AN_ACT)
        .forEach(
            finding ->
                acts.computeIfAbsent(finding.question().subject(), act -> new ArrayList<>())
                    .add(finding));
    return acts;
  }

  // The worst answer, because the same act was tried with several load cases.
  private static String happens(List<Finding> against, UnitFormat units) {
    Map<CheckQuestion, Finding> worst = new LinkedHashMap<>();
    against.forEach(a -> worst.merge(a.question(), a, Finding::worse));
    return Sentence.joined(
        worst.values().stream()
            .flatMap(
                a ->
                    Stream.of(
                        why(a, units), a.margin().turnsOver() ? "" : NoteWords.of(a.note(), units)))
            .distinct()
            .toList());
  }

  private static String why(Finding against, UnitFormat units) {
    return against.outcome() == Outcome.NOT_ASSESSED
        ? "Not assessed, so nobody does it"
        : FindingWords.figures(against, units);
  }
}
