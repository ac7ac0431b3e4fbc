package thwartwise.walk.questions;

import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thwartwise.electrics.Battery;
import thwartwise.electrics.Chemistry;
import thwartwise.measure.ChoiceReader;
import thwartwise.measure.Reading;
import thwartwise.measured.ElectricalProperties;
import thwartwise.walk.engine.QuestionDefinition;
import thwartwise.walk.engine.QuestionTopic;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.WordQuestions;

/**
 * Questions for the label of a battery. Its mass and place, and whether it stays put when the boat
 * is upside down, belong to the kit.
 */
record BatteryQuestions(Replay replay, LocalDate today, QuestionTopic topic) {
  private static final double COMMON_VOLTS = 12;

  /** The hours to which a label refers, such as C20 for twenty hours. */
  private static final Pattern RATE = Pattern.compile("[cC] ?(\\d{1,3})");

  private static final Pattern YEAR = Pattern.compile("(\\d{4})(?:[-/.](\\d{1,2}))?");

  /**
   * The questions.
   *
   * @param key the beginning of their keys
   */
  static BatteryQuestions of(Replay replay, LocalDate today, String key) {
    return new BatteryQuestions(replay, today, new QuestionTopic(key, "Battery"));
  }

  /** The battery; empty if not even its charge is known. */
  Optional<Battery> battery(String kit) {
    Optional<Chemistry> chemistry = chemistry();
    double volts =
        replay.ask(
            LabelFigure.VOLTS
                .asked(ElectricalProperties.VOLTS, topic)
                .orElse(COMMON_VOLTS, "12 V"));
    Optional<Double> charge =
        replay.ask(
            LabelFigure.ampereHours(volts)
                .asked(ElectricalProperties.CHARGE, topic)
                .orNone("not known, no running time"));
    return charge.map(c -> of(kit, chemistry, volts, c));
  }

  private Battery of(String kit, Optional<Chemistry> chemistry, double volts, double charge) {
    return new Battery(
        kit,
        volts,
        charge,
        chemistry,
        hours(),
        Optional.empty(),
        since(),
        starter(chemistry),
        Optional.empty(),
        covered());
  }

  private Optional<Chemistry> chemistry() {
    return replay.ask(
        WordQuestions.choice(ElectricalProperties.CHEMISTRY, topic, chemistries())
            .how(
                "It stands on the label. Or the whole label on one line, with ; between: made",
                "of; volts; Ah; hours of the label; since when; starts engines (not of",
                "lithium); covered.")
            .orNone(ElectricalProperties.CHEMISTRY));
  }

  private static ChoiceReader<Chemistry> chemistries() {
    return ChoiceReader.of(
            Chemistry.FLOODED,
            Chemistry.FLOODED.word(),
            "lead",
            "lead-acid",
            "lead acid",
            "wet",
            "acid")
        .or(Chemistry.AGM, Chemistry.AGM.word())
        .or(Chemistry.GEL, Chemistry.GEL.word())
        .or(Chemistry.LIFEPO4, Chemistry.LIFEPO4.word(), "lfp", "lifepo", "iron phosphate")
        .or(Chemistry.LITHIUM_ION, Chemistry.LITHIUM_ION.word(), "lithium", "li-ion", "liion");
  }

  private Optional<Double> hours() {
    QuestionDefinition<Double> entry =
        LabelFigure.RATED_HOURS.asked(ElectricalProperties.RATED_HOURS, topic);
    return replay.ask(
        entry
            .or(
                typed ->
                    Optional.of(RATE.matcher(typed.strip()))
                        .filter(Matcher::matches)
                        .map(rate -> entry.read(rate.group(1))))
            .optional(ElectricalProperties.RATED_HOURS));
  }

  private Optional<LocalDate> since() {
    return replay.ask(
        WordQuestions.day(
                topic.key(ElectricalProperties.SINCE),
                topic.subject(ElectricalProperties.SINCE),
                today)
            .worded(ElectricalProperties.SINCE)
            .or(typed -> monthOrYear(typed.strip()))
            .unless(
                day ->
                    day.isAfter(today)
                        ? Optional.of(day + " is still to come. Type the day it was first used.")
                        : Optional.empty())
            .optional(ElectricalProperties.SINCE));
  }

  private static Optional<Reading<LocalDate>> monthOrYear(String typed) {
    Matcher written = YEAR.matcher(typed);
    if (!written.matches()) {
      return Optional.empty();
    }
    int month = written.group(2) == null ? 1 : Integer.parseInt(written.group(2));
    int year = Integer.parseInt(written.group(1));
    return month < 1 || month > 12 || year < 1970
        ? Optional.empty()
        : Optional.of(
            Reading.understood(LocalDate.of(year, month, 1), LocalDate.of(year, month, 1) + ""));
  }

  /** The cranking current; only lead batteries start engines. */
  private Optional<Boolean> starter(Optional<Chemistry> chemistry) {
    return chemistry.map(Chemistry::isLead).orElse(true)
        ? replay.ask(
            WordQuestions.yesNo(ElectricalProperties.STARTER, topic)
                .optional(ElectricalProperties.STARTER))
        : Optional.empty();
  }

  private Optional<Boolean> covered() {
    return replay.ask(
        WordQuestions.yesNo(ElectricalProperties.TERMINALS_COVERED, topic)
            .optional(ElectricalProperties.TERMINALS_COVERED));
  }
}
