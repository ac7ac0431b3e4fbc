package thwartwise.measured;

import static thwartwise.measured.ElectricalProperties.number;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import thwartwise.electrics.Circuit;
import thwartwise.electrics.MainWire;

/** The part of the table that holds wires and what guards them. */
public final class WireProperties {
  private static final String COPPER =
      "Read the square millimetres printed on the wire, or write \"awg\" instead.";
  private static final String DEGREES =
      "Read the degrees Celsius printed on the wire, or leave it out.";
  private static final String SHEATH =
      "Write true when a pipe or sheath covers the wire from the battery to the fuse.";

  private WireProperties() {}

  public static final Property<Circuit, Circuit.Use> USE =
      Property.known(
              "use",
              ValueType.oneOf(Circuit.Use::word, Circuit.Use.values()),
              Circuit::use,
              "Write what the wires feed.")
          .withQuestion(
              "what they feed",
              List.of("Each pair of wires from the battery by itself."),
              List.of(
                  "Motor, navigation lights and charging may lose 3 % of the volts, others 10 %."))
          .withChangeLabel("use");

  public static final Property<Circuit, Double> CURRENT =
      Property.known(
              "amps",
              ValueType.number(BoatQuantity.AMPERES),
              Circuit::current,
              "Add up the amperes of all it feeds: watts over volts.")
          .withQuestion(
              "current with all on",
              List.of("Add up what is on them; watts with W behind the number do, too."),
              List.of("Fuse, wire and loss follow from it."))
          .withChangeLabel("current");

  public static final Property<Circuit, Double> LENGTH =
      Property.known(
              "there",
              ValueType.number(BoatQuantity.WIRE_METRES),
              Circuit::length,
              "Measure along the wire from the battery to what it feeds, one way, in metres.")
          .withQuestion(
              "length one way",
              List.of("Along the wire from the battery to what it feeds."),
              List.of("Current flows there and back: twice this length loses voltage."))
          .withChangeLabel("length");

  public static final Property<Circuit, Double> AREA = copper(Circuit::area);

  public static final Property<Circuit, Integer> GAUGE = gauge(Circuit::gauge);

  public static final Property<Circuit, String> SWITCH =
      Property.of(
              "switch",
              ValueType.text(),
              Circuit::switched,
              "Write what switches it off, or leave it out.")
          .withQuestion(
              "switched off by",
              List.of("A switch, or a plug that is pulled."),
              List.of("What cannot be cut off goes on burning."))
          .whenOmitted("nothing")
          .withChangeLabel("switch");

  public static final Property<Circuit, Double> INSULATION = insulation(Circuit::insulation);

  public static final Property<Circuit, Boolean> ALONE = alone(Circuit::alone, "its wires lie");

  public static final Property<Circuit, Double> FUSE =
      number(
              "fuse",
              BoatQuantity.FUSE_AMPERES,
              Circuit::fuse,
              "Read the amperes on its fuse; 0 for none.")
          .withQuestion(
              "fuse",
              List.of("Amperes on the fuse that guards them; 0 for none."),
              List.of("A wire that rubs through burns until its fuse blows."))
          .whenOmitted("as none")
          .withChangeLabel("fuse");

  public static final Property<Circuit, Double> FUSE_DISTANCE =
      fuseDistance(Circuit::fuseDistance, "the fuse");

  public static final Property<Circuit, Boolean> SHEATHED = sheathed(Circuit::sheathed);

