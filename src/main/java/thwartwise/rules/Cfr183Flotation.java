package thwartwise.rules;

import java.util.List;
import java.util.stream.Stream;
import thwartwise.boat.Filling;
import thwartwise.boat.Propulsion;
import thwartwise.boat.Space;

/**
 * Flotation by volume as the handbook to 33 CFR part 183 works it out (READ, subparts G and H):
 * enough for the hull, the motor and a share of the people. A second opinion next to the computed
 * swamped boat: it says how much flotation is needed, not where.
 *
 * <p>Assumptions: the whole hull is under water, without superstructure; its material has the
 * soaked density; chambers are integral air chambers, which count for oars and motors up to 2 hp
 * and not above.
 */
final class Cfr183Flotation {
  /** lb/ft³ that a volume of air holds up, and that 2 lb foam does: handbook (READ). */
  static final double AIR = 62.4;

  private static final double CUBIC_FOOT = Cfr183.FOOT * Cfr183.FOOT * Cfr183.FOOT;
  private static final double FULL_SHARE = 550 * Cfr183.POUND;

  /** Motor of 2 hp or less under water: 25 lb (READ). */
  private static final double SMALL_MOTOR = 25 * Cfr183.POUND;

  private Cfr183Flotation() {}

  static List<FormulaResult> level(RatedBoat boat, Parameters none) {
    String title = "33 CFR 183 flotation by volume";
    if (!Cfr183.motorKnown(boat)) {
      return List.of(FormulaResult.outside(title, MotorWeights.beyond()));
    }
    double needed =
        hull(boat)
            + volume(motor(boat), AIR)
            + volume(people(Cfr183.persons(boat), Cfr183.weight(boat)), AIR);
    return List.of(
        FormulaResult.of(title, CapKind.FLOTATION, Math.max(0, needed))
            .comparedWith(counted(boat))
            .withNote(new FormulaNote.HullUnderWater(Cfr183.overTwoHorsepower(boat))));
  }

  /** 183.105 (READ): for boats that need only float somehow. */
  static List<FormulaResult> basic(RatedBoat boat, Parameters none) {
    String title = "33 CFR 183.105 basic flotation";
    if (!Cfr183.motorKnown(boat)) {
      return List.of(FormulaResult.outside(title, MotorWeights.beyond()));
    }
    double load = basicLoad(Cfr183.persons(boat), Cfr183.weight(boat));
    double needed = hull(boat) + volume(motor(boat), AIR) + volume(load, AIR);
    double lost =
        air(boat).sorted((a, b) -> Double.compare(b, a)).limit(2).mapToDouble(v -> v).sum();
    return List.of(
        FormulaResult.of(title, CapKind.FLOTATION, Math.max(0, needed))
            .comparedWith(Math.max(0, foam(boat) + air(boat).mapToDouble(v -> v).sum() - lost))
            .withNote(new FormulaNote.LargestChambersExcluded()));
  }

  /** 2/15 of the people and a quarter of the rest of the load, kg under water. */
  static double basicLoad(double persons, double weight) {
    return 2.0 / 15 * persons + 0.25 * Math.max(0, weight - persons);
  }

  /** Half of the first 550 lb of people, an eighth of the rest, a quarter of other load, kg. */
  static double people(double persons, double weight) {
    return 0.5 * Math.min(persons, FULL_SHARE)
        + 0.125 * Math.max(0, persons - FULL_SHARE)
        + 0.25 * Math.max(0, weight - persons);
  }

  /** m³ that hold up so many kg under water, at so many lb/ft³. */
  static double volume(double mass, double perCubicFoot) {
    return mass / Cfr183.POUND / perCubicFoot * CUBIC_FOOT;
  }

  /** (Wh K + Wd)/B: the hull's own weight under water, with K = (SG − 1)/SG, and the dry part. */
  static double hull(double under, double specificGravity, double dry, double perCubicFoot) {
    return volume(submerged(under, specificGravity) + dry, perCubicFoot);
  }

  /** Weight under water; negative for wood, which floats. */
  static double submerged(double mass, double specificGravity) {
    return mass * (specificGravity - 1) / specificGravity;
  }

  private static double hull(RatedBoat boat) {
    double specificGravity = boat.model().boat().hull().density() / 1000;
    return hull(boat.hullMass(), specificGravity, 0, AIR);
  }

  private static double motor(RatedBoat boat) {
    if (!(boat.propulsion() instanceof Propulsion.Outboard motor)) {
      return 0;
    }
    MotorWeights row = MotorWeights.of(motor.power());
    return Cfr183.overTwoHorsepower(boat) ? row.swamped() + row.batterySwamped() : SMALL_MOTOR;
  }

  private static double counted(RatedBoat boat) {
    double air = Cfr183.overTwoHorsepower(boat) ? 0 : air(boat).mapToDouble(v -> v).sum();
    return foam(boat) + air;
  }

  private static double foam(RatedBoat boat) {
    return boat.model().spaces().stream()
        .filter(s -> s.part().filling() instanceof Filling.Foam)
        .mapToDouble(Cfr183Flotation::counts)
        .sum();
  }

  private static Stream<Double> air(RatedBoat boat) {
    return boat.model().spaces().stream()
        .filter(s -> s.part().filling() instanceof Filling.Air)
        .map(Cfr183Flotation::counts);
  }

  private static double counts(Space space) {
    return space.solid().volume() * space.counting().share();
  }
}
