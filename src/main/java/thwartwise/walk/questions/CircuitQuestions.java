package thwartwise.walk.questions;

import java.util.List;
import java.util.Optional;
import thwartwise.electrics.Circuit;
import thwartwise.electrics.Circuit.Use;
import thwartwise.electrics.ElectricalSystem;
import thwartwise.electrics.MainWire;
import thwartwise.measure.ChoiceReader;
import thwartwise.measured.WireProperties;
import thwartwise.walk.engine.QuantityQuestions;
import thwartwise.walk.engine.QuestionDefinition;
import thwartwise.walk.engine.QuestionTopic;
import thwartwise.walk.engine.RepeatedQuestion;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.WordQuestions;

/**
 * Questions for the wires from the battery to consumers and chargers: length, copper, fuse and
 * switch.
 */
record CircuitQuestions(Replay replay, QuantityQuestions quantities, ElectricalSystem electrics) {
  /**
   * How the wires of a circuit lie, which decides their permitted current and the place of a fuse.
   */
  private enum Lie {
    OPEN(true, false),
    PIPE(false, true),
    BUNDLE(false, false);

    private final boolean alone;
    private final boolean sheathed;

    Lie(boolean alone, boolean sheathed) {
      this.alone = alone;
      this.sheathed = sheathed;
    }
  }

  List<Circuit> circuits(String key) {
    return new RepeatedQuestion(replay, key, "pair of wires", "Shall its wires be worked out?")
        .orNone(
            entry ->
                entry
                    .how(
                        "Each pair from the battery to a motor, lamp, socket or charger. Or on one",
                        "line, with ; between: what it feeds; amperes or watts (not of a motor that",
                        "is known); length; wire; open, pipe or bundle; fuse; how far from the",
                        "battery (not of 0); switch; hours a day.")
                    .why("A thin wire or one without a fuse burns; a long one costs speed.")
                    .orElse(false, "no"),
            this::circuit);
  }

  private Circuit circuit(String key, List<Circuit> before) {
    Use use = use(key);
    String name = name(key, use, before);
    QuestionTopic topic = new QuestionTopic(key, "Wires " + WordQuestions.quoted(name));
    double current = current(topic, use);
    double length = replay.ask(quantities.asked(WireProperties.LENGTH, topic));
    Optional<WireText> wire = wire(topic);
    Lie lie = lie(topic);
    Optional<Double> fuse =
        replay.ask(
            LabelFigure.FUSE.asked(WireProperties.FUSE, topic).optional(WireProperties.FUSE));
    return new Circuit(
        name,
        use,
        current,
        length,
        wire.flatMap(WireText::area),
        wire.flatMap(WireText::gauge),
        wire.flatMap(WireText::insulation),
        Optional.of(lie.alone),
        fuse,
        fuse.filter(amperes -> amperes > 0).flatMap(amperes -> fuseDistance(topic)),
        Optional.of(lie.sheathed),
        use == Use.CHARGE ? Optional.empty() : switched(topic),
        use.isOtherDraw() ? hours(topic) : Optional.empty());
  }

  /** The main wire that carries all circuits; empty if nobody knows of a fuse in it. */
  Optional<MainWire> mainWire(String key) {
    Optional<Double> fuse =
        replay.ask(
            LabelFigure.FUSE
                .entry(
                    key + "." + WireProperties.MAIN_FUSE.key(), WireProperties.MAIN_FUSE.subject())
                .worded(WireProperties.MAIN_FUSE)
                .how(
                    "Amperes on the fuse at the battery that all but charging runs through; 0 for",
                    "none. Or on one line, with ; between: fuse; how far from the battery; wire;",
                    "how it lies; length to where the wires part.")
                .optional(WireProperties.MAIN_FUSE));
    return fuse.map(amperes -> amperes > 0 ? fused(key, amperes) : MainWire.of(amperes));
  }

  private MainWire fused(String key, double fuse) {
    QuestionTopic topic = new QuestionTopic(key, "Main wire");
    Optional<Double> at = fuseDistance(topic);
    Optional<WireText> wire = wire(topic);
    Lie lie = lie(topic);
    return new MainWire(
        Optional.of(fuse),
        at,
        partsAfter(topic),
        wire.flatMap(WireText::area),
        wire.flatMap(WireText::gauge),
        wire.flatMap(WireText::insulation),
        Optional.of(lie.alone),
        Optional.of(lie.sheathed));
  }

