package thwartwise.walk.questions;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thwartwise.electrics.ElectricMotor;
import thwartwise.electrics.TimedRun;
import thwartwise.measure.UnitSystem;
import thwartwise.measured.ElectricalProperties;
import thwartwise.measured.Property;
import thwartwise.walk.engine.QuantityQuestions;
import thwartwise.walk.engine.QuestionDefinition;
import thwartwise.walk.engine.QuestionTopic;
import thwartwise.walk.engine.RepeatedQuestion;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.WordQuestions;

/**
 * Questions for the plate of an electric motor and for timed runs of the boat.
 *
 * @param volts of the battery
 */
record MotorQuestions(Replay replay, QuantityQuestions quantities, double volts) {
  /** Distances over water are paced in metres, whatever the tape shows. */
  private static final QuantityQuestions METRIC = new QuantityQuestions(UnitSystem.METRIC);

  private static final String MOTOR = "Motor";
  private static final Pattern CLOCK = Pattern.compile("(\\d{1,3}):([0-5]\\d)");

  /** The motor; empty if it runs on petrol. */
  Optional<ElectricMotor> motor(String key, Optional<String> kit) {
    boolean electric =
        replay.ask(
            WordQuestions.yesNo(key + ".electric", "Motor, is it electric?")
                .how(
                    "yes: its plate, then runs that were timed. Or on one line, with ; between:",
                    "yes; thrust; amperes; claimed hours; how deep; the same tilted; how far aft.")
                .why("The range and the way back are worked out for an electric one alone.")
                .orElse(false, "no"));
    return electric ? Optional.of(plate(key, kit)) : Optional.empty();
  }

  private ElectricMotor plate(String key, Optional<String> kit) {
    QuestionTopic topic = new QuestionTopic(key, MOTOR);
    return new ElectricMotor(
        kit,
        plate(LabelFigure.THRUST, ElectricalProperties.THRUST, topic),
        plate(LabelFigure.amperes(volts), ElectricalProperties.FULL_CURRENT, topic),
        plate(LabelFigure.CLAIMED_HOURS, ElectricalProperties.CLAIMED_HOURS, topic),
        length(key + ".reach", ElectricalProperties.REACH),
        length(key + ".tiltedReach", ElectricalProperties.TILTED_REACH),
        length(key + ".tiltShift", ElectricalProperties.TILT_SHIFT));
  }

  private Optional<Double> plate(
      LabelFigure figure, Property<ElectricMotor, Double> property, QuestionTopic topic) {
    return replay.ask(figure.asked(property, topic).orNone(property.whenOmitted()));
  }

  /** One measurement of the motor as it is mounted. */
  private Optional<Double> length(String key, Property<ElectricMotor, Double> property) {
    return replay.ask(
        quantities
            .asked(property, key, MOTOR + ", " + property.subject())
            .optional(property.whenOmitted()));
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
                    .why("Without it the speed is a guess of 2 knots, and every distance with it.")
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
    QuestionTopic topic = new QuestionTopic(key, "Run at " + WordQuestions.quoted(setting));
    return new TimedRun(
        setting,
        replay.ask(METRIC.asked(ElectricalProperties.DISTANCE, topic)),
        replay.ask(time(ElectricalProperties.TIME_THERE, topic)),
        replay.ask(time(ElectricalProperties.TIME_BACK, topic)),
        replay.ask(ammeter(ElectricalProperties.CURRENT_THERE, topic)),
        replay.ask(ammeter(ElectricalProperties.CURRENT_BACK, topic)));
  }

  private static QuestionDefinition<Double> time(
      Property<TimedRun, Double> property, QuestionTopic topic) {
    QuestionDefinition<Double> entry = LabelFigure.RUN_SECONDS.asked(property, topic);
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

  private QuestionDefinition<Optional<Double>> ammeter(
      Property<TimedRun, Double> property, QuestionTopic topic) {
    return LabelFigure.amperes(volts).asked(property, topic).orNone(property.whenOmitted());
  }
}
