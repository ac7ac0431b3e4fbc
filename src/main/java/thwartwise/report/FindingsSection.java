package thwartwise.report;

import java.util.List;
import thwartwise.checks.Finding;
import thwartwise.checks.Role;
import thwartwise.page.Page;

/** Everything that was asked of the boat and what it answered. */
final class FindingsSection {
  private FindingsSection() {}

  static void write(Page page, List<Finding> findings) {
    page.heading("What was asked, and what the boat answered");
    if (findings.isEmpty()) {
      page.paragraph("Nothing was asked of the boat");
    } else {
      page.paragraph("The figures in brackets lead to the sources below");
    }
    Sources sources = new Sources();
    write(page, findings, sources, Role.LIMITS_CREW, "These limit how many may be aboard");
    write(page, findings, sources, Role.FORBIDS_AN_ACT, "These say what nobody does");
    write(
        page,
        findings,
        sources,
        Role.INFORMATION,
        "These are for you to know; none of them changes how many may be aboard");
    sources.write(page);
  }

  private static void write(
      Page page, List<Finding> findings, Sources sources, Role role, String opening) {
    List<Finding> ofRole = findings.stream().filter(f -> f.role() == role).toList();
    if (ofRole.isEmpty()) {
      return;
    }
    page.gap().paragraph(opening);
    FindingGroups.write(page, ofRole, f -> FindingWords.told(f, sources.cite(f.source())));
  }
}
