package thwartwise.report;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import thwartwise.advice.Advice;
import thwartwise.advice.AdvicePiece;
import thwartwise.inspection.Report;
import thwartwise.measure.UnitFormat;
import thwartwise.page.Page;
import thwartwise.picture.Pictures;
import thwartwise.remedy.Deed;

/** Changes to the boat, in the order to make them in, each tried on the boat as measured. */
final class AdviceSection {
  private static final int FIRST = 3;

  private AdviceSection() {}

  static void write(Page page, Report report, Pictures pictures, UnitFormat units) {
    Advice advice = report.advice();
    if (advice.pieces().isEmpty() && advice.prohibitions().isEmpty()) {
      return;
    }
    page.heading("What could be changed");
    if (!advice.pieces().isEmpty()) {
      page.paragraph(
          "Each change was tried alone on the boat as measured; the gains of two changes do not add"
              + " up",
          advice.pieces().stream().anyMatch(p -> p.deed() instanceof Deed.DeedPair)
              ? "Two changes in one line were tried together, because neither is enough alone"
              : "",
          "A change counts only after you measure again what it affects and inspect again");
    }
    List<AdvicePiece> first = first(advice);
    Set<String> said = new HashSet<>();
    PicturesSheet.change(page, pictures, units);
    first.forEach(piece -> page.point(AdviceWords.phrases(piece, false, said, units)));
    Page others = new Page();
    advice.pieces().stream()
        .filter(piece -> !first.contains(piece))
        .forEach(piece -> others.point(AdviceWords.phrases(piece, true, said, units)));
    if (!others.blocks().isEmpty()) {
      page.folded("Other changes that would help", others);
    }
    page.points(advice.prohibitions().stream().map(ProhibitionWords::of).toList());
  }

  /** The three things to do first: what corrects today's loading comes before any gain. */
  static List<AdvicePiece> first(Advice advice) {
    Optional<AdvicePiece> today =
        advice.pieces().stream().filter(p -> !p.corrects().isEmpty()).findFirst();
    return Stream.concat(today.stream(), advice.pieces().stream().filter(AdvicePiece::buys))
        .filter(p -> !p.worsensALimit())
        .distinct()
        .limit(FIRST)
        .toList();
  }
}
