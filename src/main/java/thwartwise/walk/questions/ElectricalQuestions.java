package thwartwise.walk.questions;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import thwartwise.boat.Boat;
import thwartwise.boat.Kit;
import thwartwise.boat.Propulsion;
import thwartwise.electrics.Circuit;
import thwartwise.electrics.ElectricalSystem;
import thwartwise.electrics.SolarPanel;
import thwartwise.electrics.TimedRun;
import thwartwise.measure.ChoiceReader;
import thwartwise.measured.ElectricalProperties;
import thwartwise.walk.engine.QuantityQuestions;
import thwartwise.walk.engine.QuestionDefinition;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.WordQuestions;

/**
 * Questions for battery, motor, panel and wires. The mass and place of each belong to the kit. A
 * boat without such kit and without a motor is asked nothing.
 *
 * @param kit asks for a piece of kit that was forgotten
 */
public record ElectricalQuestions(
    Replay replay, QuantityQuestions quantities, LocalDate today, KitQuestions kit) {

  /** All of them, in the full walk. */
  public Boat asked(Boat boat) {
    boolean some =
        boat.propulsion() instanceof Propulsion.Outboard
            || boat.kit().stream().anyMatch(k -> k.isBattery() || isMotor(k) || k.isSolarPanel());
    return some && replay.ask(any())
        ? wires("electrics", panel("electrics", motor("electrics", battery("electrics", boat))))
        : boat;
  }

  private static QuestionDefinition<Boolean> any() {
    return WordQuestions.yesNo("electrics.any", "Enter what is electric: battery, motor, wires?")
        .how(
            "yes: what their labels say, a timed run, fuses. range then tells when to turn",
            "back, and wiring which wires burn. no: they count as weight alone. The sheet",
            "for the pencil is one of its own: sheet --fittings.")
        .why("The way home depends on the battery, and a wire without a fuse burns.")
        .orElse(false, "no");
  }

  /** The parts that can change separately. */
  private enum Part {
    BATTERY,
    MOTOR,
    RUN,
    PANEL,
    WIRES
  }

  /** One part again, in the walk of changes. */
  public Boat changed(String key, Boat boat) {
    ChoiceReader<Part> parts =
        ChoiceReader.of(Part.BATTERY, "battery")
            .or(Part.MOTOR, "motor")
            .or(Part.RUN, "timed run", "run")
            .or(Part.PANEL, "panel", "solar panel", "solar")
            .or(Part.WIRES, "wires", "lamps", "fuses", "circuits", "switch");
    Part part =
        replay.ask(
            WordQuestions.choice(key + ".part", "Which part is entered again", parts)
                .how("What is entered now replaces what was known of that part.")
                .why("The rest stays as it was."));
    return switch (part) {
      case BATTERY -> battery(key, boat);
      case MOTOR -> motor(key, boat.withElectrics(boat.electrics().withMotor(Optional.empty())));
      case RUN -> runs(key, boat);
      case PANEL -> panel(key, boat);
      case WIRES -> wires(key, boat);
    };
  }

  private Boat battery(String key, Boat boat) {
    return piece(key + ".battery", "battery", Kit::isBattery, boat)
        .map(
            found ->
                found
                    .boat()
                    .withElectrics(
                        found
                            .boat()
                            .electrics()
                            .withBattery(
                                BatteryQuestions.of(replay, today, key + ".battery")
                                    .battery(found.name()))))
        .orElse(boat);
  }

  private Boat motor(String key, Boat boat) {
    List<Kit> motors = boat.kit().stream().filter(ElectricalQuestions::isMotor).toList();
    if (motors.isEmpty() && !(boat.propulsion() instanceof Propulsion.Outboard)) {
      return boat;
    }
    Optional<String> name = motors.stream().map(Kit::name).findFirst();
    ElectricalSystem electrics = boat.electrics();
    Boat driven =
        boat.withElectrics(electrics.withMotor(questions(electrics).motor(key + ".motor", name)));
    return driven.electrics().motor().isPresent() ? runs(key, driven) : driven;
  }

  private MotorQuestions questions(ElectricalSystem electrics) {
    return new MotorQuestions(replay, quantities, electrics.volts());
  }

  private Boat runs(String key, Boat boat) {
    List<TimedRun> runs = questions(boat.electrics()).runs(key + ".run");
    return runs.isEmpty() ? boat : boat.withElectrics(boat.electrics().withRuns(runs));
  }

  private Boat panel(String key, Boat boat) {
    Optional<Piece> found = piece(key + ".panel", "solar panel", Kit::isSolarPanel, boat);
    if (found.isEmpty()) {
      return boat;
    }
    Boat with = found.get().boat();
    Optional<SolarPanel> panel =
        PanelQuestions.of(replay, key + ".panel").panel(found.get().name());
    ElectricalSystem electrics = with.electrics().withPanel(panel);
    return with.withElectrics(
        panel.isPresent()
            ? electrics.at(PanelQuestions.latitude(replay, key + ".latitude"))
            : electrics);
  }

  private Boat wires(String key, Boat boat) {
    ElectricalSystem electrics = boat.electrics();
    CircuitQuestions questions = new CircuitQuestions(replay, quantities, electrics);
    List<Circuit> circuits = questions.circuits(key + ".circuit");
    return circuits.isEmpty()
        ? boat
        : boat.withElectrics(
            electrics.withCircuits(
                circuits, mainSwitch(key), questions.mainWire(key + ".mainWire")));
  }

  private Optional<String> mainSwitch(String key) {
    return replay.ask(
        WordQuestions.name(
                key + ".mainSwitch",
                ElectricalProperties.MAIN_SWITCH.subject(),
                "does so, such as red key")
            .worded(ElectricalProperties.MAIN_SWITCH)
            .orNone(ElectricalProperties.MAIN_SWITCH.whenOmitted()));
  }

  /** A piece of kit that was chosen, and the boat with it. */
  private record Piece(Boat boat, String name) {}

  /** The only one there is, the one that was chosen, or one that was forgotten among the kit. */
  private Optional<Piece> piece(String key, String noun, Predicate<Kit> is, Boat boat) {
    List<String> names = boat.kit().stream().filter(is).map(Kit::name).toList();
    if (names.size() == 1) {
      return Optional.of(new Piece(boat, names.get(0)));
    }
    if (names.isEmpty()) {
      return forgotten(key, noun, boat);
    }
    return Optional.of(
        new Piece(
            boat,
            replay.ask(
                WordQuestions.oneOf(key + ".which", "Which " + noun + " is it", names)
                    .how("One of those among the kit; a beginning of its name is enough.")
                    .why("Its mass and place stand there already."))));
  }

  private Optional<Piece> forgotten(String key, String noun, Boat boat) {
    boolean there =
        replay.ask(
            WordQuestions.yesNo(key + ".any", "Is there a " + noun + "? None is among the kit")
                .how("yes: its mass and place are asked for now, as of any piece of kit.")
                .why("It weighs and takes room, and belongs among the kit.")
                .orElse(false, "no"));
    if (!there) {
      return Optional.empty();
    }
    Kit added = kit.item(key + ".kit", boat.kit());
    List<Kit> all = new ArrayList<>(boat.kit());
    all.add(added);
    return Optional.of(new Piece(boat.withKit(all), added.name()));
  }

  /** Whether the piece is a motor; a battery for a motor is none. */
  private static boolean isMotor(Kit kit) {
    return kit.isMotor() && !kit.needsVenting();
  }
}
