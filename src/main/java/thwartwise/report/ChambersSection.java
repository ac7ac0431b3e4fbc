package thwartwise.report;

import java.util.List;
import thwartwise.inspection.ChamberFigures;
import thwartwise.page.FigureText;
import thwartwise.page.Page;

/** What holds the boat up when it is swamped, and what only looks as if it did. */
final class ChambersSection {
  private static final double LITRE = 0.001;

  private ChambersSection() {}

  static void write(Page page, List<ChamberFigures> chambers) {
    page.heading("What holds it up when swamped");
    if (chambers.isEmpty()) {
      page.paragraph("No chamber and no foam: only the stuff of the hull itself");
    }
    chambers.forEach(chamber -> page.point(words(chamber), chamber.why()));
    if (chambers.stream().anyMatch(ChambersSection::countsInPart)) {
      page.paragraph(
          "Less counts than is drawn where fewer litres were poured in, of foam, and where the hull"
              + " swells between two stations: only what straight lines from one to the next hold"
              + " is counted");
    }
    if (!chambers.stream().allMatch(ChamberFigures::counted)) {
      page.paragraph(
          "What counts for nothing is taken as full of water wherever the boat is told as swamped");
    }
  }

  private static boolean countsInPart(ChamberFigures chamber) {
    return chamber.counted() && chamber.countedVolume() < chamber.volume() - LITRE;
  }

  private static String words(ChamberFigures chamber) {
    String drawn =
        chamber.name()
            + ": "
            + FigureText.down(chamber.volume() * 1000, 0)
            + FigureText.TIED
            + "litres inside the shell, ";
    return chamber.counted()
        ? drawn + FigureText.down(chamber.countedVolume() * 1000, 0) + " of them counted"
        : drawn + "counted for nothing";
  }
}
