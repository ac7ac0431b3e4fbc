package thwartwise.report;

import java.util.List;
import thwartwise.inspection.AdvicePiece;
import thwartwise.inspection.Recommendation;
import thwartwise.inspection.Recommendation.CrewLimit;
import thwartwise.inspection.Report;
import thwartwise.page.FigureText;
import thwartwise.page.Page;
import thwartwise.record.InspectionRecord;

/**
 * What must be read off at arm's length: may it be launched, how much, how many, where they sit,
 * what nobody does. A launch that is held has no figures.
 */
final class GlanceSection {
  private GlanceSection() {}

  static void write(Page page, InspectionRecord inspection) {
    Report report = inspection.report();
    page.banner(Verdict.of(report).words());
    loadedSo(page, inspection);
    page.paragraph(Deferral.NO_PLATE);
    first(page, AdviceSection.first(report.advice()));
  }

  /** How it may go, when it may: a held launch says so and nothing else. */
  static void loadedSo(Page page, InspectionRecord inspection) {
    Report report = inspection.report();
    if (Verdict.of(report) == Verdict.HELD) {
      page.paragraph("Nobody and nothing goes aboard, as the boat stands");
      return;
    }
    figures(page, report.recommendation());
    HeldOnWords.of(report).forEach(page::paragraph);
    page.gap();
    SeatingWords.lines(page, inspection.boat().places(), report.recommendation());
    page.gap();
    ForbiddenSection.shortly(page, report.findings());
  }

  /** The deeds alone; what each of them buys is told below. */
  private static void first(Page page, List<AdvicePiece> pieces) {
    if (pieces.isEmpty()) {
      return;
    }
    page.paragraph("To do first:");
    for (int i = 0; i < pieces.size(); i++) {
      page.numbered(i + 1, DeedWords.of(pieces.get(i).deed()).deed());
    }
  }

  private static void figures(Page page, Recommendation crew) {
    page.figure(
        kg(crew.crew()),
        "people in all, dressed, with "
            + FigureText.people(CrewSection.aboard(crew))
            + " aboard"
            + CrewSection.heaviest(crew));
    heads(page, crew);
    page.figure(kg(crew.load()), "load in all: people, kit and everything that is not built in");
  }

  private static void heads(Page page, Recommendation crew) {
    String adult = FigureText.with(FigureText.up(crew.adult(), 0), "kg");
    String most = CrewSection.mostHeads(crew);
    if (crew.people() > 0) {
      page.figure(
          counted(crew.people(), "adult", "adults"),
          "of " + adult + ". " + CrewSection.nearly(crew).map(n -> n + ". ").orElse("") + most);
      return;
    }
    CrewLimit lighter = crew.crewLimits().get(0);
    page.figure(
        counted(lighter.people(), "person", "people"),
        SeatingWords.upTo(lighter) + "; no adult of " + adult + ". " + most);
  }

  private static String counted(int heads, String one, String several) {
    return FigureText.with(String.valueOf(heads), heads == 1 ? one : several);
  }

  private static String kg(double mass) {
    return FigureText.with(FigureText.down(mass, 0), "kg");
  }
}
