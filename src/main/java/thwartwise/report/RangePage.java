package thwartwise.report;

import static thwartwise.report.ElectricalFigures.amperes;
import static thwartwise.report.ElectricalFigures.duration;

import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import thwartwise.boat.KeptProof;
import thwartwise.electrics.Battery;
import thwartwise.electrics.ElectricMotor;
import thwartwise.electrics.UsableCharge;
import thwartwise.electrics.UsableCharge.Guess;
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
import thwartwise.passage.Rowing;

/** How long motor and battery run, when to turn back, and what if the motor stops. */
public final class RangePage {
  private static final double[] WINDS = {0, 2, 4};
  private static final double[] STREAMS = {0, 0.5, 1};

  /** A tenth of an ampere-hour, C; less would be shown as 0.0. */
  private static final double LEAST_SHOWN = 360;

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
   * @param shallow how the boat lies with its motor down and tilted, as far as that was measured
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
    oars();
    shallow.ifPresent(this::shallow);
    panel();
    basis();
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
    oars();
    shallow.ifPresent(this::shallow);
    panel();
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

  /** What the boat file says of the waters is the case that matters. */
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

  private static String called(MotorSpeed speed) {
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
    double besides = plan.boat().electrics().otherDraw();
    String motor =
        "The motor draws "
            + amperes(speed.current())
            + (speed.currentGuessed() ? ", as at full power, since nobody read it on the way" : "");
    return besides > 0
        ? motor + "; lamps, sockets and the rest " + amperes(besides) + " more"
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

  private static ReturnTrip way(MotorSpeed speed, double wind, double stream) {
    return ReturnTrip.of(speed.time(), speed.speed(), wind, stream);
  }

  private void oars() {
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
    return plan.speeds().stream().mapToDouble(s -> way(s, 0, 0).distance()).max().orElseThrow();
  }

  private void shallow(ShallowWater water) {
    boolean empty = plan.boat().aboard().isEmpty();
    page.heading("In shallow water, " + (empty ? "with nobody aboard" : "as it is loaded"));
    page.paragraph(
        "The hull itself needs " + units.height(water.down().draft(), Side.UP),
        empty ? "With people in it the boat needs more" : "");
    water.reach().ifPresent(depth -> page.paragraph(motorDown(water, depth)));
    water.tiltedReach().ifPresent(depth -> page.paragraph(motorTilted(depth)));
    water
        .moment()
        .ifPresent(
            moment ->
                page.paragraph(
                    "Tilting it takes " + units.moment(moment, Side.UP) + " aft",
                    "Down: " + FloatingPositionWords.of(water.down(), units),
                    water
                        .tilted()
                        .map(rest -> "Tilted: " + FloatingPositionWords.of(rest, units))
                        .orElse("Tilted, it comes to rest nowhere")));
    page.paragraph("Tilted, it must still turn to steer, which look asks");
  }

  private String motorDown(ShallowWater water, double depth) {
    String needs = "With the motor down it needs " + units.height(depth, Side.UP);
    return water.motorAboveBottom()
        ? needs + "; the motor lies above the bottom line, where it races in air"
        : needs;
  }

  private String motorTilted(double depth) {
    return depth > 0
        ? "Tilted, the motor still reaches " + units.height(depth, Side.UP) + " under the surface"
        : "Tilted, the motor is clear of the water";
  }

  private void panel() {
    if (plan.boat().electrics().panel().isEmpty()) {
      return;
    }
    page.heading("What the panel gives back in a dull month");
    if (plan.boat().electrics().latitude().isEmpty()) {
      page.paragraph(
          "Nothing counts: nobody said at which latitude the boat is kept",
          ElectricalFigures.entered("panel"));
      return;
    }
    double used = plan.usedADay();
    page.paragraph(
        used > 0
            ? "Lamps, sockets and the rest take "
                + ElectricalFigures.taken(used)
                + " a day, each for the hours stated or 8 (judgement)"
            : "No lamps or sockets are stated",
        plan.speeds().isEmpty() ? "" : "What is left drives the motor for the minutes shown");
    List<List<String>> rows = new ArrayList<>();
    for (Month month : Month.values()) {
      rows.add(month(month, used));
    }
    page.gap().table(Table.close(monthColumns(), rows));
    page.gap()
        .paragraph(
            "A day on average, lying flat, in no shade; three tenths of the sun outside the air, and"
                + " half of the label comes out of the battery again (judgement: a plain controller,"
                + " heat, dirt, the battery's own loss)",
            "A day of thick cloud gives far less",
            "No sun counts on the way itself: people and clouds stand in it");
  }

  private List<Table.Column> monthColumns() {
    List<Table.Column> columns = new ArrayList<>();
    columns.add(new Table.Column("Month", 10));
    columns.add(new Table.Column("Gives a day", 18));
    columns.add(new Table.Column("Is left", 12));
    ends().forEach(speed -> columns.add(new Table.Column("At " + called(speed), 18)));
    return columns;
  }

  /** The fastest and the slowest setting, as far as there are any. */
  private List<MotorSpeed> ends() {
    List<MotorSpeed> all = plan.speeds();
    return all.size() < 3 ? all : List.of(all.get(0), all.get(all.size() - 1));
  }

  private List<String> month(Month month, double used) {
    double gives = plan.givenBack(month).orElseThrow();
    double over = gives - used < LEAST_SHOWN ? 0 : gives - used;
    double volts = plan.boat().electrics().volts();
    List<String> row = new ArrayList<>();
    row.add(Sentence.capital(month.name().toLowerCase(Locale.ROOT)));
    row.add(
        Rounding.down(gives * volts / 3600, 0) + " Wh, " + Rounding.down(gives / 3600, 1) + " Ah");
    row.add(over > 0 ? Rounding.down(over / 3600, 1) + " Ah" : "nothing");
    ends().forEach(speed -> row.add(runs(speed, over)));
    return row;
  }

  /** At the same loss to the current as the whole charge has. */
  private String runs(MotorSpeed speed, double charge) {
    UsableCharge usable = plan.usable().orElseThrow();
    return charge > 0
        ? duration(speed.time() * charge / (usable.charge() * usable.fraction()))
        : "nothing";
  }

  private void basis() {
    Battery battery = plan.boat().electrics().battery().orElseThrow();
    UsableCharge usable = plan.usable().orElseThrow();
    page.heading("What this rests on");
    page.point(label(battery, usable));
    page.point(
        "Peukert's law in the form of the label's hours, T = R (C / (I R))^n, with n "
            + Rounding.plain(usable.exponent())
            + " ("
            + (battery.exponent().isPresent() ? "the maker's" : "usual, on the upper side")
            + "), never over the label");
    page.point(
        "Of that "
            + ElectricalFigures.share(usable.share())
            + " may be taken out"
            + (startsEngines(battery, usable)
                ? ", since a battery made to start an engine dies of more"
                : "")
            + "; age leaves "
            + ElectricalFigures.share(usable.aged())
            + " and the cold "
            + ElectricalFigures.share(usable.cold())
            + asColdAsTheWater()
            + " (common practice and judgement)");
    for (Guess guess : Guess.values()) {
      if (usable.guesses().contains(guess)) {
        page.point(words(guess));
      }
    }
    if (plan.speeds().stream().anyMatch(MotorSpeed::currentGuessed)) {
      page.point("The motor's current at full power: " + currentBasis());
    }
    page.point(
        "A headwind takes 0.15 of its own speed off the boat's, and one of more than four times the"
            + " boat's speed stops it (judgement); a stream takes all of its own; a wind from behind"
            + " adds nothing. No resistance is worked out");
  }

  /** Nobody asks for the battery's own temperature. */
  private String asColdAsTheWater() {
    return plan.boat()
        .waters()
        .temperature()
        .map(celsius -> ", as cold as the water, " + units.temperature(celsius, Side.DOWN))
        .orElse("");
  }

  private String currentBasis() {
    Optional<ElectricMotor> motor = plan.boat().electrics().motor();
    if (motor.flatMap(ElectricMotor::fullCurrent).isPresent()) {
      return "as its plate has it";
    }
    return motor.flatMap(ElectricMotor::thrust).isPresent()
        ? "a guess: about an ampere a pound of thrust at 12 V (common practice, no source), 0.63 at"
            + " 24 V"
        : "a guess: six tenths of what it takes come out at its shaft (judgement), and that power is"
            + " all that is known of it";
  }

  private static boolean startsEngines(Battery battery, UsableCharge usable) {
    return battery.starter().orElse(usable.guesses().contains(Guess.STARTER));
  }

  private static String label(Battery battery, UsableCharge usable) {
    return "Battery: "
        + ElectricalFigures.label(battery.volts(), "V")
        + ", "
        + ElectricalFigures.label(battery.charge() / 3600, "Ah")
        + " over "
        + ElectricalFigures.hours(usable.ratedTime())
        + battery.chemistry().map(c -> ", " + c.word()).orElse("")
        + battery
            .since()
            .filter(day -> !usable.guesses().contains(Guess.AGE))
            .map(day -> ", in use since " + day)
            .orElse("");
  }

  private String words(Guess guess) {
    return "Not stated, so the worst usual: "
        + switch (guess) {
          case CHEMISTRY -> "what the battery is made of. Flooded lead-acid counts";
          case RATED_TIME ->
              "the hours of the label. "
                  + Rounding.plain(UsableCharge.UNSTATED_HOURS)
                  + " hours count";
          case AGE ->
              "since when it is used. "
                  + Rounding.plain(UsableCharge.UNSTATED_YEARS)
                  + " years count (judgement)";
          case TEMPERATURE ->
              "how cold the battery is. "
                  + units.temperature(UsableCharge.UNSTATED_CELSIUS, Side.DOWN)
                  + " counts (judgement)";
          case STARTER ->
              "whether it is made to drive or to start an engine. A fifth counts, as of a starter"
                  + " battery";
        };
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
