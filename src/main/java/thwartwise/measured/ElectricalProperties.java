package thwartwise.measured;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import thwartwise.electrics.Battery;
import thwartwise.electrics.Chemistry;
import thwartwise.electrics.Circuit;
import thwartwise.electrics.ElectricMotor;
import thwartwise.electrics.ElectricalSystem;
import thwartwise.electrics.MainWire;
import thwartwise.electrics.SolarPanel;
import thwartwise.electrics.TimedRun;

/** The part of the table that holds what is electric aboard. */
public final class ElectricalProperties {
  private static final String COPPER =
      "Read the square millimetres printed on the wire, or write \"awg\" instead.";
  private static final String DEGREES =
      "Read the degrees Celsius printed on the wire, or leave it out.";
  private static final String SHEATH =
      "Write true when a pipe or sheath covers the wire from the battery to the fuse.";

  private ElectricalProperties() {}

  public static final Property<Battery, Double> VOLTS =
      Property.known(
              "volts",
              ValueType.number(BoatQuantity.VOLTS),
              Battery::volts,
              "Read the volts on the battery's label.")
          .withChangeLabel("volts");

  public static final Property<Battery, Double> CHARGE =
      Property.known(
              "ampHours",
              ValueType.number(BoatQuantity.AMPERE_HOURS),
              Battery::charge,
              "Read the ampere-hours (Ah) on the battery's label.")
          .withChangeLabel("charge");

  public static final Property<Battery, Double> RATED_HOURS =
      number(
              "ratedHours",
              BoatQuantity.RATED_HOURS,
              Battery::ratedTime,
              "Read the hours next to the Ah, as in C20 or 20 h, or leave it out.")
          .whenOmitted("100 hours, which flatters least")
          .withChangeLabel("hours of the charge");

  public static final Property<Battery, Double> EXPONENT =
      number(
              "peukert",
              BoatQuantity.EXPONENT,
              Battery::exponent,
              "Write the exponent of the maker's data sheet, or leave it out.")
          .whenOmitted("usual for the chemistry, on the upper side")
          .withChangeLabel("exponent of Peukert");

  public static final Property<Battery, Chemistry> CHEMISTRY =
      Property.<Battery, Chemistry>of(
              "chemistry",
              ValueType.oneOf(Chemistry::word, Chemistry.values()),
              Battery::chemistry,
              "Read on the label what it is made of, or leave it out.")
          .whenOmitted("flooded lead-acid")
          .withChangeLabel("chemistry");

  public static final Property<Battery, Boolean> STARTER =
      Property.of(
              "starter",
              ValueType.flag(),
              Battery::starter,
              "Write true for a battery made to start an engine, false for a traction battery.")
          .whenOmitted("a lead-acid battery counts as one made to start an engine")
          .withChangeLabel("made to start engines");

  public static final Property<Battery, Boolean> STRAPPED =
      Property.of(
              "strapped",
              ValueType.flag(),
              Battery::strapped,
              "Write true when tray and strap hold it with the boat upside down.")
          .withChangeLabel("strapped down");

  public static final Property<Battery, Boolean> TERMINALS_COVERED =
      Property.of(
              "terminalsCovered",
              ValueType.flag(),
              Battery::terminalsCovered,
              "Write true when no tool can fall across both poles.")
          .withChangeLabel("poles covered");

  public static final List<Property<Battery, ?>> OF_BATTERY =
      List.of(
          CHEMISTRY, VOLTS, CHARGE, RATED_HOURS, EXPONENT, STARTER, STRAPPED, TERMINALS_COVERED);

  public static final Property<ElectricMotor, Double> THRUST =
      number(
              "thrust",
              BoatQuantity.THRUST,
              ElectricMotor::thrust,
              "Multiply the pounds of thrust on the motor by 4.45 and write newtons.")
          .withChangeLabel("thrust");

  public static final Property<ElectricMotor, Double> FULL_CURRENT =
      number(
              "amps",
              BoatQuantity.AMPERES,
              ElectricMotor::fullCurrent,
              "Read the amperes at full power on the motor's plate, or leave it out.")
          .whenOmitted("an ampere a pound of thrust at 12 V, 0.63 at 24 V")
          .withChangeLabel("current at full power");

  public static final Property<ElectricMotor, Double> CLAIMED_HOURS =
      number(
              "claimedHours",
              BoatQuantity.CLAIMED_HOURS,
              ElectricMotor::claimedTime,
              "Write how many hours it is said to run at full power, or leave it out.")
          .withChangeLabel("claimed running time");

  public static final Property<ElectricMotor, Double> REACH =
      number(
              "reachesBelow",
              BoatQuantity.MOTOR_REACH,
              ElectricMotor::reach,
              "Measure from the lowest line of the bottom down to its lowest point, in metres.")
          .withChangeLabel("lowest point below the bottom");

