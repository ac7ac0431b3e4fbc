package thwartwise.walk.questions;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import thwartwise.boat.Boat;
import thwartwise.boat.Propulsion;
import thwartwise.boat.Water;
import thwartwise.measure.ChoiceReader;
import thwartwise.measure.UnitSystem;
import thwartwise.measured.PartProperties;
import thwartwise.walk.engine.QuantityQuestions;
import thwartwise.walk.engine.QuestionDefinition;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.WordQuestions;

/** Questions for the boat's name, who measures, the units, the water and the drive. */
public final class BasicQuestions {
  private final Replay replay;

  public BasicQuestions(Replay replay) {
    this.replay = replay;
  }

  /** The boat's name, which begins a row about the whole boat. */
  public String name() {
    return replay.ask(
        named(
                "Any name that tells it from your other boats. Then, in a row with ; between",
                "or one by one: who measures; metric or feet; fresh or salt water; manual,",
                "outboard, sail or tow; for an outboard its power.")
            .row(
                "The boat",
                List.of("name", "who measures", "units", "water", "driven by", "power")));
  }

  /** The boat's name in the short walk. */
  public String nameOfBorrowed() {
    return replay.ask(
        named("Any name that tells it from your other boats; and metric or feet.")
            .row("The boat", List.of("name", "metric or feet")));
  }

  private static QuestionDefinition<String> named(String... how) {
    return WordQuestions.label("name", "Name of the boat", List.of())
        .how(how)
        .why("Its records are kept under this name.");
  }

  public Optional<String> measuredBy() {
    return replay.ask(
        WordQuestions.remark("measuredBy", "Who measures")
            .how("The person who holds the tape.")
            .why("The record names who measured; leave it out if you like.")
            .orNone("not said"));
  }

  public UnitSystem units() {
    return replay.ask(
        WordQuestions.choice("units", "Units", systems())
            .how(
                "metric: a bare number means metres and kilograms.",
                "feet: a bare number means inches and pounds (40 1/2 is 40 1/2 inches).",
                "A unit typed behind a number always rules; litres are litres in both.")
            .why("A number without its unit must mean one thing only.")
            .governingTheRest());
  }

  /** The units of a known boat; another answer shows the boat in the other units from now on. */
  public UnitSystem units(UnitSystem known) {
    return replay.ask(
        WordQuestions.choice("units", "Units", systems())
            .how(
                "Enter keeps those it was measured in. A bare number means inches and pounds in",
                "feet, metres and kilograms in metric; a unit typed behind a number rules.")
            .why("A number without its unit must mean one thing only.")
            .orElse(known, known.isMetric() ? "metric" : "feet")
            .governingTheRest());
  }

  private static ChoiceReader<UnitSystem> systems() {
    return ChoiceReader.of(UnitSystem.METRIC, "metric", "m", "metres", "meters", "cm", "kg", "si")
        .or(
            UnitSystem.FEET_INCHES_POUNDS,
            "feet",
            "ft",
            "foot",
            "inches",
            "feet and inches",
            "pounds",
            "lb",
            "imperial",
            "us");
  }

  public Water water() {
    return replay.ask(
        WordQuestions.choice(
                "water",
                "Water",
                ChoiceReader.of(
                        Water.FRESH,
                        "fresh",
                        "brackish",
                        "lake",
                        "river",
                        "pond",
                        "canal",
                        "fresh water")
                    .or(Water.SALT, "salt", "sea", "salt water", "seawater"))
            .how("Lakes, rivers and anything brackish are fresh; the open sea is salt.")
            .why("Salt water carries a fortieth more. When in doubt: fresh.")
            .ifUnknown(Water.FRESH, "fresh"));
  }

  public Propulsion propulsion(QuantityQuestions quantities) {
    Drive drive =
        replay.ask(
            WordQuestions.choice("propulsion", PartProperties.DRIVE.subject(), drives())
                .worded(PartProperties.DRIVE));
    return switch (drive) {
      case MANUAL -> new Propulsion.Manual();
      case OUTBOARD -> new Propulsion.Outboard(power(quantities));
      case SAIL -> new Propulsion.Sail();
      case TOW -> new Propulsion.Tow();
    };
  }

  private enum Drive {
    MANUAL,
    OUTBOARD,
    SAIL,
    TOW
  }

  private static ChoiceReader<Drive> drives() {
    return ChoiceReader.of(
            Drive.MANUAL,
            "manual",
            "oars",
            "oar",
            "rowing",
            "row",
            "paddle",
            "paddles",
            "pole",
            "rowed",
            "by hand")
        .or(
            Drive.OUTBOARD,
            "outboard",
            "motor",
            "engine",
            "electric",
            "electric motor",
            "outboard motor")
        .or(Drive.SAIL, "sail", "sails", "sailing")
        .or(Drive.TOW, "tow", "towing", "towed");
  }

  private double power(QuantityQuestions quantities) {
    return replay.ask(
        quantities.asked(
            PartProperties.KILOWATTS, "propulsion.power", PartProperties.KILOWATTS.subject()));
  }

  /** A last question, at which the answer before it can still be taken back. */
  public static void finish(Replay replay, Boat boat) {
    List<String> how = new ArrayList<>(BoatSummary.of(boat));
    how.add("yes: it is worked out now. list shows every answer; back or change mends one.");
    replay.ask(
        WordQuestions.yesNo("finish", "All measured. Is the boat complete?")
            .how(how.toArray(String[]::new))
            .why("After this the boat is worked out.")
            .orElse(true, "yes")
            .ifUnknown(false, "no")
            .unless(BasicQuestions::unfinished));
  }

  private static Optional<String> unfinished(boolean complete) {
    return complete
        ? Optional.empty()
        : Optional.of("Then type list, and change with a number; or back; or stop to keep it all.");
  }
}
