package thwartwise.report;

import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.page.Page;
import thwartwise.passage.PassagePlan;
import thwartwise.passage.ReturnTrip;
import thwartwise.passage.Rowing;

/** The way home by oars or paddles when the motor stops. */
final class RowingHomeSection {
  private final Page page;
  private final PassagePlan plan;
  private final UnitFormat units;

  private RowingHomeSection(Page page, PassagePlan plan) {
    this.page = page;
    this.plan = plan;
    this.units = ReaderUnits.of(plan.boat());
  }

  static void write(Page page, PassagePlan plan) {
    new RowingHomeSection(page, plan).write();
  }

  private void write() {
    page.heading("If the motor stops");
    if (plan.rowing().isEmpty()) {
      page.paragraph(
          "No oars or paddles are among the kit: with the motor dead nothing brings it home",
          "Take them along, and try them with everybody aboard before going farther than a shout");
      return;
    }
    Rowing by = plan.rowing().get();
    page.paragraph(
        by == Rowing.OARS ? "Oars are aboard" : "Paddles are aboard, and no oars",
        "Stow them where they can be reached under way, tied in, and try them with the boat as"
            + " full as it will be");
    if (!plan.speeds().isEmpty()) {
      double out = farthest();
      page.paragraph(
          "From the farthest point above, "
              + units.distance(out, Side.UP)
              + ", "
              + rowing(by)
              + " home takes "
              + ElectricalFigures.atLeast(by.time(out, 0, 0))
              + " in still water at a guessed "
              + units.pace(by.speed(), Side.DOWN)
              + " (judgement)",
          "Against a stream of "
              + units.pace(by.speed() - ReturnTrip.LEAST_HOME, Side.DOWN)
              + " or more do not rely on it");
      plan.inStatedWaters()
          .filter(ReturnTrip::getsHome)
          .ifPresent(way -> rowedInStatedWaters(way, by));
    }
  }

  private static String rowing(Rowing by) {
    return by == Rowing.OARS ? "rowing" : "paddling";
  }

  private void rowedInStatedWaters(ReturnTrip way, Rowing by) {
    double time = by.time(way.distance(), plan.statedWind(), plan.statedStream());
    page.paragraph(
        Double.isFinite(time)
            ? "In the waters stated, from where it turns back there, "
                + units.distance(way.distance(), Side.UP)
                + ", "
                + rowing(by)
                + " home takes "
                + ElectricalFigures.atLeast(time)
            : "In the waters stated do not rely on "
                + rowing(by)
                + " home against wind and stream: go out"
                + " against both, so that they bring it back, or stay where people can wade");
  }

  private double farthest() {
    return plan.speeds().stream()
        .mapToDouble(s -> RangePage.way(s, 0, 0).distance())
        .max()
        .orElseThrow();
  }
}
