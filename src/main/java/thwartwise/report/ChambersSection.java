package thwartwise.report;

import java.util.List;
import thwartwise.inspection.ChamberFigures;

/** What holds the boat up when it is swamped, and what only looks as if it did. */
final class ChambersSection {
  private ChambersSection() {}

  static void write(Page page, List<ChamberFigures> chambers) {
    page.heading("What holds it up when swamped");
    if (chambers.isEmpty()) {
      page.paragraph("No chamber and no foam: only the stuff of the hull itself");
    }
    chambers.forEach(chamber -> page.point(words(chamber), chamber.why()));
    if (!chambers.stream().allMatch(ChamberFigures::counted)) {
      page.paragraph(
          "What counts for nothing is taken as full of water wherever the boat is told as swamped");
    }
  }

  private static String words(ChamberFigures chamber) {
    String drawn =
        chamber.name()
            + ": "
            + Shown.down(chamber.volume() * 1000, 0)
            + Shown.TIED
            + "litres inside the shell, ";
    return chamber.counted()
        ? drawn + Shown.down(chamber.countedVolume() * 1000, 0) + " of them counted"
        : drawn + "counted for nothing";
  }
}
