package thwartwise.measured;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import thwartwise.electrics.Battery;
import thwartwise.electrics.Chemistry;
import thwartwise.electrics.ElectricMotor;
import thwartwise.electrics.ElectricalSystem;
import thwartwise.electrics.SolarPanel;
import thwartwise.electrics.TimedRun;

/** The part of the table that holds battery, motor, timed runs and panel. */
public final class ElectricalProperties {

  private ElectricalProperties() {}

  public static final Property<Battery, Double> VOLTS =
      Property.known(
              "volts",
              ValueType.number(BoatQuantity.VOLTS),
              Battery::volts,
              "Read the volts on the battery's label.")
          .withQuestion(
              "volts on its label",
              List.of("Most of them: 12."),
              List.of("Watts, losses in the wires and the motor's current follow from it."))
          .withChangeLabel("volts");

  public static final Property<Battery, Double> CHARGE =
      Property.known(
              "ampHours",
              ValueType.number(BoatQuantity.AMPERE_HOURS),
              Battery::charge,
              "Read the ampere-hours (Ah) on the battery's label.")
          .withQuestion(
              "charge on its label",
              List.of("Ampere-hours (Ah), or watt-hours with Wh behind the number."),
              List.of("Without it no running time is worked out."))
          .withChangeLabel("charge");

  public static final Property<Battery, Double> RATED_HOURS =
      number(
              "ratedHours",
              BoatQuantity.RATED_HOURS,
              Battery::ratedTime,
              "Read the hours next to the Ah, as in C20 or 20 h, or leave it out.")
          .withQuestion(
              "hours next to the Ah",
              List.of("C20, 20HR or 20 h next to the ampere-hours: 20. Some say C5 or C100."),
              List.of("A motor draws faster than the label, and lead gives less then."))
          .whenOmitted("100 hours")
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
          .withQuestion(
              "made of what",
              List.of("It stands on the label."),
              List.of("It decides how much of its charge counts, and what age and cold take."))
          .whenOmitted("the poorest")
          .withChangeLabel("chemistry");

  public static final Property<Battery, Boolean> STARTER =
      Property.of(
              "starter",
              ValueType.flag(),
              Battery::starter,
              "Write true for a battery made to start an engine, false for a traction battery.")
          .withQuestion(
              "made to start an engine?",
              List.of("yes: the label names cold cranking amperes (CCA), or it came out of a car."),
              List.of("Deep discharge ruins such a battery: only a fifth of it counts."))
          .whenOmitted("as one")
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
          .withQuestion(
              "are its poles covered?",
              List.of("yes: no spanner, chain or wet hand can touch both at once."),
              List.of("What falls across both glows, and burns hands and boat."))
          .whenOmitted("as not")
          .withChangeLabel("poles covered");

  public static final Property<Battery, LocalDate> SINCE =
      Property.of(
              "since",
              ValueType.day(),
              Battery::since,
              "Write the day it was first used, as in 2024-05-01, or leave it out.")
          .withQuestion(
              "first used",
              List.of(
                  "The day; or the month or year alone, whose first day counts. Left out it is",
                  "six years old, a judgement."),
              List.of("Each year takes some of its charge; after ten nothing of it counts."))
          .whenOmitted("six years ago")
          .withChangeLabel("first used");

  public static final List<Property<Battery, ?>> OF_BATTERY =
      List.of(
          CHEMISTRY,
          VOLTS,
          CHARGE,
          RATED_HOURS,
          EXPONENT,
          STARTER,
          STRAPPED,
          TERMINALS_COVERED,
          SINCE);

  public static final Property<ElectricMotor, Double> THRUST =
      number(
              "thrust",
              BoatQuantity.THRUST,
              ElectricMotor::thrust,
              "Multiply the pounds of thrust on the motor by 4.45 and write newtons.")
          .withQuestion(
              "thrust on its plate",
              List.of("Pounds of thrust, as in 55 lb; or newtons with N behind the number."),
              List.of("Where nobody knows its current, an ampere a pound at 12 V counts."))
          .whenOmitted("not on it")
          .withChangeLabel("thrust");

  public static final Property<ElectricMotor, Double> FULL_CURRENT =
      number(
              "amps",
              BoatQuantity.AMPERES,
              ElectricMotor::fullCurrent,
              "Read the amperes at full power on the motor's plate, or leave it out: an ampere a pound of"
                  + " thrust at 12 V, 0.63 at 24 V.")
          .withQuestion(
              "current at full power",
              List.of("Amperes on its plate or in its book; or watts with W behind the number."),
              List.of("It decides how long the battery lasts."))
          .whenOmitted("by thrust or power")
          .withChangeLabel("current at full power");

