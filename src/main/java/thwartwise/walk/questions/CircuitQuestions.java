package thwartwise.walk.questions;

import java.util.List;
import java.util.Optional;
import thwartwise.electrics.Circuit;
import thwartwise.electrics.Circuit.Use;
import thwartwise.electrics.ElectricalSystem;
import thwartwise.electrics.MainWire;
import thwartwise.measure.ChoiceReader;
import thwartwise.measured.BoatQuantity;
import thwartwise.walk.engine.Entry;
import thwartwise.walk.engine.RepeatedQuestion;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.Tape;
import thwartwise.walk.engine.WordQuestions;

/** Wires from the battery to what draws or charges: length, copper, fuse and switch. */
record CircuitQuestions(Replay replay, Tape tape, ElectricalSystem electrics) {
  /** How the wires of a circuit lie, which says what they may carry and where a fuse may be. */
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
    String subject = "Wires " + WordQuestions.quoted(name);
    double current = current(key, subject, use);
    double length = length(key, subject);
    Optional<WireText> wire = wire(key, subject);
    Lie lie = lie(key, subject);
    Optional<Double> fuse = fuse(key, subject);
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
        fuse.filter(amperes -> amperes > 0).flatMap(amperes -> fuseDistance(key, subject)),
        Optional.of(lie.sheathed),
        use == Use.CHARGE ? Optional.empty() : switched(key, subject),
        use.isOtherDraw() ? hours(key, subject) : Optional.empty());
  }

  /** What carries them all; empty where nobody knows of a fuse in it. */
  Optional<MainWire> mainWire(String key) {
    Optional<Double> fuse =
        replay.ask(
            LabelFigure.FUSE
                .entry(key + ".fuse", "Main fuse, the one before all of them")
                .how(
                    "Amperes on the fuse at the battery that all but charging runs through; 0 for",
                    "none. Or on one line, with ; between: fuse; how far from the battery; wire;",
                    "how it lies; length to where the wires part.")
                .why("Without it the thick wire burns until the battery is empty.")
                .optional("not known, as none"));
    return fuse.map(amperes -> amperes > 0 ? fused(key, amperes) : MainWire.of(amperes));
  }

  private MainWire fused(String key, double fuse) {
    String subject = "Main wire";
    Optional<Double> at = fuseDistance(key, subject);
    Optional<WireText> wire = wire(key, subject);
    Lie lie = lie(key, subject);
    return new MainWire(
        Optional.of(fuse),
        at,
        partsAfter(key, subject),
        wire.flatMap(WireText::area),
        wire.flatMap(WireText::gauge),
        wire.flatMap(WireText::insulation),
        Optional.of(lie.alone),
        Optional.of(lie.sheathed));
  }

  private Optional<Double> partsAfter(String key, String subject) {
    return replay.ask(
        tape.length(key + ".there", subject + ", length until the others part")
            .how("Along it from the battery to the block where the other wires begin.")
            .why("Behind a good main fuse another may sit where its own wire begins.")
            .within(tape.length(0, BoatQuantity.WIRE_METRES.most(), "length of such a wire"))
            .optional("not known, as none"));
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
        WordQuestions.choice(key + ".use", "Wires, what they feed", uses)
            .how("Each pair of wires from the battery by itself.")
            .why("Motor, navigation lights and charging may lose 3 % of the volts, others 10 %."));
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

  /** The motor's stands on its plate, and that was asked. */
  private double current(String key, String subject, Use use) {
    double volts = electrics.volts();
    Optional<Double> known =
        use == Use.MOTOR
            ? electrics.motor().flatMap(motor -> motor.currentAt(volts))
            : Optional.empty();
    return known.orElseGet(
        () ->
            replay.ask(
                LabelFigure.amperes(volts)
                    .entry(key + ".amps", subject + ", current with all on")
                    .how("Add up what is on them; watts with W behind the number do, too.")
                    .why("Fuse, wire and loss follow from it.")));
  }

  private double length(String key, String subject) {
    return replay.ask(
        tape.length(key + ".there", subject + ", length one way")
            .how("Along the wire from the battery to what it feeds.")
            .why("Current flows there and back: twice this length loses voltage.")
            .within(tape.length(0.01, BoatQuantity.WIRE_METRES.most(), "length of such a wire")));
  }

  private Optional<WireText> wire(String key, String subject) {
    return replay.ask(
        Entry.of(
                key + ".wire",
                subject + ", copper",
                tape.either("mm2, or AWG 10", "AWG, or 4 mm2"),
                "a size such as 4 mm2, AWG 10, or 10 mm2 105 C",
                typed -> WireText.read(typed, tape.system().isMetric()))
            .how(
                "It is printed on the wire. Where degrees are printed, too, as in 105 C, type",
                "them behind it: 10 mm2 105 C. Left out, they count as 60.")
            .why("What a wire may carry and what it loses follow from its copper.")
            .orNone("not known"));
  }

  private Lie lie(String key, String subject) {
    ChoiceReader<Lie> lies =
        ChoiceReader.of(Lie.OPEN, "open", "air", "alone", "by itself", "free")
            .or(Lie.PIPE, "pipe", "sheath", "tube", "conduit", "hose")
            .or(Lie.BUNDLE, "bundle", "with others", "loom");
    return replay.ask(
        WordQuestions.choice(key + ".lies", subject + ", how they lie", lies)
            .how(
                "open: these two alone in the air. pipe: in a pipe or sheath all the way from",
                "the battery. bundle: with other wires, in no pipe.")
            .why("Wires that warm each other carry less; in a sheath a fuse may be farther off.")
            .orElse(Lie.BUNDLE, "bundle"));
  }

  private Optional<Double> fuse(String key, String subject) {
    return replay.ask(
        LabelFigure.FUSE
            .entry(key + ".fuse", subject + ", fuse")
            .how("Amperes on the fuse that guards them; 0 for none.")
            .why("A wire that rubs through burns until its fuse blows.")
            .optional("not known, as none"));
  }

  private Optional<Double> fuseDistance(String key, String subject) {
    return replay.ask(
        tape.length(key + ".fuseAt", subject + ", fuse from battery")
            .how("Along the wire from the pole of the battery to the fuse.")
            .why("The wire before the fuse is guarded by nothing; not known counts as too far.")
            .within(tape.length(0, BoatQuantity.WIRE_METRES.most(), "length of such a wire"))
            .optional("not known"));
  }

  private Optional<String> switched(String key, String subject) {
    return replay.ask(
        WordQuestions.name(
                key + ".switch", subject + ", switched off by", "switches it off, such as plug")
            .how("A switch, or a plug that is pulled.")
            .why("What cannot be cut off goes on burning.")
            .orNone("nothing"));
  }

  private Optional<Double> hours(String key, String subject) {
    return replay.ask(
        LabelFigure.DAILY_HOURS
            .entry(key + ".hoursADay", subject + ", on a day")
            .how("On the longest day it is used. 8 hours are a judgement.")
            .why("What it takes is held against what the panel gives.")
            .optional("8 hours"));
  }
}