  public static final Property<Circuit, Double> HOURS_A_DAY =
      number(
              "hoursADay",
              BoatQuantity.DAILY_HOURS,
              Circuit::timeADay,
              "Write how many hours a day it is on, or leave it out.")
          .withQuestion(
              "on a day",
              List.of("On the longest day it is used. 8 hours are a judgement."),
              List.of("Its use is compared with what the panel gives."))
          .whenOmitted("8 hours")
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
          HOURS_A_DAY,
          GAUGE,
          SWITCH);

  public static final Property<MainWire, Double> MAIN_FUSE =
      number(
              "fuse",
              BoatQuantity.FUSE_AMPERES,
              MainWire::fuse,
              "Read the amperes on the main fuse; 0 for none.")
          .withQuestion(
              "Main fuse, the one before all of them",
              List.of(
                  "Amperes on the fuse at the battery that all but charging runs through; 0 for",
                  "none."),
              List.of("Without it the thick wire burns until the battery is empty."))
          .whenOmitted("as none")
          .withChangeLabel("fuse");

  public static final Property<MainWire, Double> MAIN_FUSE_DISTANCE =
      fuseDistance(MainWire::fuseDistance, "the main fuse");

  public static final Property<MainWire, Double> MAIN_LENGTH =
      number(
              "there",
              BoatQuantity.WIRE_METRES,
              MainWire::length,
              "Measure along it from the battery to where the wires part, in metres.")
          .withQuestion(
              "length until the others part",
              List.of("Along it from the battery to the block where the other wires begin."),
              List.of("Behind a good main fuse another may sit where its own wire begins."))
          .whenOmitted("as none")
          .withChangeLabel("length");

  public static final Property<MainWire, Double> MAIN_AREA = copper(MainWire::area);

  public static final Property<MainWire, Integer> MAIN_GAUGE = gauge(MainWire::gauge);

  public static final Property<MainWire, Double> MAIN_INSULATION = insulation(MainWire::insulation);

  public static final Property<MainWire, Boolean> MAIN_ALONE = alone(MainWire::alone, "it lies");

  public static final Property<MainWire, Boolean> MAIN_SHEATHED = sheathed(MainWire::sheathed);

  public static final List<Property<MainWire, ?>> OF_MAIN_WIRE =
      List.of(
          MAIN_FUSE,
          MAIN_FUSE_DISTANCE,
          MAIN_LENGTH,
          MAIN_AREA,
          MAIN_INSULATION,
          MAIN_ALONE,
          MAIN_SHEATHED,
          MAIN_GAUGE);

  private static <O> Property<O, Double> copper(Function<O, Optional<Double>> area) {
    return number("mm2", BoatQuantity.SQUARE_MILLIMETRES, area, COPPER)
        .withQuestion(
            "copper",
            List.of(
                "It is printed on the wire. Where degrees are printed, too, as in 105 C, type",
                "them behind it: 10 mm2 105 C. Left out, they count as 60."),
            List.of("What a wire may carry and what it loses follow from its copper."))
        .withChangeLabel("copper");
  }

  private static <O> Property<O, Double> fuseDistance(
      Function<O, Optional<Double>> distance, String fuse) {
    return number(
            "fuseAt",
            BoatQuantity.WIRE_TO_FUSE,
            distance,
            "Measure along the wire from the battery to " + fuse + ", in metres.")
        .withQuestion(
            "fuse from battery",
            List.of("Along the wire from the pole of the battery to the fuse."),
            List.of("The wire before the fuse is guarded by nothing; not known counts as too far."))
        .whenOmitted("as too far")
        .withChangeLabel("fuse from the battery");
  }

  private static <O> Property<O, Double> insulation(Function<O, Optional<Double>> degrees) {
    return number("insulation", BoatQuantity.INSULATION, degrees, DEGREES)
        .whenOmitted("60 degrees Celsius")
        .withChangeLabel("insulation");
  }

  private static <O> Property<O, Boolean> alone(
      Function<O, Optional<Boolean>> alone, String wires) {
    return Property.of(
            "alone",
            ValueType.flag(),
            alone,
            "Write true when " + wires + " in no pipe and with no others.")
        .whenOmitted("it lies in a pipe with others")
        .withQuestion(
            "how they lie",
            List.of(
                "open: these two alone in the air. pipe: in a pipe or sheath all the way from",
                "the battery. bundle: with other wires, in no pipe."),
            List.of(
                "Wires that warm each other carry less; in a sheath a fuse may be farther off."))
        .withChangeLabel("by itself");
  }

  private static <O> Property<O, Boolean> sheathed(Function<O, Optional<Boolean>> sheathed) {
    return Property.of("sheathed", ValueType.flag(), sheathed, SHEATH)
        .whenOmitted("it is not")
        .withChangeLabel("in a sheath");
  }

  private static <O> Property<O, Integer> gauge(Function<O, Optional<Integer>> gauge) {
    return Property.of(
            "awg",
            ValueType.whole(BoatQuantity.GAUGE),
            gauge,
            "Read the gauge printed on the wire, as in 10 AWG; it stands instead of mm2.")
        .whenOmitted("mm2")
        .withChangeLabel("American gauge");
  }
}
