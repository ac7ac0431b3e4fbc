package thwartwise.walk.questions;

import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thwartwise.electrics.Battery;
import thwartwise.electrics.Chemistry;
import thwartwise.measure.ChoiceReader;
import thwartwise.measure.Reading;
import thwartwise.walk.engine.Entry;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.WordQuestions;

/**
 * What the label of a battery says. Its mass and place stand among the kit, and so does whether it
 * is held with the boat upside down.
 *
 * @param key before those of the questions
 */
record BatteryQuestions(Replay replay, LocalDate today, String key) {
  private static final double COMMON_VOLTS = 12;

  /** A label over twenty hours is called C20. */
  private static final Pattern RATE = Pattern.compile("[cC] ?(\\d{1,3})");

  private static final Pattern YEAR = Pattern.compile("(\\d{4})(?:[-/.](\\d{1,2}))?");

  /** Empty where not even its charge is known. */
  Optional<Battery> battery(String kit) {
    Optional<Chemistry> chemistry = chemistry();
    double volts =
        replay.ask(
            LabelFigure.VOLTS
                .entry(key + ".volts", "Battery, volts on its label")
                .how("Most of them: 12.")
                .why("Watts, losses in the wires and the motor's current follow from it.")
                .orElse(COMMON_VOLTS, "12 V"));
    Optional<Double> charge =
        replay.ask(
            LabelFigure.ampereHours(volts)
                .entry(key + ".ampHours", "Battery, charge on its label")
                .how("Ampere-hours (Ah), or watt-hours with Wh behind the number.")
                .why("Without it no running time is worked out.")
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
        WordQuestions.choice(key + ".chemistry", "Battery, made of what", chemistries())
            .how(
                "It stands on the label. Or the whole label on one line, with ; between: made",
                "of; volts; Ah; hours of the label; since when; starts engines (not of",
                "lithium); covered.")
            .why("How much of its charge may be used, and what age and cold take, hangs on it.")
            .orNone("not known, the poorest"));
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
    Entry<Double> entry =
        LabelFigure.RATED_HOURS
            .entry(key + ".ratedHours", "Battery, hours next to the Ah")
            .how("C20, 20HR or 20 h next to the ampere-hours: 20. Some say C5 or C100.")
            .why("A motor draws faster than the label, and lead gives less then.");
    return replay.ask(
        entry
            .or(
                typed ->
                    Optional.of(RATE.matcher(typed.strip()))
                        .filter(Matcher::matches)
                        .map(rate -> entry.read(rate.group(1))))
            .optional("not known, 100 hours"));
  }

  private Optional<LocalDate> since() {
    return replay.ask(
        WordQuestions.day(key + ".since", "Battery, first used", today)
            .how(
                "The day; or the month or year alone, whose first day counts. Left out it is",
                "six years old, a judgement.")
            .why("Each year takes some of its charge; after ten nothing of it counts.")
            .or(typed -> monthOrYear(typed.strip()))
            .unless(
                day ->
                    day.isAfter(today)
                        ? Optional.of(day + " is still to come. Type the day it was first used.")
                        : Optional.empty())
            .optional("not known, six years ago"));
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

  /** Only lead starts engines. */
  private Optional<Boolean> starter(Optional<Chemistry> chemistry) {
    return chemistry.map(Chemistry::isLead).orElse(true)
        ? replay.ask(
            WordQuestions.yesNo(key + ".starter", "Battery, made to start an engine?")
                .how("yes: the label names cold cranking amperes (CCA), or it came out of a car.")
                .why("Such a battery dies of being drawn down: only a fifth of it counts.")
                .optional("not known, as one"))
        : Optional.empty();
  }

  private Optional<Boolean> covered() {
    return replay.ask(
        WordQuestions.yesNo(key + ".terminalsCovered", "Battery, are its poles covered?")
            .how("yes: no spanner, chain or wet hand can touch both at once.")
            .why("What falls across both glows, and burns hands and boat.")
            .optional("not known, as not"));
  }
}
