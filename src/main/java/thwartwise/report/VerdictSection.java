package thwartwise.report;

import java.util.List;
import thwartwise.checks.Finding;
import thwartwise.inspection.AdvicePiece;
import thwartwise.inspection.Report;
import thwartwise.loadcase.LoadCase;
import thwartwise.page.Page;

/** May it be launched, and if not, why not. */
final class VerdictSection {
  private static final String LOADING =
      "Not as it is loaded today. Load and sit as told below, or put right what is named here, and"
          + " inspect again";
  private static final String FIRST = "To do first, of all that was tried:";
  private static final String MORE = "What would let it carry more, of all that was tried:";
  private static final String NO_ADULT =
      "No adult of the usual mass may go; the limits below are for somebody lighter";

  private VerdictSection() {}

  static void write(Page page, Report report) {
    Verdict verdict = Verdict.of(report);
    List<Finding> against = report.findings().stream().filter(Finding::holdsBack).toList();
    List<String> reasons = report.recommendation().reasons();
    boolean held = verdict == Verdict.HELD && !reasons.isEmpty();
    page.heading("May it be launched?").paragraph(verdict.words(), held ? reasons.get(0) : "");
    if (verdict == Verdict.AFTER_WORK && onlyAsLoaded(report)) {
      page.paragraph(LOADING);
    }
    if (verdict != Verdict.HELD && report.recommendation().people() == 0) {
      page.paragraph(NO_ADULT);
    }
    page.points(held ? reasons.subList(1, reasons.size()) : reasons);
    FindingGroups.write(page, against, finding -> FindingWords.told(finding, ""));
    // A launch is never held without a word.
    if (verdict == Verdict.HELD
        && against.isEmpty()
        && report.recommendation().reasons().isEmpty()) {
      page.point("No crew meets every check that limits the crew");
    }
    first(page, verdict, report);
  }

  private static void first(Page page, Verdict verdict, Report report) {
    List<AdvicePiece> pieces = AdviceSection.first(report.advice());
    if (pieces.isEmpty()) {
      return;
    }
    page.gap().paragraph(verdict == Verdict.NOTHING_AGAINST ? MORE : FIRST);
    for (int i = 0; i < pieces.size(); i++) {
      page.numbered(i + 1, AdviceWords.first(pieces.get(i), report.recommendation()));
    }
  }

  /** Whether all that stands against it comes of how it is loaded today. */
  static boolean onlyAsLoaded(Report report) {
    return report.findings().stream().filter(Finding::holdsBack).allMatch(VerdictSection::asLoaded);
  }

  private static boolean asLoaded(Finding finding) {
    return finding.loadCase().kind() == LoadCase.Kind.AS_LOADED;
  }
}
