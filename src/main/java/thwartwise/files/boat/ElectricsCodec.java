package thwartwise.files.boat;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import thwartwise.electrics.Battery;
import thwartwise.electrics.Circuit;
import thwartwise.electrics.ElectricMotor;
import thwartwise.electrics.ElectricalSystem;
import thwartwise.electrics.MainWire;
import thwartwise.electrics.SolarPanel;
import thwartwise.electrics.TimedRun;
import thwartwise.json.JsonText;
import thwartwise.json.ObjectReader;
import thwartwise.measure.PrintableText;
import thwartwise.measured.BoatQuantity;
import thwartwise.measured.ElectricalProperties;
import thwartwise.measured.Property;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What is electric aboard: battery, motor and its timed runs, panel, wires. */
final class ElectricsCodec {
  static final String SINCE_KEY = "since";
  private static final String SINCE =
      "Write the day it was first used, as in 2024-05-01, or leave it out.";

  static final String KEY = "electrics";
  static final String[] KEYS = {
    "battery", "motor", "runs", "panel", "latitude", "mainSwitch", "mainWire", "circuits"
  };
  private static final String[] BATTERY_KEYS =
      keys(ElectricalProperties.OF_BATTERY, "kit", SINCE_KEY);
  private static final String[] MOTOR_KEYS = keys(ElectricalProperties.OF_MOTOR, "kit");
  private static final String[] RUN_KEYS = keys(ElectricalProperties.OF_RUN, "setting");
  private static final String[] PANEL_KEYS = keys(ElectricalProperties.OF_PANEL, "kit");
  private static final String KIT = "Write the name it has among the kit.";
  private static final String SETTING = "Write what the motor's handle stood at, as in 3.";
  private static final String SWITCH = "Write what cuts off everything at once, or leave it out.";
  static final String[] CIRCUIT_KEYS =
      keys(ElectricalProperties.OF_CIRCUIT, "name", "awg", "switch");
  static final String[] MAIN_KEYS = keys(ElectricalProperties.OF_MAIN_WIRE, "awg");
  private static final String CIRCUIT = "Name what the wires feed, as in lamp.";
  private static final String AWG = "Read the gauge printed on the wire, as in 10 AWG.";
  private static final String CIRCUIT_SWITCH = "Write what switches it off, or leave it out.";

  private ElectricsCodec() {}

  static ElectricalSystem read(ObjectReader electrics) {
    return new ElectricalSystem(
        electrics.optionalObject("battery", BATTERY_KEYS).map(ElectricsCodec::battery),
        electrics.optionalObject("motor", MOTOR_KEYS).map(ElectricsCodec::motor),
        electrics.optionalItems("runs", "run", RUN_KEYS).stream().map(ElectricsCodec::run).toList(),
        electrics.optionalObject("panel", PANEL_KEYS).map(ElectricsCodec::panel),
        electrics.optional(ElectricalProperties.LATITUDE),
        electrics.optional("mainSwitch").map(value -> value.words(SWITCH)),
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
        readSince(battery),
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
        main.optional(ElectricalProperties.MAIN_FUSE),
        main.optional(ElectricalProperties.MAIN_FUSE_DISTANCE),
        main.optional(ElectricalProperties.MAIN_LENGTH),
        main.optional(ElectricalProperties.MAIN_AREA),
        gauge(main),
        main.optional(ElectricalProperties.MAIN_INSULATION),
        main.optional(ElectricalProperties.MAIN_ALONE),
        main.optional(ElectricalProperties.MAIN_SHEATHED));
  }

  private static Optional<Integer> gauge(ObjectReader wire) {
    if (wire.has("mm2")) {
      wire.refuse("awg", "\"mm2\" says the same. Keep one of them.");
    }
    return wire.optional("awg").map(value -> value.whole(BoatQuantity.GAUGE, AWG));
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
    JsonText.put(node, ElectricalProperties.LATITUDE, electrics);
    electrics.mainSwitch().ifPresent(name -> node.put("mainSwitch", name));
    electrics.mainWire().ifPresent(main -> node.set("mainWire", write(main)));
    list(node, "circuits", electrics.circuits(), ElectricsCodec::write);
    return node;
  }

  private static ObjectNode write(Battery battery) {
    ObjectNode node =
        put(named("kit", Optional.of(battery.kit())), ElectricalProperties.OF_BATTERY, battery);
    battery.since().ifPresent(day -> node.put(SINCE_KEY, day.toString()));
    return node;
  }

  private static ObjectNode write(TimedRun run) {
    return put(named("setting", Optional.of(run.setting())), ElectricalProperties.OF_RUN, run);
  }

  private static Circuit circuit(ObjectReader circuit) {
    return new Circuit(
        circuit.text("name", CIRCUIT),
        circuit.required(ElectricalProperties.USE),
        circuit.required(ElectricalProperties.CURRENT),
        circuit.required(ElectricalProperties.LENGTH),
        circuit.optional(ElectricalProperties.AREA),
        gauge(circuit),
        circuit.optional(ElectricalProperties.INSULATION),
        circuit.optional(ElectricalProperties.ALONE),
        circuit.optional(ElectricalProperties.FUSE),
        circuit.optional(ElectricalProperties.FUSE_DISTANCE),
        circuit.optional(ElectricalProperties.SHEATHED),
        circuit.optional("switch").map(value -> value.words(CIRCUIT_SWITCH)),
        circuit.optional(ElectricalProperties.HOURS_A_DAY));
  }

  private static ObjectNode write(Circuit circuit) {
    ObjectNode node =
        put(named("name", Optional.of(circuit.name())), ElectricalProperties.OF_CIRCUIT, circuit);
    circuit.gauge().ifPresent(gauge -> node.put("awg", gauge));
    circuit.switched().ifPresent(name -> node.put("switch", name));
    return node;
  }

  private static ObjectNode write(MainWire main) {
    ObjectNode node = put(JsonText.object(), ElectricalProperties.OF_MAIN_WIRE, main);
    main.gauge().ifPresent(gauge -> node.put("awg", gauge));
    return node;
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

  private static <O> String[] keys(List<Property<O, ?>> properties, String... more) {
    return Stream.concat(Stream.of(more), properties.stream().map(Property::key))
        .toArray(String[]::new);
  }

  private static <T> void list(
      ObjectNode node, String key, List<T> items, Function<T, ObjectNode> write) {
    if (!items.isEmpty()) {
      ArrayNode list = node.putArray(key);
      items.forEach(item -> list.add(write.apply(item)));
    }
  }

  /** Since when a battery is used. */
  static Optional<LocalDate> readSince(ObjectReader battery) {
    return battery.optional(SINCE_KEY).map(value -> firstDay(value.words(SINCE), battery));
  }

  private static LocalDate firstDay(String typed, ObjectReader battery) {
    try {
      return LocalDate.parse(typed);
    } catch (DateTimeException e) {
      throw battery
          .spot()
          .fault(
              "\""
                  + SINCE_KEY
                  + "\" is "
                  + PrintableText.quoted(typed)
                  + ", which is not a day. "
                  + SINCE);
    }
  }
}
