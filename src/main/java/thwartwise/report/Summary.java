package thwartwise.report;

import java.util.List;
import thwartwise.inspection.AdvicePiece;
import thwartwise.inspection.Recommendation;
import thwartwise.record.InspectionRecord;

/** What came of an inspection on one screen, for somebody who has just answered the questions. */
public final class Summary {
  private Summary() {}

  public static String of(InspectionRecord inspection) {
    Page page = new Page().title(inspection.boat().name());
    Verdict verdict = Verdict.of(inspection.report());
    page.paragraph(verdict.words()).gap();
    Recommendation crew = inspection.report().recommendation();
    if (verdict == Verdict.HELD) {
      held(page, crew);
    } else {
      carries(page, inspection, crew);
    }
    first(page, AdviceSection.first(inspection.report().advice()));
    page.gap()
        .paragraph(
            "If you do nothing else: life jackets on everybody, fastened; then the trial in"
                + " knee-deep water: load it, everyone to one side, then swamp it",
            "A recommendation, not a capacity plate and not a builder's plate; local rules come"
                + " first");
    return page.toString();
  }

  private static void held(Page page, Recommendation crew) {
    page.paragraph("Nobody and nothing goes aboard as the boat stands");
    crew.reasons().stream().limit(1).forEach(page::paragraph);
    if (crew.staysUpWith() > 0 && crew.holdsUpWhenSwamped() == 0) {
      page.paragraph(
          "Dry it stays up with "
              + Shown.adults(crew.staysUpWith())
              + ", and full of water it holds up nobody that was shown; that is no leave to go");
    }
  }

  private static void carries(Page page, InspectionRecord inspection, Recommendation crew) {
    page.paragraph(
        "At most "
            + Shown.with(Shown.down(crew.load(), 0), "kg")
            + " in all; with the kit listed ("
            + Shown.with(Shown.up(inspection.boat().kitMass(), 1), "kg")
            + ") people come to at most "
            + Shown.with(Shown.down(crew.crew(), 0), "kg")
            + ", life jackets on");
    SeatingWords.limits(page, inspection.boat().places(), crew);
    CrewSection.nearly(crew).ifPresent(page::paragraph);
    if (!crew.governedBy().isBlank()) {
      page.paragraph("What stops the next person: " + crew.governedBy());
    }
  }

  private static void first(Page page, List<AdvicePiece> pieces) {
    if (pieces.isEmpty()) {
      return;
    }
    page.gap().paragraph("To do first, of all that was tried:");
    for (int i = 0; i < pieces.size(); i++) {
      page.numbered(i + 1, pieces.get(i).deed());
    }
  }
}
