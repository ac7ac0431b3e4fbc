package thwartwise.sheet;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import thwartwise.electrics.Battery;
import thwartwise.electrics.Chemistry;
import thwartwise.electrics.Circuit;
import thwartwise.electrics.ElectricMotor;
import thwartwise.electrics.ElectricalSystem;
import thwartwise.electrics.MainWire;
import thwartwise.electrics.SolarPanel;
import thwartwise.electrics.TimedRun;
import thwartwise.measure.Rounding;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitSystem;
import thwartwise.measured.BoatQuantity;

/** The known electrical equipment, as answers to the walk. */
final class PrefilledElectrics {
  private static final double TO_TENTHS = 10;

  private final Map<String, String> answers = new HashMap<>();
  private final UnitFormat shown;

  private PrefilledElectrics(UnitSystem units) {
    this.shown = new UnitFormat(units);
  }

  /** Empty if nobody said anything about it, so that it can be filled in by hand. */
  static Map<String, String> of(ElectricalSystem electrics, UnitSystem units) {
    PrefilledElectrics known = new PrefilledElectrics(units);
    if (!electrics.isEmpty()) {
      known.put("any", "yes");
      known.system(electrics);
    }
    return Map.copyOf(known.answers);
  }

  private void system(ElectricalSystem electrics) {
    electrics.battery().ifPresent(this::battery);
    electrics.motor().ifPresent(this::motor);
    for (int i = 0; i < electrics.runs().size(); i++) {
      put("run." + (i + 1) + ".any", "yes");
      run("run." + (i + 1), electrics.runs().get(i));
    }
    put("run." + (electrics.runs().size() + 1) + ".any", "no");
    electrics.panel().ifPresent(this::panel);
    electrics.latitude().ifPresent(l -> put("latitude", latitude(l)));
    for (int i = 0; i < electrics.circuits().size(); i++) {
      put("circuit." + (i + 1) + ".any", "yes");
      circuit("circuit." + (i + 1), electrics.circuits().get(i));
    }
    put("circuit." + (electrics.circuits().size() + 1) + ".any", "no");
    electrics.mainSwitch().ifPresent(by -> put("mainSwitch", by));
    electrics.mainWire().ifPresent(this::mainWire);
  }

  private void battery(Battery battery) {
    put("battery.which", battery.kit());
    put("battery.chemistry", battery.chemistry().map(Chemistry::word));
    put("battery.volts", Rounding.plain(battery.volts()));
    put("battery.ampHours", hours(battery.charge()));
    put("battery.ratedHours", battery.ratedTime().map(PrefilledElectrics::hours));
    put("battery.since", battery.since().map(Object::toString));
    put("battery.starter", battery.starter().map(PrefilledElectrics::yesOrNo));
    put("battery.terminalsCovered", battery.terminalsCovered().map(PrefilledElectrics::yesOrNo));
  }

  private void motor(ElectricMotor motor) {
    put("motor.electric", "yes");
    put("motor.thrust", motor.thrust().map(n -> Rounding.plain(n) + " N"));
    put("motor.amps", motor.fullCurrent().map(Rounding::plain));
    put("motor.claimedHours", motor.claimedTime().map(PrefilledElectrics::hours));
    put("motor.reach", motor.reach().map(shown::tape));
    put("motor.tiltedReach", motor.tiltedReach().map(shown::tape));
    put("motor.tiltShift", motor.tiltShift().map(shown::tape));
  }

  private void run(String key, TimedRun run) {
    put(key + ".setting", run.setting());
    put(key + ".metres", Rounding.plain(run.distance()) + " m");
    put(key + ".secondsThere", Rounding.plain(run.timeThere()));
    put(key + ".secondsBack", Rounding.plain(run.timeBack()));
    put(key + ".ampsThere", run.currentThere().map(Rounding::plain));
    put(key + ".ampsBack", run.currentBack().map(Rounding::plain));
  }

  private void panel(SolarPanel panel) {
    put("panel.which", panel.kit());
    put("panel.watts", Rounding.plain(panel.watts()));
    put("panel.panelFuse", panel.panelFuse().map(Rounding::plain));
    put("panel.batteryFuse", panel.batteryFuse().map(Rounding::plain));
    put("panel.batteryStaysOn", panel.connectedToBattery().map(PrefilledElectrics::yesOrNo));
    put("panel.sideArea", panel.sideArea().map(Rounding::plain));
  }

  private void circuit(String key, Circuit circuit) {
    put(key + ".use", circuit.use().word());
    put(key + ".name", circuit.name());
    put(key + ".amps", Rounding.plain(circuit.current()));
    put(key + ".there", shown.tape(circuit.length()));
    put(key + ".wire", wire(circuit.area(), circuit.gauge(), circuit.insulation()));
    put(key + ".lies", lies(circuit.alone(), circuit.sheathed()));
    put(key + ".fuse", circuit.fuse().map(Rounding::plain));
    put(key + ".fuseAt", circuit.fuseDistance().map(shown::tape));
    put(key + ".switch", circuit.switched());
    put(key + ".hoursADay", circuit.timeADay().map(PrefilledElectrics::hours));
  }

  private void mainWire(MainWire main) {
    put("mainWire.fuse", main.fuse().map(Rounding::plain));
    put("mainWire.fuseAt", main.fuseDistance().map(shown::tape));
    put("mainWire.wire", wire(main.area(), main.gauge(), main.insulation()));
    put("mainWire.lies", lies(main.alone(), main.sheathed()));
    put("mainWire.there", main.length().map(shown::tape));
  }

  private static Optional<String> wire(
      Optional<Double> area, Optional<Integer> gauge, Optional<Double> insulation) {
    String degrees = insulation.map(c -> " " + Rounding.plain(c) + " C").orElse("");
    return area.map(
            copper -> Rounding.plain(BoatQuantity.SQUARE_MILLIMETRES.inFile(copper)) + " mm2")
        .or(() -> gauge.map(number -> "AWG " + number))
        .map(copper -> copper + degrees);
  }

  private static Optional<String> lies(Optional<Boolean> alone, Optional<Boolean> sheathed) {
    if (alone.orElse(false)) {
      return Optional.of("open");
    }
    return sheathed.map(piped -> piped ? "pipe" : "bundle");
  }

  private static String latitude(double radians) {
    double degrees = Math.rint(Math.toDegrees(radians) * TO_TENTHS) / TO_TENTHS;
    return Rounding.plain(Math.abs(degrees)) + (degrees < 0 ? " S" : " N");
  }

  private static String hours(double seconds) {
    return Rounding.plain(seconds / 3600);
  }

  private static String yesOrNo(boolean yes) {
    return yes ? "yes" : "no";
  }

  private void put(String key, Optional<String> typed) {
    typed.ifPresent(words -> put(key, words));
  }

  private void put(String key, String typed) {
    answers.put("electrics." + key, typed);
  }
}
