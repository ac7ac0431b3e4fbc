package thwartwise.report;

import java.util.ArrayList;
import java.util.List;
import thwartwise.checks.Finding;
import thwartwise.crew.Recommendation;
import thwartwise.inspection.Report;
import thwartwise.loadcase.LoadCase.Kind;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.page.Page;

/** Why the boat may not be launched as it is, and what stops one more person. */
final class VerdictSection {
  private static final String LOADING =
      "Not as it is loaded today. Load and sit as shown here, or put right what is listed here and"
          + " inspect again";

  private VerdictSection() {}

  static void reasonsAgainst(Page page, Report report, UnitFormat units) {
    Verdict verdict = Verdict.of(report);
    if (verdict == Verdict.AFTER_WORK && onlyAsLoaded(report)) {
      page.paragraph(LOADING);
    }
    Recommendation crew = report.recommendation();
    if (verdict != Verdict.HELD && crew.people() == 0) {
      page.paragraph(
          "No adult of "
              + units.mass(crew.adult(), Side.UP)
              + " may go; the limits are for somebody lighter");
    }
    List<String> all = new ArrayList<>(RefusalWords.brief(crew.reasons(), units));
    all.addAll(MishapWords.of(report, units));
    // A held launch always has a reason in words.
    if (verdict == Verdict.HELD && all.isEmpty()) {
      all.add("No crew meets every check that limits the crew");
    }
    page.points(all);
  }

  /** What happens with one more person; blank if unknown. */
  static String[] nextPerson(Recommendation crew, UnitFormat units) {
    String stops =
        crew.governedBy().map(f -> "With one person more: " + MishapWords.of(f)).orElse("");
    return new String[] {
      stops,
      crew.nextPersonBreaks().isEmpty() || crew.withheld()
          ? ""
          : (crew.people() == 0 ? "An adult" : "One more adult")
              + " falls short: "
              + String.join("; ", RefusalWords.of(crew.nextPersonBreaks(), units))
    };
  }

  /** Whether every reason lies in today's loading. */
  static boolean onlyAsLoaded(Report report) {
    return report.findings().stream().filter(Finding::holdsBack).allMatch(VerdictSection::asLoaded);
  }

  private static boolean asLoaded(Finding finding) {
    return finding.loadCase().kind() == Kind.AS_LOADED;
  }
}
