package thwartwise.report;

import java.util.List;
import thwartwise.inspection.Report.ChamberFigures;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.page.Page;
import thwartwise.page.Table;

/** What holds the swamped boat up, and what only seems to. */
final class ChambersSection {
  private static final double LITRE = 0.001;
  private static final List<Table.Column> COLUMNS =
      List.of(
          new Table.Column("Chamber", 22),
          new Table.Column("Drawn", 10),
          new Table.Column("Counts", 10),
          new Table.Column("Because", 35));

  private ChambersSection() {}

  static void write(Page page, List<ChamberFigures> chambers, UnitFormat units) {
    page.heading("What holds it up when swamped");
    if (chambers.isEmpty()) {
      page.paragraph("No chamber and no foam: only the hull itself");
      return;
    }
    page.table(
        Table.close(COLUMNS, chambers.stream().map(chamber -> row(chamber, units)).toList()));
    page.paragraph(
        chambers.stream().anyMatch(ChambersSection::countsInPart)
            ? "Less counts than is drawn for foam, for a box that took less water, and where"
                + " the hull bulges between two stations: there only the volume inside straight"
                + " lines between them counts"
            : "",
        chambers.stream().allMatch(ChamberFigures::counted)
            ? ""
            : "A chamber that counts for nothing is taken as full of water");
  }

  private static boolean countsInPart(ChamberFigures chamber) {
    return chamber.counted() && chamber.countedVolume() < chamber.volume() - LITRE;
  }

  private static List<String> row(ChamberFigures chamber, UnitFormat units) {
    return List.of(
        chamber.name(),
        units.volume(chamber.volume(), Side.DOWN),
        chamber.counted() ? units.volume(chamber.countedVolume(), Side.DOWN) : "nothing",
        BuoyancyReasonWords.of(chamber.why(), units));
  }
}
