package thwartwise.report;

import java.util.List;
import thwartwise.afloat.PoseOrientation;
import thwartwise.checks.LoadCaseWords;
import thwartwise.inspection.AfloatFigures;
import thwartwise.inspection.PoseFigures;
import thwartwise.inspection.Report;
import thwartwise.inspection.RightingFigures;
import thwartwise.inspection.StateFigures;
import thwartwise.inspection.SwampedFigures;
import thwartwise.inspection.WaterFigures;
import thwartwise.page.FigureText;
import thwartwise.page.Page;
import thwartwise.page.Sentence;

/** How the boat floats, heels and lies swamped, in words with the figures in them. */
final class FloatingSection {
  private FloatingSection() {}

  static void write(Page page, Report report) {
    page.heading("How it floats");
    state(page, "As loaded today", report.asLoaded());
    page.gap();
    state(page, "At the limit", report.atLimit());
  }

  private static void state(Page page, String when, StateFigures state) {
    String loading = LoadCaseWords.of(state.loadCase());
    page.paragraph(loading.isBlank() ? when : loading);
    state
        .afloat()
        .ifPresentOrElse(
            afloat -> page.point(afloat(afloat)), () -> page.point("It finds no way to float"));
    state.righting().ifPresent(righting -> page.point(righting(righting)));
    state.righting().stream()
        .flatMap(r -> r.openings().stream())
        .forEach(opening -> page.point(opening(opening)));
    page.point(swamped(state.swamped()));
    state.looseWater().forEach(water -> page.point(water(water)));
    if (!state.note().isBlank()) {
      page.point(state.note());
    }
  }

  private static String[] afloat(AfloatFigures afloat) {
    return new String[] {
      "All in all it weighs "
          + FigureText.up(afloat.displacement(), 0)
          + FigureText.TIED
          + "kg and floats "
          + PoseWords.of(afloat.pose()),
      freeboard(afloat),
      "Its metacentric height is " + FigureText.down(afloat.gm(), 2) + FigureText.TIED + "m",
      afloat.stable() ? "" : "It does not come back when it is nudged"
    };
  }

  private static String freeboard(AfloatFigures afloat) {
    double least = afloat.leastFreeboard();
    String where = ": " + afloat.leastFreeboardAt();
    return least < 0
        ? "The water stands "
            + FigureText.up(-least, 2)
            + FigureText.TIED
            + "m over the place where it comes in"
            + where
        : "The lowest place where water could come in is "
            + FigureText.down(least, 2)
            + FigureText.TIED
            + "m above the water"
            + where;
  }

  private static String[] righting(RightingFigures righting) {
    String side = "Heeled to " + righting.toward() + ", its worse side, everyone leaning with it, ";
    String flooding =
        righting.floodingHeel().isPresent()
            ? "water comes in at "
                + FigureText.down(Math.toDegrees(righting.floodingHeel().getAsDouble()), 0)
                + " degrees: "
                + righting.floodingAt()
            : "no water comes in up to a right angle";
    return new String[] {side + flooding, moment(righting), work(righting)};
  }

  private static String work(RightingFigures righting) {
    if (!Double.isFinite(righting.work())) {
      return "";
    }
    String ends =
        righting.floodingHeel().isPresent()
            ? ""
            : "; the curve ends there because " + righting.endsBecause();
    return "It takes "
        + FigureText.down(righting.work(), 0)
        + FigureText.TIED
        + "Nm of work to heel it so far"
        + ends;
  }

  private static String opening(RightingFigures.Reached opening) {
    String leftOpen = opening.name() + ", if left open, ";
    String fills = " and fills the " + (opening.into().isBlank() ? "boat" : opening.into());
    if (opening.heel().isEmpty()) {
      return leftOpen + "stays clear of the water as far as that";
    }
    double degrees = Math.floor(Math.toDegrees(opening.heel().getAsDouble()));
    return degrees > 0
        ? leftOpen + "reaches the water at " + FigureText.down(degrees, 0) + " degrees" + fills
        : leftOpen + "lies under water" + fills;
  }

  private static String water(WaterFigures water) {
    return "With "
        + FigureText.up(1000 * water.volume(), 0)
        + " litres of water loose in it: lowest edge "
        + FigureText.down(water.leastFreeboard(), 2)
        + FigureText.TIED
        + "m up, metacentric height "
        + FigureText.down(water.gm(), 2)
        + FigureText.TIED
        + "m"
        + ", heeled "
        + FigureText.up(Math.abs(Math.toDegrees(water.heel())), 1)
        + FigureText.TIED
        + "degrees"
        + (water.returns() ? "" : "; it does not come back to how it lay dry");
  }

  private static String moment(RightingFigures righting) {
    return righting.greatestMoment() > 0
        ? "On the way it brings itself back with at most "
            + FigureText.down(righting.greatestMoment(), 0)
            + FigureText.TIED
            + "Nm, at "
            + FigureText.down(Math.toDegrees(righting.greatestMomentHeel()), 0)
            + FigureText.TIED
            + "degrees"
        : "Nothing on the way brings it back";
  }

  private static String[] swamped(SwampedFigures swamped) {
    if (!swamped.floats()) {
      return new String[] {"Swamped it sinks", lift(swamped.spareBuoyancy())};
    }
    String lies =
        swamped.pose().map(PoseWords::of).orElse("but no way in which it comes to rest was found");
    return new String[] {
      "Swamped it floats " + lies,
      plainly(swamped),
      lift(swamped.spareBuoyancy()),
      otherPoses(swamped)
    };
  }

  private static String plainly(SwampedFigures swamped) {
    return switch (swamped.pose().map(PoseFigures::orientation).orElse(PoseOrientation.UPRIGHT)) {
      case UPSIDE_DOWN, ON_ITS_SIDE -> "It rolls over when swamped";
      case STERN_UP -> "It stands on its bow when swamped";
      case BOW_UP -> "It stands on its stern when swamped";
      case UPRIGHT -> "";
    };
  }

  private static String lift(double spare) {
    return spare >= 0
        ? "Its lift to spare, with all that counts under water, is "
            + FigureText.down(spare, 0)
            + FigureText.TIED
            + "kg"
        : "It lacks " + FigureText.up(-spare, 0) + FigureText.TIED + "kg of lift";
  }

  private static String otherPoses(SwampedFigures swamped) {
    List<String> words =
        swamped.poses().stream().map(p -> p.orientation().word()).distinct().toList();
    return words.size() > 1 ? "It can come to lie in these ways: " + Sentence.list(words) : "";
  }
}