  public static final Property<ElectricMotor, Double> TILTED_REACH =
      number(
              "tiltedBelow",
              BoatQuantity.MOTOR_REACH,
              ElectricMotor::tiltedReach,
              "Tilt it and measure again; above the bottom with a minus.")
          .withChangeLabel("lowest point when tilted");

  public static final Property<ElectricMotor, Double> TILT_SHIFT =
      number(
              "tiltsAft",
              BoatQuantity.MOTOR_REACH,
              ElectricMotor::tiltShift,
              "Measure how far aft its middle goes when it is tilted, in metres.")
          .withChangeLabel("how far aft it tilts");

  public static final List<Property<ElectricMotor, ?>> OF_MOTOR =
      List.of(THRUST, FULL_CURRENT, CLAIMED_HOURS, REACH, TILTED_REACH, TILT_SHIFT);

  public static final Property<TimedRun, Double> DISTANCE =
      Property.known(
              "metres",
              ValueType.number(BoatQuantity.RUN_METRES),
              TimedRun::distance,
              "Pace out a stretch of the bank and write metres, one way.")
          .withChangeLabel("distance");

  public static final Property<TimedRun, Double> TIME_THERE =
      Property.known(
              "secondsThere",
              ValueType.number(BoatQuantity.RUN_SECONDS),
              TimedRun::timeThere,
              "Time the boat over it and write seconds.")
          .withChangeLabel("time there");

  public static final Property<TimedRun, Double> TIME_BACK =
      Property.known(
              "secondsBack",
              ValueType.number(BoatQuantity.RUN_SECONDS),
              TimedRun::timeBack,
              "Time it the other way, too, and write seconds.")
          .withChangeLabel("time back");

  private static final String AMMETER =
      "Read the ammeter on the way and write amperes, or leave it out.";

  public static final Property<TimedRun, Double> CURRENT_THERE =
      number("ampsThere", BoatQuantity.AMPERES, TimedRun::currentThere, AMMETER)
          .whenOmitted("the motor's current at full power")
          .withChangeLabel("current there");

  public static final Property<TimedRun, Double> CURRENT_BACK =
      number("ampsBack", BoatQuantity.AMPERES, TimedRun::currentBack, AMMETER)
          .whenOmitted("the motor's current at full power")
          .withChangeLabel("current back");

  public static final List<Property<TimedRun, ?>> OF_RUN =
      List.of(DISTANCE, TIME_THERE, TIME_BACK, CURRENT_THERE, CURRENT_BACK);

  public static final Property<SolarPanel, Double> WATTS =
      Property.known(
              "watts",
              ValueType.number(BoatQuantity.PANEL_WATTS),
              SolarPanel::watts,
              "Read the watts on the back of the panel.")
          .withChangeLabel("watts");

  public static final Property<SolarPanel, Double> PANEL_FUSE =
      number(
              "panelFuse",
              BoatQuantity.FUSE_AMPERES,
              SolarPanel::panelFuse,
              "Read the fuse between panel and controller; 0 for none.")
          .withChangeLabel("fuse to the controller");

  public static final Property<SolarPanel, Double> BATTERY_FUSE =
      number(
              "batteryFuse",
              BoatQuantity.FUSE_AMPERES,
              SolarPanel::batteryFuse,
              "Read the fuse between controller and battery; 0 for none.")
          .withChangeLabel("fuse to the battery");

  public static final Property<SolarPanel, Boolean> CONNECTED =
      Property.of(
              "batteryStaysOn",
              ValueType.flag(),
              SolarPanel::connectedToBattery,
              "Write true when the battery is never taken off the controller in sun.")
          .withChangeLabel("battery stays on in sun");

  public static final Property<SolarPanel, Double> SIDE_AREA =
      number(
              "sideArea",
              BoatQuantity.PANEL_SIDE,
              SolarPanel::sideArea,
              "Multiply its length by the height it stands, as seen from the side, in m2.")
          .whenOmitted("a hundredth of its watts, in m2, which flatters least")
          .withChangeLabel("area from the side");

  public static final List<Property<SolarPanel, ?>> OF_PANEL =
      List.of(WATTS, PANEL_FUSE, BATTERY_FUSE, CONNECTED, SIDE_AREA);

  public static final Property<ElectricalSystem, Double> LATITUDE =
      number(
              "latitude",
              BoatQuantity.LATITUDE,
              ElectricalSystem::latitude,
              "Read it off a map in whole degrees, south with a minus, or leave it out.")
          .whenOmitted("the panel gives nothing back")
          .withChangeLabel("the latitude");

  public static final Property<Circuit, Circuit.Use> USE =
      Property.known(
              "use",
              ValueType.oneOf(Circuit.Use::word, Circuit.Use.values()),
              Circuit::use,
              "Write what the wires feed.")
          .withChangeLabel("use");

  public static final Property<Circuit, Double> CURRENT =
      Property.known(
              "amps",
              ValueType.number(BoatQuantity.AMPERES),
              Circuit::current,
              "Add up the amperes of all it feeds: watts over volts.")
          .withChangeLabel("current");

