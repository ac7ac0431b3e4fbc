package thwartwise.walk.questions;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thwartwise.electrics.ElectricMotor;
import thwartwise.electrics.TimedRun;
import thwartwise.measure.UnitSystem;
import thwartwise.measured.BoatQuantity;
import thwartwise.walk.engine.Entry;
import thwartwise.walk.engine.RepeatedQuestion;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.Tape;
import thwartwise.walk.engine.WordQuestions;

/**
 * What the plate of an electric motor says, and how fast it drove the boat when somebody timed it.
 *
 * @param volts of the battery
 */
record MotorQuestions(Replay replay, Tape tape, double volts) {
  /** Distances over water are paced in metres, whatever the tape is marked in. */
  private static final Tape METRIC = new Tape(UnitSystem.METRIC);

  private static final Pattern CLOCK = Pattern.compile("(\\d{1,3}):([0-5]\\d)");

  /** Empty where it runs on petrol. */
  Optional<ElectricMotor> motor(String key, Optional<String> kit) {
    boolean electric =
        replay.ask(
            WordQuestions.yesNo(key + ".electric", "Motor, is it electric?")
                .how(
                    "yes: its plate, then runs that were timed. Or on one line, with ; between:",
                    "yes; thrust; amperes; claimed hours; how deep; the same tilted; how far aft.")
                .why("How far it goes and comes back is worked out of an electric one alone.")
                .orElse(false, "no"));
    return electric ? Optional.of(plate(key, kit)) : Optional.empty();
  }

  private ElectricMotor plate(String key, Optional<String> kit) {
    Optional<Double> thrust =
        replay.ask(
            LabelFigure.THRUST
                .entry(key + ".thrust", "Motor, thrust on its plate")
                .how("Pounds of thrust, as in 55 lb; or newtons with N behind the number.")
                .why("Where nobody knows its current, an ampere a pound at 12 V counts.")
                .orNone("not on it"));
    Optional<Double> current =
        replay.ask(
            LabelFigure.amperes(volts)
                .entry(key + ".amps", "Motor, current at full power")
                .how("Amperes on its plate or in its book; or watts with W behind the number.")
                .why("The battery lasts by it.")
                .orNone("by thrust or power"));
    Optional<Double> claimed =
        replay.ask(
            LabelFigure.CLAIMED_HOURS
                .entry(key + ".claimedHours", "Motor, said to run at full power for")
                .how("What the seller or the last owner says of this battery.")
                .why("Where the battery cannot give it, the page of range says so with the sum.")
                .orNone("nobody says"));
    return new ElectricMotor(
        kit,
        thrust,
        current,
        claimed,
        length(
            key + ".reach",
            "Motor, lowest point below the bottom",
            "Under way: from the lowest line of the bottom down to skeg or propeller.",
            "It says how much water it wants, and how far it heels the boat put hard over."),
        length(
            key + ".tiltedReach",
            "Motor, the same when tilted",
            "Tilted for shallow water; with a minus where it is above the bottom.",
            "It says over which depth it still strikes."),
        length(
            key + ".tiltShift",
            "Motor, goes aft when tilted by",
            "How far its middle moves aft; a heavy foot swings out behind the boat.",
            "It weighs the stern down, where the transom is cut lowest."));
  }

  /** One of the motor as it hangs. */
  private Optional<Double> length(String key, String subject, String how, String why) {
    BoatQuantity reach = BoatQuantity.MOTOR_REACH;
    return replay.ask(
        tape.length(key, subject)
            .how(how)
            .why(why)
            .within(tape.length(reach.least(), reach.most(), "length of a motor on such a boat"))
            .optional("not measured"));
  }

  List<TimedRun> runs(String key) {
    return new RepeatedQuestion(replay, key, "timed run", "Was it timed over a stretch both ways?")
        .orNone(
            entry ->
                entry
                    .how(
                        "Pace a stretch of the bank, drive it there and back at one setting, read",
                        "watch and ammeter. Or on one line, with ; between: setting; metres; time",
                        "there; time back; amperes there; amperes back.")
                    .why("Without it 2 knots are guessed, and every distance with it.")
                    .orElse(false, "no"),
            this::run);
  }

  private TimedRun run(String key, List<TimedRun> before) {
    List<String> taken = new ArrayList<>(before.stream().map(TimedRun::setting).toList());
    String setting =
        replay.ask(
            WordQuestions.label(key + ".setting", "Timed run, setting", taken)
                .how("What the handle of the motor stood at, as in 3 or full.")
                .why("Each setting has a running time of its own."));
    String subject = "Run at " + WordQuestions.quoted(setting);
    return new TimedRun(
        setting,
        distance(key, subject),
        replay.ask(time(key + ".secondsThere", subject + ", time there")),
        replay.ask(time(key + ".secondsBack", subject + ", time back")),
        replay.ask(ammeter(key + ".ampsThere", subject + ", current there")),
        replay.ask(ammeter(key + ".ampsBack", subject + ", current back")));
  }

  private double distance(String key, String subject) {
    return replay.ask(
        METRIC
            .length(key + ".metres", subject + ", stretch one way")
            .how("Paced along the bank, or off a map; 100 m or more.")
            .why("A longer stretch makes a second of the watch count less.")
            .within(
                METRIC.length(
                    BoatQuantity.RUN_METRES.least(),
                    BoatQuantity.RUN_METRES.most(),
                    "length of a stretch to time a boat on")));
  }

  private static Entry<Double> time(String key, String subject) {
    Entry<Double> entry =
        LabelFigure.RUN_SECONDS
            .entry(key, subject)
            .how("By the watch, in seconds; or minutes and seconds, as in 2:30.")
            .why("Wind and stream cancel where both ways are timed.");
    return entry.or(typed -> clock(typed.strip()).map(entry::read));
  }

  private static Optional<String> clock(String typed) {
    Matcher clock = CLOCK.matcher(typed);
    return clock.matches()
        ? Optional.of(
            Integer.toString(
                60 * Integer.parseInt(clock.group(1)) + Integer.parseInt(clock.group(2))))
        : Optional.empty();
  }

  private Entry<Optional<Double>> ammeter(String key, String subject) {
    return LabelFigure.amperes(volts)
        .entry(key, subject)
        .how("Off an ammeter on the way.")
        .why("Half speed draws far less than half; not read counts as at full power.")
        .orNone("not read");
  }
}
