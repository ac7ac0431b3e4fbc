package thwartwise.report;

import java.util.List;
import thwartwise.checks.Finding;
import thwartwise.inspection.Report;

/** May it be launched, and if not, why not. */
final class VerdictSection {
  private VerdictSection() {}

  static void write(Page page, Report report) {
    Verdict verdict = Verdict.of(report);
    page.heading("May it be launched?").paragraph(verdict.words());
    List<String> reasons = report.recommendation().reasons();
    switch (verdict) {
      case HELD -> page.points(reasons).points(holdingBack(report)).points(why(report));
      case AFTER_WORK -> page.points(holdingBack(report)).points(reasons);
      case NOTHING_AGAINST -> page.points(reasons);
    }
  }

  private static List<String> holdingBack(Report report) {
    return report.findings().stream().filter(Finding::holdsBack).map(FindingWords::whole).toList();
  }

  /** A launch is never held without a word. */
  private static List<String> why(Report report) {
    boolean told = !report.recommendation().reasons().isEmpty() || !holdingBack(report).isEmpty();
    return told ? List.of() : List.of("No crew meets every check that limits the crew.");
  }
}
