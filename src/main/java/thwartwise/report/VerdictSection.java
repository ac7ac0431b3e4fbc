package thwartwise.report;

import java.util.List;
import thwartwise.checks.Finding;
import thwartwise.inspection.Report;

/** May it be launched, and if not, why not. */
final class VerdictSection {
  private static final String LOADING =
      "All of this is about the boat as it is loaded today. Sit as told below, or leave people and"
          + " kit ashore, and inspect again";

  private VerdictSection() {}

  static void write(Page page, Report report) {
    Verdict verdict = Verdict.of(report);
    List<Finding> against = report.findings().stream().filter(Finding::holdsBack).toList();
    page.heading("May it be launched?").paragraph(verdict.words());
    page.points(report.recommendation().reasons());
    FindingGroups.write(page, against, finding -> FindingWords.told(finding, ""));
    if (verdict == Verdict.AFTER_WORK && against.stream().allMatch(f -> asLoaded(f, report))) {
      page.paragraph(LOADING);
    }
    // A launch is never held without a word.
    if (verdict == Verdict.HELD
        && against.isEmpty()
        && report.recommendation().reasons().isEmpty()) {
      page.point("No crew meets every check that limits the crew");
    }
  }

  private static boolean asLoaded(Finding finding, Report report) {
    String loading = report.asLoaded().loading();
    return !loading.isBlank() && finding.condition().startsWith(loading);
  }
}