  public static final Property<ElectricMotor, Double> CLAIMED_HOURS =
      number(
              "claimedHours",
              BoatQuantity.CLAIMED_HOURS,
              ElectricMotor::claimedTime,
              "Write how many hours it is said to run at full power, or leave it out.")
          .withQuestion(
              "said to run at full power for",
              List.of("What the seller or the last owner says of this battery."),
              List.of("Where the battery cannot give it, the page of range says so with the sum."))
          .whenOmitted("nobody says")
          .withChangeLabel("claimed running time");

  public static final Property<ElectricMotor, Double> REACH =
      number(
              "reachesBelow",
              BoatQuantity.MOTOR_REACH,
              ElectricMotor::reach,
              "Measure from the lowest line of the bottom down to its lowest point, in metres.")
          .withQuestion(
              "lowest point below the bottom",
              List.of("Under way: from the lowest line of the bottom down to skeg or propeller."),
              List.of("It decides the depth it needs, and the heel with the motor hard over."))
          .whenOmitted("not measured")
          .withChangeLabel("lowest point below the bottom");

  public static final Property<ElectricMotor, Double> TILTED_REACH =
      number(
              "tiltedBelow",
              BoatQuantity.MOTOR_REACH,
              ElectricMotor::tiltedReach,
              "Tilt it and measure again; above the bottom with a minus.")
          .withQuestion(
              "the same when tilted",
              List.of("Tilted for shallow water; with a minus where it is above the bottom."),
              List.of("It decides the depth in which it still touches."))
          .whenOmitted("not measured")
          .withChangeLabel("lowest point when tilted");

  public static final Property<ElectricMotor, Double> TILT_SHIFT =
      number(
              "tiltsAft",
              BoatQuantity.MOTOR_REACH,
              ElectricMotor::tiltShift,
              "Measure how far aft its middle goes when it is tilted, in metres.")
          .withQuestion(
              "goes aft when tilted by",
              List.of("How far its middle moves aft; a heavy foot swings out behind the boat."),
              List.of("It weighs the stern down, where the transom is cut lowest."))
          .whenOmitted("not measured")
          .withChangeLabel("how far aft it tilts");

  public static final List<Property<ElectricMotor, ?>> OF_MOTOR =
      List.of(THRUST, FULL_CURRENT, CLAIMED_HOURS, REACH, TILTED_REACH, TILT_SHIFT);

  public static final Property<TimedRun, Double> DISTANCE =
      Property.known(
              "metres",
              ValueType.number(BoatQuantity.RUN_METRES),
              TimedRun::distance,
              "Pace out a stretch of the bank and write metres, one way.")
          .withQuestion(
              "stretch one way",
              List.of("Paced along the bank, or off a map; 100 m or more."),
              List.of("A longer stretch makes a second of the watch count less."))
          .withChangeLabel("distance");

  public static final Property<TimedRun, Double> TIME_THERE =
      Property.known(
              "secondsThere",
              ValueType.number(BoatQuantity.RUN_SECONDS),
              TimedRun::timeThere,
              "Time the boat over it and write seconds.")
          .withQuestion(
              "time there",
              List.of("By the watch, in seconds; or minutes and seconds, as in 2:30."),
              List.of("Wind and stream cancel where both ways are timed."))
          .withChangeLabel("time there");

  public static final Property<TimedRun, Double> TIME_BACK =
      Property.known(
              "secondsBack",
              ValueType.number(BoatQuantity.RUN_SECONDS),
              TimedRun::timeBack,
              "Time it the other way, too, and write seconds.")
          .withQuestion(
              "time back",
              List.of("By the watch, in seconds; or minutes and seconds, as in 2:30."),
              List.of("Wind and stream cancel where both ways are timed."))
          .withChangeLabel("time back");

  private static final String AMMETER =
      "Read the ammeter on the way and write amperes, or leave it out.";

  public static final Property<TimedRun, Double> CURRENT_THERE =
      number("ampsThere", BoatQuantity.AMPERES, TimedRun::currentThere, AMMETER)
          .withQuestion(
              "current there",
              List.of("Off an ammeter on the way."),
              List.of("Half speed draws far less than half; not read counts as at full power."))
          .whenOmitted("as at full power")
          .withChangeLabel("current there");

