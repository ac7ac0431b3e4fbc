package thwartwise.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import thwartwise.inspection.Report;
import thwartwise.inspection.StateFigures;
import thwartwise.inspection.StateFigures.AfloatFigures;
import thwartwise.inspection.StateFigures.PoseFigures;
import thwartwise.inspection.StateFigures.RightingFigures;
import thwartwise.inspection.StateFigures.SwampedFigures;
import thwartwise.inspection.StateFigures.WaterFigures;
import thwartwise.measure.Rounding;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.page.Page;
import thwartwise.page.Sentence;
import thwartwise.page.Table;

/** The boat afloat, heeled and swamped: as loaded today next to the limit. */
final class FloatingSection {
  private static final String NOTHING = "-";
  private static final List<Table.Column> STATES =
      List.of(
          new Table.Column("", 24),
          new Table.Column("As loaded today", 27),
          new Table.Column("At the limit", 27));
  private static final List<Table.Column> WATER =
      List.of(
          new Table.Column("Loose water", 14),
          new Table.Column("Lowest edge", 14),
          new Table.Column("Metacentric height", 18),
          new Table.Column("Heel", 30));

  private final Report report;
  private final UnitFormat units;
  private final List<List<String>> rows = new ArrayList<>();

  private FloatingSection(Report report, UnitFormat units) {
    this.report = report;
    this.units = units;
  }

  static void write(Page page, Report report, UnitFormat units) {
    Page floats = new Page().table(new FloatingSection(report, units).table());
    page.folded(
        "How it floats",
        floats.paragraph(
            NoteWords.of(report.asLoaded().note(), units),
            NoteWords.of(report.atLimit().note(), units)));
    List<WaterFigures> loose = report.atLimit().looseWater();
    if (!loose.isEmpty()) {
      page.screenOnly(
          "With loose water in it, at the limit", new Page().table(water(loose, units)));
    }
  }

  private Table table() {
    row("Total weight", afloat(a -> units.mass(a.displacement(), Side.UP)));
    row("Position", afloat(a -> pose(a.pose()) + returns(a)));
    row(
        "Lowest edge above the water",
        afloat(a -> units.height(a.leastFreeboard(), Side.DOWN) + ", " + a.leastFreeboardAt()));
    row("Metacentric height", afloat(a -> units.height(a.gm(), Side.DOWN)));
    row("Floods when heeled", righting(FloatingSection::flooding));
    row("Righting moment", righting(this::moment));
    row("Work to heel it that far", righting(this::work));
    openings().forEach(name -> row(name + ", left open", righting(r -> opening(r, name))));
    row("Full of water", state -> swamped(state.swamped()));
    row("Lift to spare swamped", state -> lift(state.swamped().spareBuoyancy()));
    return Table.close(STATES, rows);
  }

  private void row(String what, Function<StateFigures, String> figure) {
    rows.add(List.of(what, figure.apply(report.asLoaded()), figure.apply(report.atLimit())));
  }

  private static Function<StateFigures, String> afloat(Function<AfloatFigures, String> figure) {
    return state -> state.afloat().map(figure).orElse("no way to float was found");
  }

  private static Function<StateFigures, String> righting(Function<RightingFigures, String> figure) {
    return state -> state.righting().map(figure).orElse(NOTHING);
  }

  private static String returns(AfloatFigures afloat) {
    return afloat.stable() ? "" : "; it does not come back after a nudge";
  }

  private static String flooding(RightingFigures righting) {
    return righting.floodingHeel().isPresent()
        ? "at "
            + degrees(righting.floodingHeel().getAsDouble(), Side.DOWN)
            + " to "
            + righting.toward()
            + ": "
            + righting.floodingAt()
        : "not up to 90°";
  }

  private String moment(RightingFigures righting) {
    return righting.greatestMoment() > 0
        ? "at most "
            + units.moment(righting.greatestMoment(), Side.DOWN)
            + ", at "
            + degrees(righting.greatestMomentHeel(), Side.DOWN)
        : "nothing";
  }

