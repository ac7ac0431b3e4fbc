package thwartwise.files.boat;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import thwartwise.electrics.Battery;
import thwartwise.electrics.Circuit;
import thwartwise.electrics.ElectricMotor;
import thwartwise.electrics.ElectricalSystem;
import thwartwise.electrics.MainWire;
import thwartwise.electrics.SolarPanel;
import thwartwise.electrics.TimedRun;
import thwartwise.json.JsonText;
import thwartwise.json.ObjectReader;
import thwartwise.measured.ElectricalProperties;
import thwartwise.measured.Property;
import thwartwise.measured.WireProperties;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Electrical equipment: battery, motor and its timed runs, panel, wires. */
final class ElectricsCodec {
  static final String KEY = "electrics";
  static final String[] KEYS =
      Property.keys(
          ElectricalProperties.OF_SYSTEM,
          "battery",
          "motor",
          "runs",
          "panel",
          "mainWire",
          "circuits");
  private static final String[] BATTERY_KEYS =
      Property.keys(ElectricalProperties.OF_BATTERY, "kit");
  private static final String[] MOTOR_KEYS = Property.keys(ElectricalProperties.OF_MOTOR, "kit");
  private static final String[] RUN_KEYS = Property.keys(ElectricalProperties.OF_RUN, "setting");
  private static final String[] PANEL_KEYS = Property.keys(ElectricalProperties.OF_PANEL, "kit");
  private static final String KIT = "Write the name it has among the kit.";
  private static final String SETTING = "Write what the motor's handle stood at, as in 3.";
  static final String[] CIRCUIT_KEYS = Property.keys(WireProperties.OF_CIRCUIT, "name");
  static final String[] MAIN_KEYS = Property.keys(WireProperties.OF_MAIN_WIRE);
  private static final String CIRCUIT = "Name what the wires feed, as in lamp.";

  private ElectricsCodec() {}

  static ElectricalSystem read(ObjectReader electrics) {
    return new ElectricalSystem(
        electrics.optionalObject("battery", BATTERY_KEYS).map(ElectricsCodec::battery),
        electrics.optionalObject("motor", MOTOR_KEYS).map(ElectricsCodec::motor),
        electrics.optionalItems("runs", "run", RUN_KEYS).stream().map(ElectricsCodec::run).toList(),
        electrics.optionalObject("panel", PANEL_KEYS).map(ElectricsCodec::panel),
        electrics.optional(ElectricalProperties.LATITUDE),
        electrics.optional(ElectricalProperties.MAIN_SWITCH),
        electrics.optionalObject("mainWire", MAIN_KEYS).map(ElectricsCodec::mainWire),
        electrics.optionalItems("circuits", "circuit", CIRCUIT_KEYS).stream()
            .map(ElectricsCodec::circuit)
            .toList());
  }

  private static Battery battery(ObjectReader battery) {
    return new Battery(
        battery.text("kit", KIT),
        battery.required(ElectricalProperties.VOLTS),
        battery.required(ElectricalProperties.CHARGE),
        battery.optional(ElectricalProperties.CHEMISTRY),
        battery.optional(ElectricalProperties.RATED_HOURS),
        battery.optional(ElectricalProperties.EXPONENT),
        battery.optional(ElectricalProperties.SINCE),
        battery.optional(ElectricalProperties.STARTER),
        battery.optional(ElectricalProperties.STRAPPED),
        battery.optional(ElectricalProperties.TERMINALS_COVERED));
  }

  private static ElectricMotor motor(ObjectReader motor) {
    return new ElectricMotor(
        kit(motor),
        motor.optional(ElectricalProperties.THRUST),
        motor.optional(ElectricalProperties.FULL_CURRENT),
        motor.optional(ElectricalProperties.CLAIMED_HOURS),
        motor.optional(ElectricalProperties.REACH),
        motor.optional(ElectricalProperties.TILTED_REACH),
        motor.optional(ElectricalProperties.TILT_SHIFT));
  }

  private static TimedRun run(ObjectReader run) {
    return new TimedRun(
        run.text("setting", SETTING),
        run.required(ElectricalProperties.DISTANCE),
        run.required(ElectricalProperties.TIME_THERE),
        run.required(ElectricalProperties.TIME_BACK),
        run.optional(ElectricalProperties.CURRENT_THERE),
        run.optional(ElectricalProperties.CURRENT_BACK));
  }

