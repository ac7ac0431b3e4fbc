package thwartwise.report;

import java.util.Optional;
import thwartwise.electrics.Battery;
import thwartwise.electrics.ElectricMotor;
import thwartwise.electrics.UsableCharge;
import thwartwise.electrics.UsableCharge.Guess;
import thwartwise.measure.Rounding;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.page.Page;
import thwartwise.passage.MotorSpeed;
import thwartwise.passage.PassagePlan;

/** The labels, laws and guesses behind the running times. */
final class RunningTimeBasis {
  private final Page page;
  private final PassagePlan plan;
  private final UnitFormat units;

  private RunningTimeBasis(Page page, PassagePlan plan) {
    this.page = page;
    this.plan = plan;
    this.units = ReaderUnits.of(plan.boat());
  }

  static void write(Page page, PassagePlan plan) {
    new RunningTimeBasis(page, plan).write();
  }

  private void write() {
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

  /** The battery is assumed as cold as the water, because its own temperature is not asked. */
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
}
