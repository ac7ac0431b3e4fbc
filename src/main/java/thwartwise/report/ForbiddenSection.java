package thwartwise.report;

import java.util.List;
import thwartwise.checks.Finding;
import thwartwise.checks.Outcome;
import thwartwise.checks.Role;

/** What nobody does in this boat. An act that was not assessed is not allowed either. */
final class ForbiddenSection {
  private ForbiddenSection() {}

  static void write(Page page, List<Finding> findings) {
    page.heading("What nobody does");
    List<Finding> forbidden =
        acts(findings).stream().filter(act -> act.outcome() != Outcome.MEETS).toList();
    forbidden.forEach(act -> page.point(words(act)));
    if (acts(findings).isEmpty()) {
      page.paragraph("No act was looked at: sit down, sit still, sit in the middle");
    } else if (forbidden.isEmpty()) {
      page.paragraph(
          "These acts were looked at and none fell short: "
              + Sentence.list(acts(findings).stream().map(Finding::check).toList()),
          "Sit still all the same");
    }
  }

  private static List<Finding> acts(List<Finding> findings) {
    return findings.stream().filter(f -> f.role() == Role.FORBIDS_AN_ACT).toList();
  }

  private static String[] words(Finding act) {
    String why =
        act.outcome() == Outcome.NOT_ASSESSED
            ? "It could not be assessed, so nobody does it"
            : FindingWords.figures(act);
    return new String[] {"Not in this boat: " + act.check(), act.note(), why};
  }
}