  private static SolarPanel panel(ObjectReader panel) {
    return new SolarPanel(
        kit(panel),
        panel.required(ElectricalProperties.WATTS),
        panel.optional(ElectricalProperties.PANEL_FUSE),
        panel.optional(ElectricalProperties.BATTERY_FUSE),
        panel.optional(ElectricalProperties.CONNECTED),
        panel.optional(ElectricalProperties.SIDE_AREA));
  }

  private static MainWire mainWire(ObjectReader main) {
    return new MainWire(
        main.optional(WireProperties.MAIN_FUSE),
        main.optional(WireProperties.MAIN_FUSE_DISTANCE),
        main.optional(WireProperties.MAIN_LENGTH),
        main.optional(WireProperties.MAIN_AREA),
        gauge(main, WireProperties.MAIN_GAUGE),
        main.optional(WireProperties.MAIN_INSULATION),
        main.optional(WireProperties.MAIN_ALONE),
        main.optional(WireProperties.MAIN_SHEATHED));
  }

  private static Optional<Integer> gauge(ObjectReader wire, Property<?, Integer> gauge) {
    if (wire.has(WireProperties.AREA.key())) {
      wire.refuse(gauge.key(), "\"mm2\" says the same. Keep one of them.");
    }
    return wire.optional(gauge);
  }

  private static Optional<String> kit(ObjectReader thing) {
    return thing.optional("kit").map(value -> value.words(KIT));
  }

  static ObjectNode write(ElectricalSystem electrics) {
    ObjectNode node = JsonText.object();
    electrics.battery().ifPresent(battery -> node.set("battery", write(battery)));
    electrics
        .motor()
        .ifPresent(
            m -> node.set("motor", put(named("kit", m.kit()), ElectricalProperties.OF_MOTOR, m)));
    list(node, "runs", electrics.runs(), ElectricsCodec::write);
    electrics
        .panel()
        .ifPresent(
            p -> node.set("panel", put(named("kit", p.kit()), ElectricalProperties.OF_PANEL, p)));
    put(node, ElectricalProperties.OF_SYSTEM, electrics);
    electrics
        .mainWire()
        .ifPresent(
            main ->
                node.set("mainWire", put(JsonText.object(), WireProperties.OF_MAIN_WIRE, main)));
    list(node, "circuits", electrics.circuits(), ElectricsCodec::write);
    return node;
  }

  private static ObjectNode write(Battery battery) {
    return put(named("kit", Optional.of(battery.kit())), ElectricalProperties.OF_BATTERY, battery);
  }

  private static ObjectNode write(TimedRun run) {
    return put(named("setting", Optional.of(run.setting())), ElectricalProperties.OF_RUN, run);
  }

  private static Circuit circuit(ObjectReader circuit) {
    return new Circuit(
        circuit.text("name", CIRCUIT),
        circuit.required(WireProperties.USE),
        circuit.required(WireProperties.CURRENT),
        circuit.required(WireProperties.LENGTH),
        circuit.optional(WireProperties.AREA),
        gauge(circuit, WireProperties.GAUGE),
        circuit.optional(WireProperties.INSULATION),
        circuit.optional(WireProperties.ALONE),
        circuit.optional(WireProperties.FUSE),
        circuit.optional(WireProperties.FUSE_DISTANCE),
        circuit.optional(WireProperties.SHEATHED),
        circuit.optional(WireProperties.SWITCH),
        circuit.optional(WireProperties.HOURS_A_DAY));
  }

  private static ObjectNode write(Circuit circuit) {
    return put(named("name", Optional.of(circuit.name())), WireProperties.OF_CIRCUIT, circuit);
  }

  private static ObjectNode named(String key, Optional<String> name) {
    ObjectNode node = JsonText.object();
    name.ifPresent(words -> node.put(key, words));
    return node;
  }

  private static <O> ObjectNode put(ObjectNode node, List<Property<O, ?>> properties, O owner) {
    properties.forEach(property -> JsonText.put(node, property, owner));
    return node;
  }

  private static <T> void list(
      ObjectNode node, String key, List<T> items, Function<T, ObjectNode> write) {
    if (!items.isEmpty()) {
      ArrayNode list = node.putArray(key);
      items.forEach(item -> list.add(write.apply(item)));
    }
  }
}
