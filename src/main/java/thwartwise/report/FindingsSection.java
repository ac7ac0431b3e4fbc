package thwartwise.report;

import java.util.List;
import thwartwise.checks.Finding;

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
    FindingGroups.write(page, findings, f -> FindingWords.told(f, sources.cite(f.source())));
    sources.write(page);
  }
}