  public static final Property<Circuit, Double> LENGTH =
      Property.known(
              "there",
              ValueType.number(BoatQuantity.WIRE_METRES),
              Circuit::length,
              "Measure along the wire from the battery to what it feeds, one way, in metres.")
          .withChangeLabel("length");

  public static final Property<Circuit, Double> AREA =
      number("mm2", BoatQuantity.SQUARE_MILLIMETRES, Circuit::area, COPPER)
          .withChangeLabel("copper");

  public static final Property<Circuit, Double> INSULATION =
      number("insulation", BoatQuantity.INSULATION, Circuit::insulation, DEGREES)
          .whenOmitted("60 degrees Celsius")
          .withChangeLabel("insulation");

  public static final Property<Circuit, Boolean> ALONE =
      Property.of(
              "alone",
              ValueType.flag(),
              Circuit::alone,
              "Write true when its wires lie in no pipe and with no others.")
          .whenOmitted("it lies in a pipe with others")
          .withChangeLabel("by itself");

  public static final Property<Circuit, Double> FUSE =
      number(
              "fuse",
              BoatQuantity.FUSE_AMPERES,
              Circuit::fuse,
              "Read the amperes on its fuse; 0 for none.")
          .withChangeLabel("fuse");

  public static final Property<Circuit, Double> FUSE_DISTANCE =
      number(
              "fuseAt",
              BoatQuantity.WIRE_METRES,
              Circuit::fuseDistance,
              "Measure along the wire from the battery to the fuse, in metres.")
          .withChangeLabel("fuse from the battery");

  public static final Property<Circuit, Boolean> SHEATHED =
      Property.of("sheathed", ValueType.flag(), Circuit::sheathed, SHEATH)
          .whenOmitted("it is not")
          .withChangeLabel("in a sheath");

  public static final Property<Circuit, Double> HOURS_A_DAY =
      number(
              "hoursADay",
              BoatQuantity.DAILY_HOURS,
              Circuit::timeADay,
              "Write how many hours a day it is on, or leave it out.")
          .whenOmitted("8 hours (judgement)")
          .withChangeLabel("hours a day");

  public static final List<Property<Circuit, ?>> OF_CIRCUIT =
      List.of(
          USE,
          CURRENT,
          LENGTH,
          AREA,
          INSULATION,
          ALONE,
          FUSE,
          FUSE_DISTANCE,
          SHEATHED,
          HOURS_A_DAY);

  public static final Property<MainWire, Double> MAIN_FUSE =
      number(
              "fuse",
              BoatQuantity.FUSE_AMPERES,
              MainWire::fuse,
              "Read the amperes on the main fuse; 0 for none.")
          .withChangeLabel("fuse");

  public static final Property<MainWire, Double> MAIN_FUSE_DISTANCE =
      number(
              "fuseAt",
              BoatQuantity.WIRE_METRES,
              MainWire::fuseDistance,
              "Measure along the wire from the battery to the main fuse, in metres.")
          .withChangeLabel("fuse from the battery");

  public static final Property<MainWire, Double> MAIN_LENGTH =
      number(
              "there",
              BoatQuantity.WIRE_METRES,
              MainWire::length,
              "Measure along it from the battery to where the wires part, in metres.")
          .whenOmitted("each circuit's fuse is measured from the battery")
          .withChangeLabel("length");

  public static final Property<MainWire, Double> MAIN_AREA =
      number("mm2", BoatQuantity.SQUARE_MILLIMETRES, MainWire::area, COPPER)
          .withChangeLabel("copper");

  public static final Property<MainWire, Double> MAIN_INSULATION =
      number("insulation", BoatQuantity.INSULATION, MainWire::insulation, DEGREES)
          .whenOmitted("60 degrees Celsius")
          .withChangeLabel("insulation");

  public static final Property<MainWire, Boolean> MAIN_ALONE =
      Property.of(
              "alone",
              ValueType.flag(),
              MainWire::alone,
              "Write true when it lies in no pipe and with no others.")
          .whenOmitted("it lies in a pipe with others")
          .withChangeLabel("by itself");

  public static final Property<MainWire, Boolean> MAIN_SHEATHED =
      Property.of("sheathed", ValueType.flag(), MainWire::sheathed, SHEATH)
          .whenOmitted("it is not")
          .withChangeLabel("in a sheath");

  public static final List<Property<MainWire, ?>> OF_MAIN_WIRE =
      List.of(
          MAIN_FUSE,
          MAIN_FUSE_DISTANCE,
          MAIN_LENGTH,
          MAIN_AREA,
          MAIN_INSULATION,
          MAIN_ALONE,
          MAIN_SHEATHED);

  private static <O> Property<O, Double> number(
      String key, BoatQuantity quantity, Function<O, Optional<Double>> value, String remedy) {
    return Property.of(key, ValueType.number(quantity), value, remedy);
  }
}
