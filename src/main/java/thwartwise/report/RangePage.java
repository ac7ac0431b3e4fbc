package thwartwise.report;

import static thwartwise.report.ElectricalFigures.amperes;
import static thwartwise.report.ElectricalFigures.duration;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thwartwise.boat.KeptProof;
import thwartwise.electrics.UsableCharge;
import thwartwise.inspection.ShallowWater;
import thwartwise.measure.Rounding;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.page.Page;
import thwartwise.page.Sentence;
import thwartwise.page.Table;
import thwartwise.passage.MotorSpeed;
import thwartwise.passage.PassagePlan;
import thwartwise.passage.ReturnTrip;

/** How long motor and battery run, when to turn back, and what to do if the motor stops. */
public final class RangePage {
  private static final double[] WINDS = {0, 2, 4};
  private static final double[] STREAMS = {0, 0.5, 1};

  private static final String OLD =
      "the battery is "
          + Rounding.plain(UsableCharge.MOST_YEARS)
          + " years old or more, and of one so old nothing counts (judgement)";

  private final PassagePlan plan;
  private final UnitFormat units;
  private final Optional<ShallowWater> shallow;
  private final Page page = new Page();

  private RangePage(PassagePlan plan, Optional<ShallowWater> shallow) {
    this.plan = plan;
    this.shallow = shallow;
    this.units = ReaderUnits.of(plan.boat());
  }

  /**
   * The page.
   *
   * @param shallow how the boat floats with its motor down and tilted, as far as that was measured
   */
  public static String of(PassagePlan plan, Optional<ShallowWater> shallow) {
    return new RangePage(plan, shallow).page().toString();
  }

  /** The same in a few sentences; none where neither battery nor motor is stated. */
  static List<String> inShort(PassagePlan plan) {
    RangePage range = new RangePage(plan, Optional.empty());
    List<String> all = new ArrayList<>();
    if (plan.speeds().isEmpty()) {
      all.add(
          range.isWornOut()
              ? "How long motor and battery run is not worked out: " + OLD
              : "How long motor and battery run is not worked out: something it needs is not known");
    } else {
      all.add(range.lasts());
      plan.claimNotMet().ifPresent(hours -> all.add(claimed(hours)));
      range.inStatedWaters().ifPresent(all::add);
    }
    return all;
  }

  private Page page() {
    page.title(plan.boat().name());
    KeptProof.holding(plan.boat().proofs())
        .ifPresent(proof -> page.paragraph(Sentence.capital(ProofWords.held(proof, units))));
    if (plan.speeds().isEmpty()) {
      return notWorkedOut();
    }
    answer();
    claim();
    plan.speeds().forEach(this::speed);
    page.gap()
        .paragraph(
            "Each entry: turn back at the latest after so long, and never go farther out than that",
            "It goes out with the stream and comes home against stream and wind, and "
                + "a third of the running time is left at the landing");
    RowingHomeSection.write(page, plan);
    shallow.ifPresent(water -> ShallowWaterSection.write(page, water, plan.boat()));
    PanelYieldSection.write(page, plan);
    RunningTimeBasis.write(page, plan);
    return cautions();
  }

  private boolean isWornOut() {
    return plan.usable().filter(UsableCharge::isWornOut).isPresent();
  }

  private Page notWorkedOut() {
    page.paragraph(
        isWornOut()
            ? "Running time is not worked out: " + OLD
            : "Running time is not worked out: something it needs is not known");
    if (isWornOut()) {
      page.point(
          "Nobody can tell by its label what it still holds",
          "Have its charge measured, or take a newer one, and enter that charge and that day",
          ElectricalFigures.entered("battery"));
    }
    plan.batteryAshore()
        .ifPresent(name -> page.point(ElectricalFigures.ashore("The battery", name)));
    plan.motorAshore().ifPresent(name -> page.point(ElectricalFigures.ashore("The motor", name)));
    if (plan.usable().isEmpty() && plan.batteryAshore().isEmpty()) {
      page.point(
          "The battery",
          "Read volts and ampere-hours (Ah) on its label",
          ElectricalFigures.entered("battery"));
    }
    if (plan.fullCurrent().isEmpty() && plan.motorAshore().isEmpty()) {
      page.point(
          "What the motor draws",
          "Read amperes or pounds of thrust on its plate, or time a run with an ammeter",
          ElectricalFigures.entered("motor"));
    }
    RowingHomeSection.write(page, plan);
    shallow.ifPresent(water -> ShallowWaterSection.write(page, water, plan.boat()));
    PanelYieldSection.write(page, plan);
    return cautions();
  }

  private void answer() {
    page.paragraph(lasts(), "Against stream and wind sooner: the tables below");
    if (plan.speeds().stream().anyMatch(MotorSpeed::speedGuessed)) {
      page.paragraph(
          "Nobody timed this boat: its speed is a guess and so is every distance here",
          "Pace out a stretch of the bank and drive it both ways at each setting with a watch and an"
              + " ammeter",
          ElectricalFigures.entered("run"));
    }
    inStatedWaters().ifPresent(page::paragraph);
  }

