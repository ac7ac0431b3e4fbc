package thwartwise.report;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import thwartwise.inspection.Advice;
import thwartwise.inspection.AdvicePiece;
import thwartwise.inspection.Report;
import thwartwise.page.Page;

/** What could be done about the boat, best first, each tried on the boat as it was measured. */
final class AdviceSection {
  private static final int FIRST = 3;

  private AdviceSection() {}

  static void write(Page page, Report report) {
    Advice advice = report.advice();
    if (advice.pieces().isEmpty() && advice.never().isEmpty()) {
      return;
    }
    page.heading("What could be changed, and what it would buy");
    if (!advice.pieces().isEmpty()) {
      page.paragraph(
          "Each was tried on the boat as it was measured, by itself; two together were not tried",
          "After any change measure again what it touched, and inspect again before it counts");
    }
    advice.pieces().forEach(piece -> page.point(AdviceWords.told(piece, report.recommendation())));
    page.points(advice.never().stream().map(ProhibitionWords::of).toList());
  }

  /** The three things to do first: what puts today's loading right comes before any gain. */
  static List<AdvicePiece> first(Advice advice) {
    Optional<AdvicePiece> today =
        advice.pieces().stream().filter(p -> !p.putsRight().isEmpty()).findFirst();
    return Stream.concat(today.stream(), advice.pieces().stream().filter(AdvicePiece::buys))
        .filter(p -> !p.worsensALimit())
        .distinct()
        .limit(FIRST)
        .toList();
  }
}