  private String work(RightingFigures righting) {
    if (!Double.isFinite(righting.work())) {
      return NOTHING;
    }
    String ends =
        righting.floodingHeel().isPresent()
            ? ""
            : righting
                .end()
                .map(end -> "; the curve ends there because " + CurveEndWords.of(end))
                .orElse("");
    return units.moment(righting.work(), Side.DOWN) + ends;
  }

  private Set<String> openings() {
    Set<String> names = new LinkedHashSet<>();
    Stream.of(report.asLoaded(), report.atLimit())
        .flatMap(state -> state.righting().stream())
        .flatMap(righting -> righting.openings().stream())
        .forEach(opening -> names.add(opening.name()));
    return names;
  }

  private static String opening(RightingFigures righting, String name) {
    return righting.openings().stream()
        .filter(opening -> opening.name().equals(name))
        .map(FloatingSection::opening)
        .findFirst()
        .orElse(NOTHING);
  }

  private static String opening(RightingFigures.Reached opening) {
    String fills = ", fills the " + (opening.into().isBlank() ? "boat" : opening.into());
    if (opening.heel().isEmpty()) {
      return "stays clear of the water up to that heel";
    }
    double degrees = Math.floor(Math.toDegrees(opening.heel().getAsDouble()));
    return degrees > 0
        ? "reaches the water at " + Rounding.down(degrees, 0) + "\u00b0" + fills
        : "lies under water" + fills;
  }

  private static String swamped(SwampedFigures swamped) {
    if (!swamped.floats()) {
      return "sinks";
    }
    List<String> poses =
        swamped.poses().stream().map(p -> p.orientation().word()).distinct().toList();
    String others = poses.size() > 1 ? "; it can also lie " + Sentence.list(poses) : "";
    return swamped.pose().map(FloatingSection::lies).orElse("no position of rest was found")
        + others;
  }

  private static String lies(PoseFigures pose) {
    String plainly =
        switch (pose.orientation()) {
          case UPSIDE_DOWN, ON_ITS_SIDE -> "rolls over: ";
          case STERN_UP -> "stands on its bow: ";
          case BOW_UP -> "stands on its stern: ";
          case UPRIGHT -> "";
        };
    return plainly + pose(pose);
  }

  private String lift(double spare) {
    return spare >= 0 ? units.mass(spare, Side.DOWN) : units.mass(-spare, Side.UP) + " too little";
  }

  private static Table water(List<WaterFigures> waters, UnitFormat units) {
    return Table.close(
        WATER,
        waters.stream()
            .map(
                w ->
                    List.of(
                        units.volume(w.volume(), Side.UP),
                        units.height(w.leastFreeboard(), Side.DOWN),
                        units.height(w.gm(), Side.DOWN),
                        Rounding.up(Math.abs(Math.toDegrees(w.heel())), 1)
                            + "\u00b0"
                            + (w.returns() ? "" : ", and does not come back")))
            .toList());
  }

  private static String degrees(double radians, Side side) {
    double degrees = Math.toDegrees(radians);
    return (side == Side.DOWN ? Rounding.down(degrees, 0) : Rounding.up(degrees, 0)) + "\u00b0";
  }

  // The floating position: its word, the heel and the trim. Both angles round away from level.
  private static final double LEVEL_DEGREES = 0.05;

  static String pose(PoseFigures pose) {
    String lies =
        pose.orientation().word()
            + ", "
            + angle(
                pose.heel(),
                "heeled ",
                UnitFormat.TIED + "degrees to starboard",
                UnitFormat.TIED + "degrees to port")
            + " and "
            + angle(
                pose.trim(),
                "trimmed ",
                UnitFormat.TIED + "degrees down by the bow",
                UnitFormat.TIED + "degrees down by the stern");
    return pose.stable() ? lies : lies + ", and does not stay so when nudged";
  }

  private static String angle(double radians, String before, String positive, String negative) {
    double degrees = Math.toDegrees(radians);
    if (Math.abs(degrees) < LEVEL_DEGREES) {
      return "not " + before.strip();
    }
    return before + Rounding.up(Math.abs(degrees), 1) + (degrees > 0 ? positive : negative);
  }
}