  private String lasts() {
    MotorSpeed fast = plan.speeds().get(0);
    return "At "
        + called(fast)
        + " the battery lasts "
        + duration(fast.time())
        + ": turn back after "
        + duration(way(fast, 0, 0).turnAfter())
        + " at the latest, in still water without wind";
  }

  /** The case that matters is the one that the boat file states for its waters. */
  private Optional<String> inStatedWaters() {
    String where =
        "In the waters stated (wind "
            + units.speed(plan.statedWind(), Side.UP)
            + ", stream "
            + units.pace(plan.statedStream(), Side.UP)
            + ") ";
    return plan.inStatedWaters()
        .map(
            way ->
                way.getsHome()
                    ? where + "turn back after " + duration(way.turnAfter()) + " at the latest"
                    : where + "it does not get home against both: do not go out with the stream");
  }

  private static String claimed(double seconds) {
    return "It is said to run "
        + ElectricalFigures.hours(seconds)
        + " at full power: this battery cannot give that";
  }

  private void claim() {
    if (plan.claimNotMet().isEmpty()) {
      return;
    }
    double claimed = plan.claimNotMet().get();
    double draw = plan.fullDraw().orElseThrow();
    UsableCharge usable = plan.usable().orElseThrow();
    page.heading("The running time that is claimed");
    page.paragraph(
        claimed(claimed),
        ElectricalFigures.hours(claimed)
            + " at "
            + amperes(draw)
            + " take "
            + ElectricalFigures.taken(claimed * draw)
            + "; the label says "
            + ElectricalFigures.given(usable.charge())
            + ", and of it "
            + ElectricalFigures.given(usable.drawn(draw))
            + " can be used at that current",
        "At full power it lasts "
            + duration(usable.time(draw))
            + "; it lasts "
            + ElectricalFigures.hours(claimed)
            + " only at "
            + Rounding.down(usable.currentFor(claimed), 1)
            + " A or less");
  }

  static String called(MotorSpeed speed) {
    return speed.run().map(run -> "setting " + run.setting()).orElse("full power");
  }

  private void speed(MotorSpeed speed) {
    page.heading(Sentence.capital(called(speed)) + ": the battery lasts " + duration(speed.time()));
    page.paragraph(through(speed), draws(speed));
    List<List<String>> rows = new ArrayList<>();
    for (double wind : WINDS) {
      rows.add(row(speed, wind));
    }
    page.gap().table(Table.close(columns(), rows));
  }

  private String through(MotorSpeed speed) {
    String through = units.pace(speed.speed(), Side.DOWN) + " through the water, ";
    if (speed.speedGuessed()) {
      return through + "a guess (2 knots)";
    }
    return speed.cut()
        ? through
            + "the speed at which its own wave is as long as the boat: the timed "
            + units.pace(speed.run().orElseThrow().speed(), Side.DOWN)
            + " is faster than such a hull goes. Time it again"
        : through + "timed both ways";
  }

  private String draws(MotorSpeed speed) {
    double otherDraw = plan.boat().electrics().otherDraw();
    String motor =
        "The motor draws "
            + amperes(speed.current())
            + (speed.currentGuessed() ? ", as at full power, since nobody read it on the way" : "");
    return otherDraw > 0
        ? motor + "; lamps, sockets and the rest " + amperes(otherDraw) + " more"
        : motor;
  }

  private List<Table.Column> columns() {
    List<Table.Column> columns = new ArrayList<>();
    columns.add(new Table.Column("Headwind", 10));
    for (double stream : STREAMS) {
      columns.add(
          new Table.Column(
              stream > 0 ? "Stream " + units.pace(stream, Side.UP) : "Still water", 22));
    }
    return columns;
  }

  private List<String> row(MotorSpeed speed, double wind) {
    List<String> row = new ArrayList<>();
    row.add(wind > 0 ? units.speed(wind, Side.UP) : "none");
    for (double stream : STREAMS) {
      ReturnTrip way = way(speed, wind, stream);
      row.add(
          way.getsHome()
              ? duration(way.turnAfter()) + ", " + units.distance(way.distance(), Side.DOWN)
              : "does not get home");
    }
    return row;
  }

  static ReturnTrip way(MotorSpeed speed, double wind, double stream) {
    return ReturnTrip.of(speed.time(), speed.speed(), wind, stream);
  }

  private Page cautions() {
    page.heading("Before anybody goes");
    if (!plan.speeds().isEmpty()) {
      page.point(
          "Worked out from labels and guesses, not from this battery on this day",
          "Run it down once on a short round next to the landing, and believe that instead");
    }
    page.point("Go out against the stream and the wind, so that both bring it home");
    page.point(Disclaimer.LAST_WORD);
    return page;
  }
}