  public static final Property<TimedRun, Double> CURRENT_BACK =
      number("ampsBack", BoatQuantity.AMPERES, TimedRun::currentBack, AMMETER)
          .withQuestion(
              "current back",
              List.of("Off an ammeter on the way."),
              List.of("Half speed draws far less than half; not read counts as at full power."))
          .whenOmitted("as at full power")
          .withChangeLabel("current back");

  public static final List<Property<TimedRun, ?>> OF_RUN =
      List.of(DISTANCE, TIME_THERE, TIME_BACK, CURRENT_THERE, CURRENT_BACK);

  public static final Property<SolarPanel, Double> WATTS =
      Property.known(
              "watts",
              ValueType.number(BoatQuantity.PANEL_WATTS),
              SolarPanel::watts,
              "Read the watts on the back of the panel.")
          .withQuestion(
              "watts on its label",
              List.of("On its back."),
              List.of("What it gives back is worked out by month."))
          .withChangeLabel("watts");

  public static final Property<SolarPanel, Double> PANEL_FUSE =
      number(
              "panelFuse",
              BoatQuantity.FUSE_AMPERES,
              SolarPanel::panelFuse,
              "Read the fuse between panel and controller; 0 for none.")
          .withQuestion(
              "fuse between it and the controller",
              List.of("Amperes on the fuse; 0 for none."),
              List.of("Sun feeds a short on one side, the battery on the other."))
          .whenOmitted("as none")
          .withChangeLabel("fuse to the controller");

  public static final Property<SolarPanel, Double> BATTERY_FUSE =
      number(
              "batteryFuse",
              BoatQuantity.FUSE_AMPERES,
              SolarPanel::batteryFuse,
              "Read the fuse between controller and battery; 0 for none.")
          .withQuestion(
              "fuse between controller and battery",
              List.of("Amperes on the fuse; 0 for none."),
              List.of("Sun feeds a short on one side, the battery on the other."))
          .whenOmitted("as none")
          .withChangeLabel("fuse to the battery");

  public static final Property<SolarPanel, Boolean> CONNECTED =
      Property.of(
              "batteryStaysOn",
              ValueType.flag(),
              SolarPanel::connectedToBattery,
              "Write true when the battery is never taken off the controller in sun.")
          .withQuestion(
              "does the battery stay on in sun?",
              List.of(
                  "yes: nobody takes the battery off the controller while sun is on the panel."),
              List.of("Without a battery the panel's voltage can kill the controller."))
          .whenOmitted("as not")
          .withChangeLabel("battery stays on in sun");

  public static final Property<SolarPanel, Double> SIDE_AREA =
      number(
              "sideArea",
              BoatQuantity.PANEL_SIDE,
              SolarPanel::sideArea,
              "Multiply its length by the height it stands, as seen from the side, in m2; left out, a"
                  + " hundredth of its watts, which flatters least.")
          .withQuestion(
              "area seen from the side",
              List.of("As it stands on the boat: its length by the height of what stands up."),
              List.of("The wind pushes on it high up. Not known counts as standing on its edge."))
          .whenOmitted("by its watts")
          .withChangeLabel("area from the side");

  public static final List<Property<SolarPanel, ?>> OF_PANEL =
      List.of(WATTS, PANEL_FUSE, BATTERY_FUSE, CONNECTED, SIDE_AREA);

  public static final Property<ElectricalSystem, Double> LATITUDE =
      number(
              "latitude",
              BoatQuantity.LATITUDE,
              ElectricalSystem::latitude,
              "Read it off a map in whole degrees, south with a minus, or leave it out.")
          .withQuestion(
              "Latitude where the boat is kept",
              List.of("Off a map, in whole degrees; in the south with S behind it or a minus."),
              List.of("It decides the sun of each month."))
          .whenOmitted("gives nothing")
          .withChangeLabel("the latitude");

  public static final Property<ElectricalSystem, String> MAIN_SWITCH =
      Property.of(
              "mainSwitch",
              ValueType.text(),
              ElectricalSystem::mainSwitch,
              "Write what cuts off everything at once, or leave it out.")
          .withQuestion(
              "What cuts off everything at once",
              List.of("A switch, or a plug at the battery, in reach of whoever steers."),
              List.of("In a fire it is the first thing to use."))
          .whenOmitted("nothing")
          .withChangeLabel("what cuts off everything at once");

  public static final List<Property<ElectricalSystem, ?>> OF_SYSTEM =
      List.of(LATITUDE, MAIN_SWITCH);

  static <O> Property<O, Double> number(
      String key, BoatQuantity quantity, Function<O, Optional<Double>> value, String remedy) {
    return Property.of(key, ValueType.number(quantity), value, remedy);
  }
}
