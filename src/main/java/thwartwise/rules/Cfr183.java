package thwartwise.rules;

import java.util.List;
import java.util.OptionalInt;
import thwartwise.boat.Craft;
import thwartwise.boat.Propulsion;

/**
 * The loading formulas of 33 CFR part 183, subpart C (United States; monohull boats under 20 ft;
 * written for makers, so here a second opinion). Weights in the rule are pounds, inside they are
 * kilograms.
 */
public final class Cfr183 {
  /** Exact: international avoirdupois pound, kg. */
  static final double POUND = 0.45359237;

  private static final double TWENTY_FEET = 20 * 0.3048;
  private static final double TWO_HORSEPOWER = 2 * 745.7;
  private static final String BOOK = "33 CFR part 183 subpart C";

  private Cfr183() {}

  /** The weight and persons figures for this boat; figures that do not apply say why. */
  public static List<CapacityFigure> of(Craft craft, RuleSet own) {
    double difference =
        Math.max(0, LevelImmersion.displacement(craft) - craft.boat().hull().mass());
    String outside = outside(craft, own);
    Propulsion propulsion = craft.boat().propulsion();
    if (propulsion instanceof Propulsion.Outboard motor && motor.power() > TWO_HORSEPOWER) {
      String beyond =
          MotorWeights.covers(motor.power())
              ? outside
              : "does not apply: the table of motor weights known here ends at 34.9 hp";
      return outboard(craft, motor, difference, outside.isEmpty() ? beyond : outside);
    }
    boolean motorised = propulsion instanceof Propulsion.Outboard;
    String note =
        propulsion instanceof Propulsion.NotStated && outside.isEmpty()
            ? "the boat file does not say how it is driven: taken as rowed or paddled"
            : outside;
    return smallPower(difference, motorised, outside.isEmpty(), note);
  }

  private static String outside(Craft craft, RuleSet own) {
    if (craft.boat().propulsion() instanceof Propulsion.Sail) {
      return "does not apply: sailboats are exempt";
    }
    if (craft.form().length() >= TWENTY_FEET) {
      return "does not apply: the boat is 20 ft or longer";
    }
    return Canoe.is(craft.form(), own) ? "does not apply: canoes and kayaks are exempt" : "";
  }

  private static List<CapacityFigure> smallPower(
      double difference, boolean motorised, boolean applies, String note) {
    double weight = weightManual(difference);
    double persons = personsManual(weight, motorised);
    String kind = motorised ? "motor of 2 hp or less" : "manual";
    return List.of(
        new CapacityFigure(
            "33 CFR 183.37 maximum weight, " + kind,
            applies,
            false,
            weight,
            OptionalInt.empty(),
            BOOK + ", 183.37 (FROM MEMORY)",
            note),
        new CapacityFigure(
            "33 CFR 183.43 persons, " + kind,
            applies,
            true,
            persons,
            OptionalInt.of(persons(persons)),
            BOOK + ", 183.43 (READ)",
            note));
  }

  private static List<CapacityFigure> outboard(
      Craft craft, Propulsion.Outboard motor, double difference, String outside) {
    double weight = weightOutboard(difference);
    double gear = MotorWeights.total(motor.power());
    double persons = personsOutboard(weight, gear, EdgeWeight.most(craft));
    return List.of(
        new CapacityFigure(
            "33 CFR 183.35 maximum weight, outboard",
            outside.isEmpty(),
            false,
            weight,
            OptionalInt.empty(),
            BOOK + ", 183.35 (READ)",
            outside),
        new CapacityFigure(
            "33 CFR 183.41 persons, outboard",
            outside.isEmpty(),
            true,
            persons,
            OptionalInt.of(persons(persons)),
            BOOK + ", 183.41 and motor weight table of 2018 (READ)",
            outside));
  }

  /** 183.35: (maximum displacement − boat weight) / 5. */
  static double weightOutboard(double difference) {
    return difference / 5;
  }

  /** 183.37: three tenths of the same difference. */
  static double weightManual(double difference) {
    return 0.3 * difference;
  }

  /** 183.43: 0.90 W, less 25 lb with a motor of 2 hp or less. */
  static double personsManual(double weight, boolean motorised) {
    return Math.max(0, 0.9 * weight - (motorised ? 25 * POUND : 0));
  }

  /**
   * 183.41: W less motor, controls, battery and tank; when that is under 550 lb not more than
   * A/0.6.
   */
  static double personsOutboard(double weight, double gear, double edgeWeight) {
    double rest = Math.max(0, weight - gear);
    return rest < 550 * POUND ? Math.min(rest, edgeWeight / 0.6) : rest;
  }

  /** 183.41, 183.43: (pounds + 32)/141 to the nearest whole number, a half up. */
  static int persons(double mass) {
    return mass > 0 ? (int) Math.floor((mass / POUND + 32) / 141 + 0.5) : 0;
  }
}