  private Optional<Double> partsAfter(QuestionTopic topic) {
    return replay.ask(
        quantities.asked(WireProperties.MAIN_LENGTH, topic).optional(WireProperties.MAIN_LENGTH));
  }

  private Use use(String key) {
    ChoiceReader<Use> uses =
        ChoiceReader.of(Use.MOTOR, Use.MOTOR.word(), "engine")
            .or(Use.LIGHTS, Use.LIGHTS.word(), "nav lights", "lights")
            .or(Use.CHARGE, Use.CHARGE.word(), "charger", "panel", "solar", "controller")
            .or(Use.LAMP, Use.LAMP.word(), "lamps", "light", "cabin lamp")
            .or(Use.SOCKET, Use.SOCKET.word(), "usb", "plug")
            .or(Use.OTHER, Use.OTHER.word(), "pump");
    return replay.ask(
        WordQuestions.choice(WireProperties.USE, new QuestionTopic(key, "Wires"), uses));
  }

  private String name(String key, Use use, List<Circuit> before) {
    List<String> taken = before.stream().map(Circuit::name).toList();
    if (use == Use.OTHER) {
      return replay.ask(
          WordQuestions.name(key + ".name", "Wires, name of what they feed", taken)
              .how("As in pump, radio, horn.")
              .why("So that the page can say which wires it means."));
    }
    String name = use.word();
    for (int number = 2; taken.contains(name); number++) {
      name = use.word() + " " + number;
    }
    return name;
  }

  /** The current. The motor's stands on its plate and was asked already. */
  private double current(QuestionTopic topic, Use use) {
    double volts = electrics.volts();
    Optional<Double> known =
        use == Use.MOTOR
            ? electrics.motor().flatMap(motor -> motor.currentAt(volts))
            : Optional.empty();
    return known.orElseGet(
        () -> replay.ask(LabelFigure.amperes(volts).asked(WireProperties.CURRENT, topic)));
  }

  private Optional<WireText> wire(QuestionTopic topic) {
    return replay.ask(
        QuestionDefinition.of(
                topic.key() + ".wire",
                topic.subject(WireProperties.AREA),
                quantities.either("mm2, or AWG 10", "AWG, or 4 mm2"),
                "a size such as 4 mm2, AWG 10, or 10 mm2 105 C",
                typed -> WireText.read(typed, quantities.system().isMetric()))
            .worded(WireProperties.AREA)
            .orNone("not known"));
  }

  private Lie lie(QuestionTopic topic) {
    ChoiceReader<Lie> lies =
        ChoiceReader.of(Lie.OPEN, "open", "air", "alone", "by itself", "free")
            .or(Lie.PIPE, "pipe", "sheath", "tube", "conduit", "hose")
            .or(Lie.BUNDLE, "bundle", "with others", "loom");
    return replay.ask(
        WordQuestions.choice(topic.key() + ".lies", topic.subject(WireProperties.ALONE), lies)
            .worded(WireProperties.ALONE)
            .orElse(Lie.BUNDLE, "bundle"));
  }

  private Optional<Double> fuseDistance(QuestionTopic topic) {
    return replay.ask(
        quantities
            .asked(WireProperties.FUSE_DISTANCE, topic)
            .optional(WireProperties.FUSE_DISTANCE.whenOmitted()));
  }

  private Optional<String> switched(QuestionTopic topic) {
    return replay.ask(
        WordQuestions.name(
                topic.key(WireProperties.SWITCH),
                topic.subject(WireProperties.SWITCH),
                "switches it off, such as plug")
            .worded(WireProperties.SWITCH)
            .orNone(WireProperties.SWITCH.whenOmitted()));
  }

  private Optional<Double> hours(QuestionTopic topic) {
    return replay.ask(
        LabelFigure.DAILY_HOURS
            .asked(WireProperties.HOURS_A_DAY, topic)
            .optional(WireProperties.HOURS_A_DAY.whenOmitted()));
  }
}
