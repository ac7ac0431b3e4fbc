package thwartwise.walk.questions;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import thwartwise.electrics.SolarPanel;
import thwartwise.measure.NumberText;
import thwartwise.measure.PrintableText;
import thwartwise.measure.Reading;
import thwartwise.measured.BoatQuantity;
import thwartwise.measured.ElectricalProperties;
import thwartwise.measured.Property;
import thwartwise.walk.engine.QuestionDefinition;
import thwartwise.walk.engine.QuestionTopic;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.WordQuestions;

/** Questions for the output of a solar panel and for the fuses of its two pairs of wires. */
record PanelQuestions(Replay replay, QuestionTopic topic) {
  static PanelQuestions of(Replay replay, String key) {
    return new PanelQuestions(replay, new QuestionTopic(key, "Panel"));
  }

  private static final Pattern DEGREES =
      Pattern.compile("([-+]?)(\\d{1,2}(?:\\.\\d+)?) ?([nNsS]?)");

  private static final Pattern AREA =
      Pattern.compile("(\\d*\\.?\\d+) ?(?:m ?)?(?:(?:x|by|\\*) ?(\\d*\\.?\\d+) ?m?|m2|sq ?m)?");

  /** The panel; empty if nobody knows its output. */
  Optional<SolarPanel> panel(String kit) {
    Optional<Double> watts =
        replay.ask(
            LabelFigure.WATTS
                .asked(ElectricalProperties.WATTS, topic)
                .how(
                    "On its back. Or on one line, with ; between: watts; fuse to the controller;",
                    "fuse to the battery; does the battery stay on in sun; area from the side.")
                .orNone("not known, gives nothing"));
    return watts.map(
        w ->
            new SolarPanel(
                Optional.of(kit),
                w,
                fuse(ElectricalProperties.PANEL_FUSE),
                fuse(ElectricalProperties.BATTERY_FUSE),
                staysOn(),
                sideArea()));
  }

  private Optional<Double> fuse(Property<SolarPanel, Double> property) {
    return replay.ask(LabelFigure.FUSE.asked(property, topic).optional(property));
  }

  private Optional<Boolean> staysOn() {
    return replay.ask(
        WordQuestions.yesNo(ElectricalProperties.CONNECTED, topic)
            .optional(ElectricalProperties.CONNECTED));
  }

  private Optional<Double> sideArea() {
    return replay.ask(
        QuestionDefinition.of(
                topic.key(ElectricalProperties.SIDE_AREA),
                topic.subject(ElectricalProperties.SIDE_AREA),
                "m2",
                "square metres such as 0.3, or length x height in metres such as 1.0 x 0.03",
                PanelQuestions::squareMetres)
            .worded(ElectricalProperties.SIDE_AREA)
            .optional(ElectricalProperties.SIDE_AREA));
  }

  private static Reading<Double> squareMetres(String typed) {
    Matcher written = AREA.matcher(typed.strip().replace(',', '.'));
    if (!written.matches()) {
      return Reading.refused(
          PrintableText.excerpt(typed)
              + " is no area. Type square metres such as 0.3, or 1.0 x 0.03.");
    }
    double area =
        Double.parseDouble(written.group(1))
            * (written.group(2) == null ? 1 : Double.parseDouble(written.group(2)));
    return BoatQuantity.PANEL_SIDE.believes(area)
        ? Reading.understood(area, NumberText.number(Math.ceil(area * 1e4) / 1e4) + " m2")
        : Reading.refused(
            "That is " + BoatQuantity.PANEL_SIDE.doubt(area, "Measure it again, in metres."));
  }

  /** The latitude in radians, negative in the south. */
  static Optional<Double> latitude(Replay replay, String key) {
    QuestionDefinition<Double> entry =
        QuestionDefinition.of(
                key,
                ElectricalProperties.LATITUDE.subject(),
                "degrees",
                "whole degrees such as 52, or 34 S",
                PanelQuestions::degrees)
            .worded(ElectricalProperties.LATITUDE);
    return replay.ask(entry.orNone(ElectricalProperties.LATITUDE));
  }

  private static Reading<Double> degrees(String typed) {
    Matcher written = DEGREES.matcher(typed.strip().replace(',', '.'));
    if (!written.matches()) {
      return Reading.refused(
          PrintableText.excerpt(typed) + " is no latitude. Type degrees such as 52, or 34 S.");
    }
    boolean south = written.group(1).equals("-") || written.group(3).equalsIgnoreCase("s");
    double degrees = Double.parseDouble(written.group(2));
    double most = BoatQuantity.LATITUDE.inFile(BoatQuantity.LATITUDE.most());
    return degrees > most
        ? Reading.refused("That is beyond the polar circle. Type degrees up to 66.")
        : Reading.understood(
            BoatQuantity.LATITUDE.si(south ? -degrees : degrees),
            written.group(2) + " degrees " + (south ? "south" : "north"));
  }
}
